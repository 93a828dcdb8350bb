package fettle.mechanics.gears;

import fettle.mechanics.base.Ratio;
import fettle.mechanics.base.Source;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;

/** Standard pitches, as lists of exact leads for one start. */
public enum ThreadPitches {
  /** Distinct pitches of ISO 261, 0.2 to 8 mm. */
  ISO_261(
      "ISO 261",
      Sources.ISO_261,
      false,
      "0.2 0.25 0.3 0.35 0.4 0.45 0.5 0.6 0.7 0.75 0.8 1 1.25 1.5 1.75 2 2.5 3 3.5 4 4.5 5 5.5 6"
          + " 8"),
  /** Coarse pitches of ISO 262, M3 to M24. */
  ISO_COARSE("ISO coarse", Sources.ISO_262, false, "0.5 0.6 0.7 0.8 1 1.25 1.5 1.75 2 2.5 3"),
  /** Threads per inch of the unified series. */
  UTS(
      "UTS",
      Sources.UTS,
      true,
      "4 4.5 5 6 7 8 9 10 11 12 13 14 16 18 20 24 28 32 36 40 44 48 56 64 72 80"),
  /** Unified coarse, 1/4 to 1 in. */
  UNC("UNC", Sources.UTS, true, "20 18 16 14 13 12 11 10 9 8"),
  /** Unified fine, 1/4 to 1 in. */
  UNF("UNF", Sources.UTS, true, "28 24 20 18 16 14 12"),
  /** Unified extra fine, 1/4 to 1 in. */
  UNEF("UNEF", Sources.UTS, true, "32 28 24 20"),
  /** Pipe threads G. */
  PIPE("pipe G", Source.memory("ISO 228-1:2000", "table 1"), true, "28 19 14 11"),
  /** Taper pipe threads NPT. */
  NPT("NPT", Source.memory("ASME B1.20.1-2013", "table 2"), true, "27 18 14 11.5 8"),
  /** Whitworth. */
  WHITWORTH("Whitworth", Source.memory("BS 84:2007", "BSW"), true, "24 20 18 16 14 12 11 10 9 8"),
  /** Brass threads. */
  BRASS("brass", Source.practice("26 threads per inch on brass tube"), true, "26"),
  /** British Association, numbers 0, 2, 4 and 6. */
  BA("BA", Source.memory("BS 93:2008", "table 1"), false, "1 0.81 0.66 0.53");

  private final String label;

  @SuppressWarnings("ImmutableEnumChecker") // a record of strings
  private final Source source;

  private final boolean perInch;
  private final String numbers;

  ThreadPitches(String label, Source source, boolean perInch, String numbers) {
    this.label = label;
    this.source = source;
    this.perInch = perInch;
    this.numbers = numbers;
  }

  /** Returns the name of the list. */
  public String label() {
    return label;
  }

  /** Returns where the list comes from. */
  public Source source() {
    return source;
  }

  /** Tells whether the numbers are threads per inch. */
  public boolean perInch() {
    return perInch;
  }

  /** Returns the numbers as printed: millimetres, or threads per inch. */
  public List<Ratio> printed() {
    return Arrays.stream(numbers.split(" ", -1)).map(n -> Ratio.of(new BigDecimal(n))).toList();
  }

  /** Returns the pitches as exact lengths. */
  public List<Ratio> leads() {
    return printed().stream().map(n -> perInch ? Ratio.INCH.over(n) : n).toList();
  }

  /** Returns the name of one thread of the list. */
  public String name(Ratio printed) {
    String number = new BigDecimal(printed.decimal(3)).stripTrailingZeros().toPlainString();
    return number + (perInch ? " tpi" : " mm");
  }
}
