/** The desk driven as a reader, as a browser and as somebody with bad intentions would drive it. */
@NullMarked
package fettle.desk.web;

import org.jspecify.annotations.NullMarked;
