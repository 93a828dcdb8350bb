/**
 * The smallest kernel that is right for machined parts: primitives added and cut, boundary
 * evaluated into exact faces, edges and vertices, and from these mass, mesh, sections and views.
 */
@NullMarked
package fettle.parts.solid;

import org.jspecify.annotations.NullMarked;
