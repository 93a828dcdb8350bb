package fettle.desk.pack;

import fettle.machine.made.MadePart;
import fettle.sheets.Assembly;
import fettle.sheets.BesideParts;
import fettle.sheets.PlanFiles;
import fettle.sheets.page.Heads;
import fettle.sheets.revision.Revision;
import fettle.sheets.revision.Revisions;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * A pack with the folder of its files, held against what was issued last.
 *
 * @param pack the pack
 * @param files bytes of each file by its path in the folder of the change
 * @param names paths of its drawings without ending, in the order they are bound
 * @param faults what is wrong with its drawings; empty if nothing is
 * @param fresh whether this issue differs from the last
 */
public record PackFiles(
    Pack pack, Map<String, byte[]> files, List<String> names, List<String> faults, boolean fresh) {

  private static final String REVISIONS = "revisions.csv";
  private static final String ISSUES = "issues.csv";
  private static final String TEXT = "pack.txt";

  /** Keeps its own copies. */
  public PackFiles {
    files = java.util.Collections.unmodifiableMap(new TreeMap<>(files));
    names = List.copyOf(names);
    faults = List.copyOf(faults);
  }

  /**
   * Makes the pack and its files.
   *
   * @param source what it is made from
   * @param standing text of a file that lies in the folder already
   * @param drawn hears the path of each drawing when it is done
   * @throws IllegalArgumentException if a part cannot be drawn, or a record that lies there is none
   */
  public static PackFiles of(
      PackSource source, Function<String, Optional<String>> standing, Consumer<String> drawn) {
    Revisions last =
        standing.apply(REVISIONS).map(Revisions::parse).orElse(new Revisions(List.of()));
    Draughts draughts = new Draughts(source, last, drawn);
    if (source.shows(Held.SHEETS)) {
      draughts.all();
    }
    List<Issue> issues = standing.apply(ISSUES).map(Issue::parse).orElse(List.of());
    Pack pack = Pack.of(source, draughts.drawings, issues, standing.apply(TEXT));
    Map<String, byte[]> files = draughts.files;
    files.put(REVISIONS, bytes(draughts.revisions.text()));
    files.put(ISSUES, bytes(Issue.text(pack.issues())));
    files.put(TEXT, bytes(pack.text()));
    files.put("pack.pdf", pack.pdf());
    files.put("manifest.csv", bytes(manifest(files)));
    return new PackFiles(pack, files, draughts.names, draughts.faults, pack.fresh(issues));
  }

  /** Returns the drawings by the path of their files, without ending. */
  public Map<String, Chapter.Drawing> paths() {
    List<Chapter.Drawing> drawings =
        pack.chapters().stream().flatMap(c -> c.drawings().stream()).toList();
    Map<String, Chapter.Drawing> paths = new java.util.LinkedHashMap<>();
    for (int i = 0; i < drawings.size(); i++) {
      paths.put(names.get(i), drawings.get(i));
    }
    return paths;
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static String manifest(Map<String, byte[]> files) {
    StringBuilder out = new StringBuilder("file,sha-256\n");
    new TreeMap<>(files)
        .forEach((name, bytes) -> out.append(name).append(',').append(hash(bytes)).append('\n'));
    return out.toString();
  }

  private static String hash(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Draws the sheets of a change, the assembly first. */
  private static final class Draughts {

    private final PackSource source;
    private final Revisions last;
    private final Consumer<String> drawn;
    private final List<Chapter.Drawing> drawings = new ArrayList<>();
    private final Map<String, byte[]> files = new TreeMap<>();
    private final List<String> names = new ArrayList<>();
    private final List<String> faults = new ArrayList<>();
    private Revisions revisions;

    Draughts(PackSource source, Revisions last, Consumer<String> drawn) {
      this.source = source;
      this.last = last;
      this.drawn = drawn;
      revisions = last;
    }

    void all() {
      Assembly.of(source.change(), source.parts())
          .map(a -> source.shows(Held.PRICES) ? a : a.withoutCosts())
          .ifPresent(a -> draw("assembly", a.content(), a::files));
      for (MadePart part : source.parts()) {
        String name = "sheets/" + part.key();
        draw(name, part.content(), heads -> PlanFiles.of(part.recipe(), heads));
      }
      for (BesideParts one : BesideParts.of(source.book(), source.change(), source.parts())) {
        draw("sheets/" + one.name(), one.content(), one.draw());
      }
    }

    private void draw(String name, String content, Function<Heads, PlanFiles> draw) {
      Heads heads = source.heads();
      String digest =
          Revisions.digest(content + '\n' + heads.owner() + heads.licence() + heads.angle());
      Revision due = last.due(name, digest, heads.date());
      PlanFiles done = drawn(name, draw, heads.revised(due.index(), due.date()));
      done.bytes()
          .forEach(
              (ending, bytes) -> {
                if (source.shows(Held.SOLIDS) || !isSolid(ending)) {
                  files.put(name + "." + ending, bytes);
                }
              });
      boolean changed = last.current(name).isPresent() && !last.all().contains(due);
      Chapter.News news = changed ? Chapter.News.CHANGED : Chapter.News.SAME;
      names.add(name);
      drawings.add(new Chapter.Drawing(done.sheet(), due.index(), due.date(), news));
      done.faults().forEach(f -> faults.add(name + ": " + f));
      revisions = revisions.with(due);
      drawn.accept(name);
    }

    private static boolean isSolid(String ending) {
      return ending.equals("step") || ending.equals("3mf");
    }

    private static PlanFiles drawn(String name, Function<Heads, PlanFiles> draw, Heads heads) {
      try {
        return draw.apply(heads);
      } catch (IllegalArgumentException e) {
        throw new IllegalArgumentException(name + " cannot be drawn: " + e.getMessage(), e);
      }
    }
  }
}
