/** Tests of the dictionary, its reader and its schema. */
@NullMarked
package fettle.machine.dictionary;

import org.jspecify.annotations.NullMarked;
