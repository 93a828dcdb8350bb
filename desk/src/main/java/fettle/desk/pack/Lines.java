package fettle.desk.pack;

import fettle.sheets.marks.Lettering;
import java.util.ArrayList;
import java.util.List;

/** Text broken into lines of the drawing lettering. */
final class Lines {

  private Lines() {}

  /** Returns a text with the signs that the lettering has in place of those it lacks. */
  static String plain(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case 0x2212, 0x2014, 0x2010, 0x2011 -> out.append('–');
                case 0x2018, 0x2019 -> out.append('\'');
                case 0x201c, 0x201d, 0x201e -> out.append('"');
                case 0x2026 -> out.append("...");
                case 0x00a0, 0x202f, 0x2009 -> out.append(' ');
                case 0x2264 -> out.append("<=");
                case 0x2265 -> out.append(">=");
                case 0x00f8, 0x00d8 -> out.append('⌀');
                case 0x03bc -> out.append('µ');
                case 0x2192 -> out.append("->");
                case 0x203a -> out.append('/');
                default -> {
                  if (Character.isISOControl(c)) {
                    out.append(' ');
                  } else {
                    out.appendCodePoint(c);
                  }
                }
              }
            });
    return out.toString();
  }

  /**
   * Breaks a text into lines; a word that is longer than a line is broken, too.
   *
   * @param text the text
   * @param height height of the lettering [mm]
   * @param room width of a line [mm]
   */
  static List<String> of(String text, double height, double room) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : plain(text).strip().split("\\s+")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (Lettering.width(longer, height) <= room) {
        line = longer;
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line);
      }
      line = word;
      while (Lettering.width(line, height) > room && line.length() > 1) {
        int cut = fitting(line, height, room);
        lines.add(line.substring(0, cut));
        line = line.substring(cut);
      }
    }
    lines.add(line);
    return lines;
  }

  /** Returns how many characters of a long word go on a line; rather to a hyphen or slash. */
  private static int fitting(String word, double height, double room) {
    int most = 1;
    while (most < word.length() && Lettering.width(word.substring(0, most + 1), height) <= room) {
      most++;
    }
    for (int i = most; i > most / 2; i--) {
      if ("-/.,_".indexOf(word.charAt(i - 1)) >= 0) {
        return i;
      }
    }
    return Character.isHighSurrogate(word.charAt(most - 1)) && most > 1 ? most - 1 : most;
  }
}
