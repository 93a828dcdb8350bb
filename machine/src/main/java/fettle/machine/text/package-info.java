/**
 * Text in, tree out: YAML read with the place of every word, quantities with units, the merge patch
 * of a change, and what is wrong with the owner's file said as a value.
 */
@NullMarked
package fettle.machine.text;

import org.jspecify.annotations.NullMarked;
