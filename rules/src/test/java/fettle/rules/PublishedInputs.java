package fettle.rules;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;

/** Sound inputs of every topic, from the first published row that computes it. */
final class PublishedInputs {

  private static final Path TABLES = Path.of("../mechanics/src/test/resources/published");

  private PublishedInputs() {}

  static Map<String, Map<String, String>> byTopic() {
    Map<String, Map<String, String>> usual = new LinkedHashMap<>();
    try (Stream<Path> tables = Files.list(TABLES)) {
      for (Path table : tables.sorted().toList()) {
        for (String line : Files.readAllLines(table)) {
          String[] cells = line.split(",", 3);
          if (cells.length == 3) {
            usual.putIfAbsent(cells[1], inputs(cells[2]));
          }
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return usual;
  }

  private static Map<String, String> inputs(String rest) {
    boolean quoted = rest.startsWith("\"");
    int end = quoted ? rest.indexOf('"', 1) : rest.indexOf(',');
    String cell = rest.substring(quoted ? 1 : 0, Math.max(quoted ? 1 : 0, end));
    Map<String, String> inputs = new LinkedHashMap<>();
    for (String part : cell.split(" \\| ", -1)) {
      String[] pair = part.split("=", 2);
      if (pair.length == 2) {
        inputs.put(pair[0].trim(), pair[1].trim());
      }
    }
    return inputs;
  }
}
