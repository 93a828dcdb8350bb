package fettle.mechanics.loop;

import fettle.mechanics.solids.Body;
import fettle.mechanics.solids.Elastic;
import fettle.mechanics.solids.Patch;
import fettle.mechanics.solids.SprungPart;
import java.util.List;

/**
 * What the body of a slide gives beside its ways: the compliance of the elastic body on the springs
 * of its ways, less that of a rigid one. Loads and read-out are the same average over a face.
 *
 * @param point middle of the loaded face: x, y, z [mm]
 * @param own what the body gives by itself at that point
 * @param whole body and ways together there
 * @param flex both meshes
 */
public record SlideFlex(
    List<Double> point, Compliance own, Compliance whole, SprungPart.Flex flex) {

  /**
   * Reckons states of one slide on the same meshes.
   *
   * @param material what it is made of
   * @param ways what it lies on
   * @param load face that takes the wrench
   * @param states the slide before, after, ...
   * @param step largest step of the finer mesh [mm]
   */
  public static List<SlideFlex> of(
      Elastic material, TwoWays ways, Patch load, List<Body> states, double step) {
    return new SprungPart(material, ways.supports(), load, step)
        .of(states).stream().map(f -> of(ways, f)).toList();
  }

  private static SlideFlex of(TwoWays ways, SprungPart.Flex flex) {
    double[][] whole = new double[6][6];
    double[][] own = new double[6][6];
    Compliance rigid =
        ways.rigid()
            .movedBy(
                flex.point().get(0) - ways.middle().get(0),
                flex.point().get(1) - ways.middle().get(1),
                flex.point().get(2) - ways.middle().get(2));
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        whole[i][j] = flex.fine().get(6 * i + j);
        own[i][j] = whole[i][j] - rigid.entry(i, j);
      }
    }
    return new SlideFlex(flex.point(), Compliance.of(own), Compliance.of(whole), flex);
  }
}
