package fettle.mechanics.metrology;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A data set of the test resources, columns by name; lines that start with # tell its source. */
record DataSet(List<String> columns, List<List<String>> rows) {

  static DataSet of(String name) {
    try {
      List<List<String>> lines =
          Files.readAllLines(Path.of("src/test/resources/datasets", name)).stream()
              .filter(l -> !l.startsWith("#") && !l.isBlank())
              .map(l -> List.of(l.split(",")))
              .toList();
      return new DataSet(lines.get(0), lines.subList(1, lines.size()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  double[] column(String name) {
    int index = columns.indexOf(name);
    return rows.stream().mapToDouble(r -> Double.parseDouble(r.get(index))).toArray();
  }
}
