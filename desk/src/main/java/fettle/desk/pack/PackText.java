package fettle.desk.pack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Chapters as plain text, line by line, so that two issues can be held against each other. */
final class PackText {

  private static final String MARK = "== ";

  private PackText() {}

  static String of(List<Chapter> chapters) {
    StringBuilder out = new StringBuilder();
    for (Chapter chapter : chapters) {
      out.append(out.length() == 0 ? "" : "\n").append(MARK).append(chapter.title()).append('\n');
      for (Block block : chapter.blocks()) {
        lines(block).forEach(l -> out.append(clean(l)).append('\n'));
      }
      for (Chapter.Drawing d : chapter.drawings()) {
        out.append(
                clean(
                    d.sheet().number()
                        + " | "
                        + d.sheet().title()
                        + " | "
                        + d.sheet().format()
                        + " | "
                        + d.sheet().scale()
                        + " | revision "
                        + d.revision()
                        + " of "
                        + d.date()))
            .append('\n');
      }
    }
    return out.toString();
  }

  /** A line of the book never looks like a heading of ours, and stays one line. */
  private static String clean(String line) {
    String one = line.replaceAll("\\p{Cntrl}+", " ");
    return one.startsWith(MARK) ? " " + one : one;
  }

  private static List<String> lines(Block block) {
    List<String> lines = new ArrayList<>();
    if (block instanceof Block.Heading h) {
      lines.add("");
      lines.add("-- " + h.words());
    } else if (block instanceof Block.Prose p) {
      lines.add(p.words());
    } else if (block instanceof Block.Point p) {
      lines.add("* " + p.words());
    } else if (block instanceof Block.Step s) {
      lines.add("[ ] " + s.number() + "  " + s.words());
      s.more().forEach(m -> lines.add("      " + m));
    } else if (block instanceof Block.Caution c) {
      lines.add("! " + c.words());
    } else if (block instanceof Block.Ticks t) {
      lines.add(t.name() + " | " + t.before() + " | " + t.after() + " | " + t.verdict());
    } else if (block instanceof Block.Grid g) {
      lines.add(String.join(" | ", g.columns().stream().map(Block.Column::head).toList()));
      g.rows().forEach(r -> lines.add(String.join(" | ", r)));
    } else if (block instanceof Block.Form f) {
      lines.add(String.join(" | ", f.heads().stream().map(String::strip).toList()));
      f.rows().forEach(r -> lines.add(String.join(" | ", r) + " | ____"));
    }
    return lines;
  }

  /** Returns the lines of each chapter of a text. */
  static Map<String, List<String>> chapters(String text) {
    Map<String, List<String>> chapters = new LinkedHashMap<>();
    String title = "";
    for (String line : text.lines().toList()) {
      if (line.startsWith(MARK)) {
        title = line.substring(MARK.length());
        chapters.putIfAbsent(title, new ArrayList<>());
      } else if (!title.isEmpty() && !line.isBlank()) {
        chapters.computeIfAbsent(title, t -> new ArrayList<>()).add(line);
      }
    }
    return chapters;
  }

  /** Returns in words what differs between two texts; empty if nothing does. */
  static String difference(String old, String now) {
    Map<String, List<String>> before = chapters(old);
    Map<String, List<String>> after = chapters(now);
    List<String> said = new ArrayList<>();
    after.forEach(
        (title, lines) -> {
          List<String> was = before.get(title);
          if (was == null) {
            said.add(title + " (new)");
          } else if (!was.equals(lines)) {
            said.add(title + " (" + moved(was, lines) + ")");
          }
        });
    before.keySet().stream()
        .filter(t -> !after.containsKey(t))
        .forEach(t -> said.add(t + " (left out)"));
    return String.join("; ", said);
  }

  private static String moved(List<String> was, List<String> lines) {
    List<String> added = new ArrayList<>(lines);
    was.forEach(added::remove);
    List<String> gone = new ArrayList<>(was);
    lines.forEach(gone::remove);
    if (added.isEmpty() && gone.isEmpty()) {
      return "in another order";
    }
    int same = Math.min(added.size(), gone.size());
    List<String> parts = new ArrayList<>();
    counted(parts, same, "changed");
    counted(parts, added.size() - same, "added");
    counted(parts, gone.size() - same, "gone");
    return String.join(", ", parts);
  }

  private static void counted(List<String> parts, int count, String what) {
    if (count > 0) {
      parts.add(count + (count == 1 ? " line " : " lines ") + what);
    }
  }
}
