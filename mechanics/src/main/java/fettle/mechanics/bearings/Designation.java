package fettle.mechanics.bearings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What a bearing's number says: kind, series, bore and what its suffixes mean. Only bore, outside
 * diameter and width are fixed by it; balls, contact angle and ratings are the maker's, so letters
 * for the contact angle are reported and never believed.
 *
 * @param text the number as given
 * @param type kind of bearing
 * @param series series code
 * @param bore d [mm]
 * @param boundary outside sizes; null if the series is not tabulated for this bore
 * @param suffixes meaning of each suffix
 * @see Sources#DESIGNATION
 */
public record Designation(
    String text,
    BearingType type,
    String series,
    double bore,
    @Nullable BoundaryDimensions boundary,
    List<String> suffixes) {

  private static final Pattern PARTS =
      Pattern.compile("(NU|NJ|NUP|N|HK|NA)?(\\d{2,6})(?:/(\\d{1,3}))?(.*)");

  private static final List<String> KNOWN_SERIES =
      List.of(
          "618", "619", "160", "60", "62", "63", "64", "70", "72", "73", "719", "718", "511", "512",
          "513", "522", "302", "303", "320", "322", "323", "32", "33", "12", "13", "22", "23");

  /** Keeps its own copy. */
  public Designation {
    suffixes = List.copyOf(suffixes);
  }

  /**
   * Reads a bearing number such as {@code 6204-2RS}, {@code 7204 B}, {@code 51104} or {@code
   * 62/22}.
   *
   * @throws IllegalArgumentException if it cannot be read; the message says what was expected
   */
  public static Designation parse(String text) {
    String clean = text.trim().toUpperCase(Locale.ROOT).replace(" ", "");
    Matcher m = PARTS.matcher(clean);
    if (clean.length() > 40 || !m.matches()) {
      throw unreadable(text);
    }
    String letters = m.group(1) == null ? "" : m.group(1);
    String digits = m.group(2);
    String stroke = m.group(3);
    String tail = m.group(4);
    if (!letters.isEmpty()) {
      return lettered(text, letters, digits, tail);
    }
    String series;
    double bore;
    if (stroke != null) {
      series = digits;
      bore = Double.parseDouble(stroke);
    } else if (digits.length() == 3) {
      series = digits.substring(0, 2);
      bore = digits.charAt(2) - '0';
    } else {
      int cut = digits.length() - 2;
      series = digits.substring(0, cut);
      bore = boreOf(digits.substring(cut));
    }
    if (stroke == null && digits.length() == 4 && isSmallThin(digits)) {
      series = digits.substring(0, 3);
      bore = digits.charAt(3) - '0';
    }
    String read = series.equals("68") ? "618" : series.equals("69") ? "619" : series;
    if (!KNOWN_SERIES.contains(read) || !(bore > 0)) {
      throw unreadable(text);
    }
    BearingType type = type(read);
    Optional<BoundaryDimensions> boundary = BoundaryDimensions.of(read, bore);
    return new Designation(
        text.trim(), type, read, bore, boundary.orElse(null), suffixes(tail, type));
  }

  private static boolean isSmallThin(String digits) {
    return (digits.startsWith("618") || digits.startsWith("619")) && digits.charAt(3) != '0';
  }

  private static Designation lettered(String text, String letters, String digits, String tail) {
    if (digits.length() < 3) {
      throw unreadable(text);
    }
    boolean needle = letters.equals("HK") || letters.equals("NA");
    int cut = digits.length() - 2;
    double bore =
        letters.equals("HK")
            ? Double.parseDouble(digits.substring(0, 2))
            : boreOf(digits.substring(cut));
    return new Designation(
        text.trim(),
        needle ? BearingType.NEEDLE_ROLLER : BearingType.CYLINDRICAL_ROLLER,
        letters + (letters.equals("HK") ? "" : digits.substring(0, cut)),
        bore,
        null,
        suffixes(tail, BearingType.CYLINDRICAL_ROLLER));
  }

  /**
   * Returns the bore of a two-digit code: 00, 01, 02, 03 are 10, 12, 15, 17; from 04 five times the
   * code.
   *
   * @param code two digits
   * @return d [mm]
   */
  static double boreOf(String code) {
    int number = Integer.parseInt(code);
    return switch (number) {
      case 0 -> 10;
      case 1 -> 12;
      case 2 -> 15;
      case 3 -> 17;
      default -> 5.0 * number;
    };
  }

  private static BearingType type(String series) {
    return switch (series.charAt(0)) {
      case '1' -> series.equals("160") ? BearingType.DEEP_GROOVE : BearingType.SELF_ALIGNING;
      case '2' -> BearingType.SPHERICAL_ROLLER;
      case '3' ->
          series.length() == 2 ? BearingType.ANGULAR_CONTACT_DOUBLE : BearingType.TAPERED_ROLLER;
      case '5' ->
          series.charAt(1) == '2' ? BearingType.THRUST_BALL_DOUBLE : BearingType.THRUST_BALL;
      case '7' -> BearingType.ANGULAR_CONTACT;
      default -> BearingType.DEEP_GROOVE;
    };
  }

  private static List<String> suffixes(String tail, BearingType type) {
    List<String> meanings = new ArrayList<>();
    Matcher m =
        Pattern.compile("2RS[1R]?|RS[1R]?|2Z[RZ]?|ZZ|Z|C[2345]|CN|P[6543]|NR|DB|DF|DT|[A-Z]|\\d+")
            .matcher(tail);
    while (m.find()) {
      meanings.add(meaning(m.group(), type));
    }
    return meanings;
  }

  private static String meaning(String suffix, BearingType type) {
    if (suffix.startsWith("2RS") || suffix.startsWith("RS")) {
      return suffix + ": contact seal, adds drag and lowers the speed limit";
    }
    if (suffix.startsWith("2Z") || suffix.equals("ZZ") || suffix.equals("Z")) {
      return suffix + ": shield, does not touch";
    }
    return switch (suffix) {
      case "C2" -> "C2: radial clearance less than normal";
      case "CN" -> "CN: normal radial clearance";
      case "C3", "C4", "C5" -> suffix + ": radial clearance more than normal";
      case "P6", "P5", "P4", "P3" -> suffix + ": accuracy class of ISO 492 (P4 finer than P6)";
      case "K" -> "K: taper bore 1:12";
      case "N" -> "N: snap ring groove";
      case "NR" -> "NR: snap ring groove with ring";
      case "DB" -> "DB: pair, back to back";
      case "DF" -> "DF: pair, face to face";
      case "DT" -> "DT: pair in tandem";
      default ->
          type == BearingType.ANGULAR_CONTACT && suffix.matches("[A-E]")
              ? suffix + ": contact angle letter; makers differ, ask for the angle in degrees"
              : suffix + ": maker's own";
    };
  }

  private static IllegalArgumentException unreadable(String text) {
    String shown = text.length() > 40 ? text.substring(0, 40) + "…" : text;
    return new IllegalArgumentException(
        "bearing number: found '"
            + shown
            + "', expected a series and a bore code such as 6204, 7204 B, 51104, 30205, 608 or 62/22");
  }
}
