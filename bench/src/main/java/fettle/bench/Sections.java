package fettle.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** The sections of a page of results, so that a run of some groups keeps what others showed. */
final class Sections {

  private static final String HEAD = "\n## ";
  private static final String MEASURED = "Measured on ";

  private Sections() {}

  /** Reads the sections of a page, by their titles; none if there is no page. */
  static Map<String, String> of(Path page) throws IOException {
    return Files.isRegularFile(page) ? of(Files.readString(page)) : Map.of();
  }

  /** Reads sections; one that does not say where it was measured gets the words of the page. */
  static Map<String, String> of(String page) {
    Map<String, String> sections = new LinkedHashMap<>();
    String[] parts = page.split("(?m)^## ");
    int at = parts[0].indexOf(MEASURED);
    String measured = at < 0 ? "" : parts[0].substring(at).strip().replace('\n', ' ');
    for (int i = 1; i < parts.length; i++) {
      int end = parts[i].indexOf('\n');
      String title = parts[i].substring(0, end).strip();
      String text = HEAD + title + "\n" + parts[i].substring(end + 1).stripTrailing() + "\n";
      boolean said = measured.isEmpty() || text.contains(MEASURED);
      sections.put(title, said ? text : text + "\n" + measured.replaceAll(" +", " ") + "\n");
    }
    return sections;
  }
}
