package fettle.desk.web;

import fettle.machine.text.Problem;
import java.io.IOException;
import java.util.List;

/** Ends a request with a page that says what is the matter and what to do next. */
final class Refused extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final int status;
  private final String next;
  private final transient List<Problem> problems;

  private Refused(int status, String message, String next, List<Problem> problems) {
    super(message, null, false, false);
    this.status = status;
    this.next = next;
    this.problems = List.copyOf(problems);
  }

  /** There is nothing of that name. */
  static Refused missing(String message, String next) {
    return new Refused(404, message, next, List.of());
  }

  /** What was sent cannot be taken. */
  static Refused wrong(String message, String next) {
    return new Refused(400, message, next, List.of());
  }

  /** The request does not come from one of our own pages. */
  static Refused foreign(String message) {
    return new Refused(403, message, "Open the desk by the address it printed.", List.of());
  }

  /** The book was changed by somebody else in between. */
  static Refused overtaken(String message, String next) {
    return new Refused(409, message, next, List.of());
  }

  /** The book, or a state of it, cannot be read. */
  static Refused unsound(List<Problem> problems) {
    return new Refused(
        422,
        "The book cannot be read as it stands, so nothing can be reckoned.",
        "Mend the lines below in the files; this page shows the book again as soon as they are"
            + " right.",
        problems);
  }

  /** More was sent than a form can hold. */
  static Refused tooMuch() {
    return new Refused(
        413, "More was sent than a form of the desk holds.", "Send less at once.", List.of());
  }

  /** The program is wrong. */
  static Refused fault(String message) {
    return new Refused(
        500, message, "Nothing was written. Try another page; keep the report.", List.of());
  }

  /** The disk refused. */
  static Refused disk(String message) {
    return new Refused(
        500, message, "Look whether the disk is full or the book's folder is closed.", List.of());
  }

  /** The disk refused to take something; nothing of what was sent is in the book. */
  static Refused unwritten(String what, IOException why) {
    return new Refused(
        500,
        what + ": " + DiskWords.reason(why) + ". Nothing was written; the book is as it was.",
        DiskWords.remedy(why),
        List.of());
  }

  /** The disk refused after part of it was taken, and what was taken could not be put back. */
  static Refused partly(String message) {
    return new Refused(
        500,
        message,
        "Look at the book as it is now; the history holds what stood before.",
        List.of());
  }

  int status() {
    return status;
  }

  String words() {
    return String.valueOf(getMessage());
  }

  String next() {
    return next;
  }

  List<Problem> problems() {
    return problems;
  }
}
