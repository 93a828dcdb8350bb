/**
 * The pack of a change: what is needed to make it, from the cover to the record of its revisions,
 * as chapters of blocks that are set on pages of their own beside the drawings, and as plain text.
 * The same words stand in both. Nothing here touches a file or a clock.
 */
@NullMarked
package fettle.desk.pack;

import org.jspecify.annotations.NullMarked;
