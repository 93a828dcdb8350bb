/**
 * The one table of every key a book may hold: its kind, unit, standard value, bounds and meaning.
 * Reading, checking, the published schema, forms and the file reference all come from it.
 */
@NullMarked
package fettle.machine.dictionary;

import org.jspecify.annotations.NullMarked;
