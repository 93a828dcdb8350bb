package fettle.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Compares with a golden file; with {@code -Dgolden=write} writes it instead. */
final class Golden {

  private Golden() {}

  static void check(String name, String text) {
    Path file = Path.of("src/test/resources/golden").resolve(name);
    try {
      if ("write".equals(System.getProperty("golden"))) {
        Files.writeString(file, text);
      }
      assertThat(text).isEqualTo(Files.readString(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
