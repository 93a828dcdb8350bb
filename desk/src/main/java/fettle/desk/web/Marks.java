package fettle.desk.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Short marks of texts, by which a change made elsewhere is noticed. */
final class Marks {

  private static final int LENGTH = 20;

  private Marks() {}

  /** Returns the mark of a text: the first digits of its SHA-256. */
  static String of(String text) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest).substring(0, LENGTH);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
