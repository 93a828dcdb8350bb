/**
 * The desk: the book as pages on this machine only. A request is read, the flow from text to
 * forecast runs, a page record is made of it and a template writes it; an edit is an edit of the
 * owner's text, kept with its history beside it.
 */
@NullMarked
package fettle.desk.web;

import org.jspecify.annotations.NullMarked;
