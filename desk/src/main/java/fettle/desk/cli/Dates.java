package fettle.desk.cli;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;

/** Dates of issue on the command line. */
final class Dates {

  private Dates() {}

  /** Returns a date that was given, as ISO 8601 writes it; today if none was. */
  static String given(String option, String text) {
    if (text.isEmpty()) {
      return LocalDate.now(ZoneId.systemDefault()).toString();
    }
    try {
      return LocalDate.parse(text).toString();
    } catch (DateTimeParseException e) {
      throw Failure.input(option + ": found '" + text + "', expected a date such as 2026-01-31");
    }
  }
}
