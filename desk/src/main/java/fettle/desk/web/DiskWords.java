package fettle.desk.web;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.util.Locale;
import java.util.Map;

/** Says in the machinist's words why a disk did not take what was to be written. */
enum DiskWords {
  /** There is no room. */
  FULL("the disk is full", "Make room on the disk, then send it again."),
  /** Files of this size are not let. */
  TOO_LARGE(
      "the system lets no file grow so large",
      "Ask who set the limit on the size of files, then send it again."),
  /** The disk as a whole cannot be written. */
  READ_ONLY(
      "the disk can only be read", "Make the disk writable, or move the book, then send it again."),
  /** The folder or file is closed to this user. */
  CLOSED(
      "the folder or a file in it may not be written",
      "Open the book's folder for writing, then send it again."),
  /** Anything else. */
  OTHER("", "Look whether the disk is full or the book's folder is closed, then send it again.");

  private static final Map<String, DiskWords> SIGNS =
      Map.of(
          "no space left", FULL,
          "not enough space", FULL,
          "quota exceeded", FULL,
          "file too large", TOO_LARGE,
          "read-only file system", READ_ONLY,
          "permission denied", CLOSED,
          "operation not permitted", CLOSED,
          "access is denied", CLOSED);

  private final String reason;
  private final String remedy;

  DiskWords(String reason, String remedy) {
    this.reason = reason;
    this.remedy = remedy;
  }

  /** Returns the reason, to stand behind a colon. */
  static String reason(IOException why) {
    DiskWords words = of(why);
    if (words != OTHER) {
      return words.reason;
    }
    boolean told = why instanceof FileSystemException f && f.getReason() != null;
    return told ? ((FileSystemException) why).getReason() : String.valueOf(why.getMessage());
  }

  /** Returns what to do about it. */
  static String remedy(IOException why) {
    return of(why).remedy;
  }

  private static DiskWords of(IOException why) {
    for (Throwable t = why; t != null; t = t.getCause()) {
      if (t instanceof AccessDeniedException) {
        return CLOSED;
      }
      String text = String.valueOf(t.getMessage()).toLowerCase(Locale.ROOT);
      for (Map.Entry<String, DiskWords> sign : SIGNS.entrySet()) {
        if (text.contains(sign.getKey())) {
          return sign.getValue();
        }
      }
    }
    return OTHER;
  }
}
