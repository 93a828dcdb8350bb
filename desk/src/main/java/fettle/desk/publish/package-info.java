/**
 * A book as a folder of pages that any web host serves and any browser opens from disk: relative
 * links, no server, nothing loaded from elsewhere. What the owner holds back is taken out of the
 * book before the first page is made, so that no page can show it.
 */
@NullMarked
package fettle.desk.publish;

import org.jspecify.annotations.NullMarked;
