package fettle.mechanics.gears;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.List;

/** Single calculations on trains, racks and dials. */
public final class TrainReckoners {

  private static final Source CHAIN =
      Source.derived("kinematic chain: teeth passed are equal on both wheels of a mesh");

  private TrainReckoners() {}

  /** Returns the reckoners of this room. */
  public static List<Reckoner> all() {
    return List.of(rackTravel());
  }

  private static Reckoner rackTravel() {
    return Reckoner.of(
            "gears", "rack-travel", "Slide travel per handwheel turn, gear pair and rack")
        .count("z1", "teeth of the gear on the handwheel shaft")
        .count("z2", "teeth of the gear it drives")
        .count("z3", "teeth of the rack pinion")
        .number("m", Unit.MM, "module of the rack (16 DP may be given as '16 DP')")
        .result("T", Unit.MM, "travel per turn")
        .source(CHAIN)
        .rule(
            g ->
                Answer.start()
                    .with(
                        "T",
                        Working.of(
                            "T",
                            Unit.MM,
                            "z1/z2*pi*m*z3",
                            g.term("z1"),
                            g.term("z2"),
                            g.term("m"),
                            g.term("z3"))));
  }
}
