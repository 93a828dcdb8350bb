package fettle.sheets.revision;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/**
 * The list of revisions, oldest first; a sheet's last line is the one that is out.
 *
 * @param all every issue of every sheet
 */
public record Revisions(List<Revision> all) {

  private static final String HEAD = "sheet,revision,date,digest";

  /** Keeps its own copy. */
  public Revisions {
    all = List.copyOf(all);
  }

  /**
   * Reads the list.
   *
   * @throws IllegalArgumentException if a line is no line of the list
   */
  public static Revisions parse(String text) {
    List<Revision> all = new ArrayList<>();
    int number = 0;
    for (String line : text.lines().toList()) {
      number++;
      if (line.isBlank() || line.equals(HEAD)) {
        continue;
      }
      String[] c = line.split(",", -1);
      if (c.length != 4 || !c[1].matches("[A-HJ-NP-Z]{1,4}") || c[0].isBlank()) {
        throw new IllegalArgumentException(
            "line " + number + ": expected " + HEAD + ", found '" + line + "'");
      }
      all.add(new Revision(c[0], c[1], c[2], c[3]));
    }
    return new Revisions(all);
  }

  /** Returns the list as text. */
  public String text() {
    StringBuilder text = new StringBuilder(HEAD).append('\n');
    for (Revision r : all) {
      text.append(String.join(",", r.sheet(), r.index(), r.date(), r.digest())).append('\n');
    }
    return text.toString();
  }

  /** Returns the revision of a sheet that is out. */
  public Optional<Revision> current(String sheet) {
    return all.stream().filter(r -> r.sheet().equals(sheet)).reduce((first, last) -> last);
  }

  /** Returns the revision a sheet of this content has: the one that is out, or a new one. */
  public Revision due(String sheet, String digest, String date) {
    Optional<Revision> out = current(sheet);
    if (out.isPresent() && out.get().digest().equals(digest)) {
      return out.get();
    }
    String index = out.map(r -> Revision.after(r.index())).orElse(Revision.first());
    return new Revision(sheet, index, date, digest);
  }

  /** Returns the list with a revision added, unless it is out already. */
  public Revisions with(Revision revision) {
    if (all.contains(revision)) {
      return this;
    }
    List<Revision> more = new ArrayList<>(all);
    more.add(revision);
    return new Revisions(more);
  }

  /** Returns the digest of a content. */
  public static String digest(String content) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(content.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(hash, 0, 16);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
