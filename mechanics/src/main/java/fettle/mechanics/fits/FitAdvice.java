package fettle.mechanics.fits;

import java.util.List;

/**
 * Which class a seat or fit of a small lathe usually takes. Custom of the trade: the ring that sees
 * a load turning relative to it takes the tight fit.
 */
public enum FitAdvice {
  SHAFT_ROTATING_LIGHT(
      "bearing-shaft-rotating-light", "inner ring turns, load below 0.06 C: feed screws"),
  SHAFT_ROTATING("bearing-shaft-rotating", "inner ring turns, load 0.06 to 0.13 C: spindles"),
  SHAFT_STATIONARY("bearing-shaft-stationary", "inner ring stands: idlers, change-gear studs"),
  HOUSING_SLIDING("bearing-housing-sliding", "outer ring stands and may slide: floating side"),
  HOUSING_LOCATED("bearing-housing-located", "outer ring stands, located side"),
  HOUSING_LIGHT_PRESS("bearing-housing-light-press", "outer ring stands, light press"),
  HOUSING_ROTATING("bearing-housing-rotating", "outer ring turns: pulleys on bearings"),
  THRUST_SHAFT("thrust-bearing-shaft", "shaft washer of a thrust ball bearing"),
  BUSH_OUTSIDE("bush-outside", "bush pressed into a bore"),
  BUSH_LIGHT("bush-outside-light", "bush pressed into a bore, light"),
  JOURNAL("running-journal", "oiled journal that turns"),
  JOURNAL_LONG("running-journal-long", "long or dirty journal that turns"),
  JOURNAL_SLOW("slow-precise-journal", "feed-screw journal, slow and precise"),
  JOURNAL_BARELY("barely-turning-journal", "journal that barely turns"),
  HANDWHEEL("handwheel-keyed", "keyed handwheel, slides on"),
  HANDWHEEL_FIRM("handwheel-keyed-firm", "keyed handwheel without shake"),
  HANDWHEEL_TAPPED("handwheel-tapped-on", "handwheel tapped on by hand"),
  DIAL("dial-on-hub", "dial ring with friction spring or clamp"),
  SPIGOT("locating-spigot", "removable locating spigot"),
  DOWEL("dowel", "dowel, fast in one part; ream the other to slide"),
  REGISTER("bracket-register", "register of a bracket"),
  KEYWAY_SHAFT("keyway-shaft", "width of the keyway in the shaft; P9 if it must be tight"),
  KEYWAY_HUB("keyway-hub", "width of the keyway in the hub; P9 if it must be tight");

  private final String word;
  private final String meaning;

  FitAdvice(String word, String meaning) {
    this.word = word;
    this.meaning = meaning;
  }

  /** Returns the word it is asked for by. */
  public String word() {
    return word;
  }

  /** Returns what it is for. */
  public String meaning() {
    return meaning;
  }

  /** Returns all words. */
  public static List<String> words() {
    return List.of(values()).stream().map(FitAdvice::word).toList();
  }

  /** Returns the advice asked for by that word. */
  public static FitAdvice of(String word) {
    return List.of(values()).stream()
        .filter(a -> a.word.equals(word))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "purpose '" + word + "': expected one of " + String.join(", ", words())));
  }

  /**
   * Returns the usual class or fit.
   *
   * @param size nominal size [mm]
   */
  public Designation at(double size) {
    boolean small = size <= 18;
    String written =
        switch (this) {
          case SHAFT_ROTATING_LIGHT -> small ? "js5" : "js6";
          case SHAFT_ROTATING -> small ? "js5" : "k5";
          case SHAFT_STATIONARY -> "g6";
          case HOUSING_SLIDING -> "H7";
          case HOUSING_LOCATED -> "J7";
          case HOUSING_LIGHT_PRESS -> "K7";
          case HOUSING_ROTATING -> "N7";
          case THRUST_SHAFT -> "j6";
          case BUSH_OUTSIDE -> "H7/s6";
          case BUSH_LIGHT -> "H7/r6";
          case JOURNAL -> "H7/f7";
          case JOURNAL_LONG -> "H7/e8";
          case JOURNAL_SLOW, DIAL, REGISTER -> "H7/g6";
          case JOURNAL_BARELY, HANDWHEEL, SPIGOT -> "H7/h6";
          case HANDWHEEL_FIRM -> "H7/k6";
          case HANDWHEEL_TAPPED -> "H7/js6";
          case DOWEL -> "H7/m6";
          case KEYWAY_SHAFT -> "N9";
          case KEYWAY_HUB -> "JS9";
        };
    return Designation.parse(written).at(size);
  }

  /** Tells whether the class is a seat on or in a rolling bearing. */
  public boolean isBearingSeat() {
    return compareTo(THRUST_SHAFT) <= 0;
  }
}
