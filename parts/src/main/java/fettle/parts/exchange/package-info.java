/** Exchange files: STEP (ISO 10303-21) and 3MF. */
@NullMarked
package fettle.parts.exchange;

import org.jspecify.annotations.NullMarked;
