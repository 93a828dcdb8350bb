/** Test support that knows no other room: published tables, golden files, numerical derivatives. */
@NullMarked
package fettle.proof;

import org.jspecify.annotations.NullMarked;
