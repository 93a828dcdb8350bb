/** What is drawn must be what was reckoned: meshes, centres, zones, unfolded ways. */
@org.jspecify.annotations.NullMarked
package fettle.desk.picture;
