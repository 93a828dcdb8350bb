package fettle.mechanics.gears;

import fettle.mechanics.base.Ratio;

/**
 * One element of a kinematic chain: it turns a rotation into another rotation, or at the end of a
 * chain into a travel. Its factor is exact: turns of the driven shaft per turn of the driver, or
 * travel per turn.
 */
public sealed interface Element {

  /** Returns turns out per turn in, or travel per turn [mm], without sign. */
  Ratio factor();

  /** Returns +1 if the motion keeps its sense, -1 if it is reversed. */
  int sense();

  /** Tells whether the element ends the chain with a travel. */
  default boolean linear() {
    return false;
  }

  /** Tells whether the element holds its ratio under load; belts that slip do not. */
  default boolean positive() {
    return true;
  }

  /** Returns the factor as a formula with its numbers. */
  String formula();

  /**
   * Two external spur or helical gears.
   *
   * @param driver teeth of the driver
   * @param driven teeth of the driven gear
   */
  record SpurPair(int driver, int driven) implements Element {
    /** Refuses fewer than 5 teeth. */
    public SpurPair {
      Teeth.check("driver", driver);
      Teeth.check("driven", driven);
    }

    @Override
    public Ratio factor() {
      return Ratio.of(driver, driven);
    }

    @Override
    public int sense() {
      return -1;
    }

    @Override
    public String formula() {
      return driver + "/" + driven;
    }
  }

  /**
   * A pinion in a ring with internal teeth, or the ring driving the pinion.
   *
   * @param driver teeth of the driver
   * @param driven teeth of the driven gear
   */
  record InternalPair(int driver, int driven) implements Element {
    /** Refuses fewer than 5 teeth and equal numbers. */
    public InternalPair {
      Teeth.check("driver", driver);
      Teeth.check("driven", driven);
      if (driver == driven) {
        throw new IllegalArgumentException(
            "an internal pair needs a ring with more teeth than its pinion, found "
                + driver
                + " and "
                + driven);
      }
    }

    @Override
    public Ratio factor() {
      return Ratio.of(driver, driven);
    }

    @Override
    public int sense() {
      return 1;
    }

    @Override
    public String formula() {
      return driver + "/" + driven;
    }
  }

  /**
   * A gear between two others: no influence on size, only on the hand of motion and on what fits.
   *
   * @param teeth its teeth
   */
  record Idler(int teeth) implements Element {
    /** Refuses fewer than 5 teeth. */
    public Idler {
      Teeth.check("idler", teeth);
    }

    @Override
    public Ratio factor() {
      return Ratio.ONE;
    }

    @Override
    public int sense() {
      return -1;
    }

    @Override
    public String formula() {
      return "1";
    }
  }

  /** Two shafts joined, or a clutch that is closed. */
  record Coupling() implements Element {
    @Override
    public Ratio factor() {
      return Ratio.ONE;
    }

    @Override
    public int sense() {
      return 1;
    }

    @Override
    public String formula() {
      return "1";
    }
  }

  /**
   * A toothed belt.
   *
   * @param driver teeth of the driving pulley
   * @param driven teeth of the driven pulley
   */
  record ToothedBelt(int driver, int driven) implements Element {
    /** Refuses fewer than 5 teeth. */
    public ToothedBelt {
      Teeth.check("belt driver", driver);
      Teeth.check("belt driven", driven);
    }

    @Override
    public Ratio factor() {
      return Ratio.of(driver, driven);
    }

    @Override
    public int sense() {
      return 1;
    }

    @Override
    public String formula() {
      return driver + "/" + driven;
    }
  }

  /**
   * A V-belt, ribbed or flat belt; it slips one or two per cent under load (common practice), so a
   * chain with it is never exact.
   *
   * @param driver effective diameter of the driving pulley, a length
   * @param driven effective diameter of the driven pulley, a length
   */
  record FrictionBelt(Ratio driver, Ratio driven) implements Element {
    /** Refuses diameters that are not positive. */
    public FrictionBelt {
      Teeth.positive("pulley diameter", driver);
      Teeth.positive("pulley diameter", driven);
    }

    @Override
    public Ratio factor() {
      return driver.over(driven);
    }

    @Override
    public int sense() {
      return 1;
    }

    @Override
    public boolean positive() {
      return false;
    }

    @Override
    public String formula() {
      return "(" + driver.formula() + ")/(" + driven.formula() + ")";
    }
  }

  /**
   * A worm driving its wheel.
   *
   * @param starts threads of the worm
   * @param wheel teeth of the wheel
   * @param hand hand of the worm; a right-hand worm is counted as keeping the sense
   */
  record Worm(int starts, int wheel, Hand hand) implements Element {
    /** Refuses less than one start and fewer than 5 teeth. */
    public Worm {
      Teeth.starts(starts);
      Teeth.check("worm wheel", wheel);
    }

    @Override
    public Ratio factor() {
      return Ratio.of(starts, wheel);
    }

    @Override
    public int sense() {
      return hand.sign();
    }

    @Override
    public String formula() {
      return starts + "/" + wheel;
    }
  }

  /**
   * A screw and its nut.
   *
   * @param pitch axial pitch, a length; {@code 25.4/tpi} is kept exact with the inch as a symbol
   * @param starts threads side by side; lead = starts x pitch
   * @param hand hand of the screw
   */
  record Screw(Ratio pitch, int starts, Hand hand) implements Element {
    /** Refuses a pitch that is not positive and less than one start. */
    public Screw {
      Teeth.positive("screw pitch", pitch);
      Teeth.starts(starts);
    }

    @Override
    public Ratio factor() {
      return pitch.times(starts);
    }

    @Override
    public int sense() {
      return hand.sign();
    }

    @Override
    public boolean linear() {
      return true;
    }

    @Override
    public String formula() {
      return starts + "*(" + pitch.formula() + ")";
    }
  }

  /**
   * A pinion on a rack. The rack is driven by base pitches, so profile shift, wear and depth of
   * engagement change the play and never the travel.
   *
   * @param teeth teeth of the pinion
   * @param pitch pitch of the rack, a length: π times the module, or the circular pitch itself
   */
  record RackAndPinion(int teeth, Ratio pitch) implements Element {
    /** Refuses fewer than 5 teeth and a pitch that is not positive. */
    public RackAndPinion {
      Teeth.check("rack pinion", teeth);
      Teeth.positive("rack pitch", pitch);
    }

    @Override
    public Ratio factor() {
      return pitch.times(teeth);
    }

    @Override
    public int sense() {
      return 1;
    }

    @Override
    public boolean linear() {
      return true;
    }

    @Override
    public String formula() {
      return "(" + pitch.formula() + ")*" + teeth;
    }
  }
}
