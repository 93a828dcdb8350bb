package fettle.mechanics.solids;

/** What holds a body: unknowns that stay zero, and springs under faces of cells. */
final class Held {

  /** Nodes held in each direction, an array for each direction. */
  final int[][] fixed;

  /** Four nodes of each springy face. */
  final int[] faceNodes;

  /** Sixteen shares of area of each springy face, by rows [mm2]. */
  final double[] faceAreas;

  /** Springs per area of each face along x, y and z [N/mm3]. */
  final double[] faceSprings;

  Held(int[][] fixed, int[] faceNodes, double[] faceAreas, double[] faceSprings) {
    this.fixed = fixed;
    this.faceNodes = faceNodes;
    this.faceAreas = faceAreas;
    this.faceSprings = faceSprings;
  }

  int faces() {
    return faceNodes.length / 4;
  }
}
