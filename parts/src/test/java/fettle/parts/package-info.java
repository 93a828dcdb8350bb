/** Tests of the module: closed forms, laws, files read back. */
@NullMarked
package fettle.parts;

import org.jspecify.annotations.NullMarked;
