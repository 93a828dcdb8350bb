/**
 * Draughtsmen: each draws one thing of a lathe to scale, from numbers alone, as marks a page can
 * show. They know neither requests nor books.
 */
@org.jspecify.annotations.NullMarked
package fettle.desk.picture;
