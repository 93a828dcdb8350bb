package fettle.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The checklist of the desk's doors names tests that exist, and leaves no line without an answer.
 */
final class ChecklistTest {

  private static final Path ROOT = Path.of("..");
  private static final Pattern NAMED = Pattern.compile("`(\\w+Test)#(\\w+)`");
  private static final Pattern LINE =
      Pattern.compile("(?m)^\\| [\\d.]+[^|]*\\|[^|]+\\|([^|]+)\\|$");

  private static Optional<Path> source(String name) throws IOException {
    try (Stream<Path> modules = Files.list(ROOT)) {
      for (Path tests : modules.map(m -> m.resolve("src/test/java")).toList()) {
        if (Files.isDirectory(tests)) {
          try (Stream<Path> files = Files.walk(tests)) {
            Optional<Path> file = files.filter(f -> f.endsWith(name + ".java")).findFirst();
            if (file.isPresent()) {
              return file;
            }
          }
        }
      }
    }
    return Optional.empty();
  }

  @Test
  void everyTestNamedExists() throws IOException {
    List<String> missing = new ArrayList<>();
    List<MatchResult> named =
        NAMED.matcher(Files.readString(ROOT.resolve("docs/asvs.md"))).results().toList();
    for (MatchResult one : named) {
      Optional<Path> source = source(one.group(1));
      Pattern method =
          Pattern.compile("@(Test|ParameterizedTest)[^;]*?void " + one.group(2) + "\\(");
      if (source.isEmpty() || !method.matcher(Files.readString(source.get())).find()) {
        missing.add(one.group());
      }
    }
    assertThat(missing).isEmpty();
    assertThat(named).hasSizeGreaterThan(20);
  }

  @Test
  void everyLineIsAnswered() throws IOException {
    List<MatchResult> lines =
        LINE.matcher(Files.readString(ROOT.resolve("docs/asvs.md"))).results().toList();
    assertThat(lines)
        .hasSizeGreaterThan(30)
        .allMatch(
            line ->
                NAMED.matcher(line.group(1)).find()
                    || line.group(1).matches(" (does not apply|do not apply|not met).{10,} "));
  }
}
