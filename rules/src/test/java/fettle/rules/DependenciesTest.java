package fettle.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** No library without a reason: the table of ARCHITECTURE.md lists what the poms use, no more. */
final class DependenciesTest {

  private static final Path ROOT = Path.of("..");
  private static final Pattern USED =
      Pattern.compile(
          "<(?:dependency|path)>\\s*<groupId>([^<]+)</groupId>\\s*<artifactId>([^<]+)</artifactId>");
  private static final Pattern MANAGED =
      Pattern.compile("(?s)<dependencyManagement>.*?</dependencyManagement>");
  private static final Pattern PROFILES = Pattern.compile("(?s)<profiles>.*</profiles>");
  private static final Pattern VERSION =
      Pattern.compile("<artifactId>([^<]+)</artifactId>\\s*<version>([^<]+)</version>");
  private static final Pattern REASON = Pattern.compile("(?m)^\\| `([^`]+)` \\| (.+) \\|$");

  private static List<Path> poms() throws IOException {
    try (Stream<Path> files = Files.walk(ROOT, 2)) {
      return files.filter(f -> f.endsWith("pom.xml")).sorted().toList();
    }
  }

  @Test
  void everyLibraryHasAReasonAndEveryReasonALibrary() throws IOException {
    TreeSet<String> used = new TreeSet<>();
    for (Path pom : poms()) {
      String text = Files.readString(pom);
      String own = PROFILES.matcher(MANAGED.matcher(text).replaceAll("")).replaceAll("");
      USED.matcher(own)
          .results()
          .filter(m -> !m.group(1).equals("fettle"))
          .forEach(m -> used.add(m.group(2)));
    }
    String architecture = Files.readString(ROOT.resolve("ARCHITECTURE.md"));
    List<MatchResult> reasons =
        REASON
            .matcher(architecture.substring(architecture.indexOf("## Why each library")))
            .results()
            .toList();
    TreeSet<String> given =
        reasons.stream().map(m -> m.group(1)).collect(Collectors.toCollection(TreeSet::new));
    assertThat(given).isEqualTo(used);
    assertThat(reasons).hasSameSizeAs(given).allMatch(m -> m.group(2).length() > 4);
  }

  @Test
  void everyVersionIsPinned() throws IOException {
    String root = Files.readString(ROOT.resolve("pom.xml"));
    List<String> loose = new ArrayList<>();
    for (Path pom : poms()) {
      VERSION
          .matcher(Files.readString(pom))
          .results()
          .filter(m -> !pinned(m.group(2), root))
          .forEach(m -> loose.add(pom + ": " + m.group(1) + " " + m.group(2)));
    }
    assertThat(loose).isEmpty();
  }

  private static boolean pinned(String version, String root) {
    if (version.equals("${project.version}")) {
      return true;
    }
    String exact = version.startsWith("${") ? version.replaceAll("[${}]", "") : "";
    String number =
        exact.isEmpty()
            ? version
            : root.replaceFirst("(?s).*<" + Pattern.quote(exact) + ">([^<]+)<.*", "$1");
    return number.matches("\\d+(\\.\\d+)*(\\.\\d+-r)?");
  }
}
