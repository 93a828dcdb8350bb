package fettle.mechanics.gears;

import fettle.mechanics.base.Ratio;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * New teeth for a pair whose shafts stay where they are: one tooth more or less in all is taken up
 * by profile shift, as far as the teeth bear it.
 *
 * @param module module of the pair [mm]
 * @param axes centre distance, as measured [mm]
 * @param rack basic rack
 * @param perTurn travel for one turn of the driven gear: rack pinion or screw
 * @param fewest fewest teeth of the driving gear
 * @param most most teeth of the driven gear, as the space allows
 */
public record TeethOnCentres(
    double module, double axes, BasicRack rack, Ratio perTurn, int fewest, int most) {

  /** Teeth by which the sum may differ from that of unshifted gears. */
  private static final int SLACK = 2;

  /** Refuses what holds no pair. */
  public TeethOnCentres {
    Teeth.positive("module", "mm", module);
    Teeth.positive("centre distance", "mm", axes);
    Teeth.positive("travel per turn of the driven gear", perTurn);
    Teeth.check("fewest teeth", fewest);
    Teeth.check("most teeth", most);
    if (2 * axes / module > 5000) {
      throw new IllegalArgumentException(
          "centre distance [mm] of " + axes + " holds too many teeth of module " + module);
    }
  }

  /**
   * One pair.
   *
   * @param pair the gears, all shift on the driven one
   * @param travel travel per turn of the driver
   * @param ppm deviation from the travel wanted [ppm]
   * @param concerns what is doubtful about it
   */
  public record Choice(GearPair pair, Ratio travel, double ppm, List<Concern> concerns) {
    /** Returns teeth of the driver. */
    public int driver() {
      return pair.pinion().teeth();
    }

    /** Returns teeth of the driven gear. */
    public int driven() {
      return pair.wheel().teeth();
    }
  }

  /**
   * All pairs that can be made and run on the centres, nearest to a travel first, and how many were
   * left out.
   *
   * @param choices pairs without a concern that forbids them
   * @param refused pairs whose teeth would be undercut, pointed, foul or lose contact
   */
  public record Found(List<Choice> choices, int refused) {
    /** Returns the nearest pair. */
    public Optional<Choice> best() {
      return choices.stream().findFirst();
    }
  }

  /** Finds the pairs for a travel. */
  public Found forTravel(Ratio wanted) {
    Teeth.positive("travel wanted", wanted);
    List<Choice> choices = new ArrayList<>();
    int refused = 0;
    int sum = (int) Math.round(2 * axes / module);
    for (int total = sum - SLACK; total <= sum + SLACK; total++) {
      for (int z1 = fewest; z1 <= total - fewest; z1++) {
        int z2 = total - z1;
        if (z2 > most) {
          continue;
        }
        Optional<Choice> choice = choice(z1, z2, wanted);
        if (choice.isPresent()) {
          choices.add(choice.get());
        } else {
          refused++;
        }
      }
    }
    choices.sort(
        Comparator.comparing(
                (Choice c) -> c.travel.over(wanted), (a, b) -> Deviation.compareSize(a, b))
            .thenComparingDouble(c -> Math.abs(c.pair.wheel().shift()))
            .thenComparingInt(Choice::driven));
    return new Found(List.copyOf(choices), refused);
  }

  private Optional<Choice> choice(int z1, int z2, Ratio wanted) {
    if (module * (z1 + z2) / 2 * Math.cos(rack.angle()) >= axes) {
      return Optional.empty();
    }
    Gear driver = new Gear(module, z1, 0, rack);
    double sum =
        GearPair.shiftSum(z1, z2, module * (z1 + z2) / 2, rack.angle(), rack.angle(), axes);
    if (Math.abs(sum) > 3) {
      return Optional.empty();
    }
    GearPair pair = GearPair.onCentres(driver, z2, axes);
    List<Concern> concerns = pair.concerns();
    if (concerns.stream().anyMatch(c -> c.level() == Concern.Level.REFUSE)) {
      return Optional.empty();
    }
    Ratio travel = perTurn.times(Ratio.of(z1, z2));
    return Optional.of(new Choice(pair, travel, Deviation.ppm(travel, wanted), concerns));
  }
}
