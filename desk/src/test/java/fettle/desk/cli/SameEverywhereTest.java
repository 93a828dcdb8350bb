package fettle.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.desk.fuzz.OwnClasses;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Figures come out the same, byte for byte, whatever language and time zone a computer is set to
 * and however many threads it runs.
 */
final class SameEverywhereTest {

  private static final String DEMO = Path.of("..", "examples", "dunlin-85").toString();
  private static final String THREADS = "-Djava.util.concurrent.ForkJoinPool.common.parallelism=";
  private static final List<String> HERE =
      List.of("-Duser.language=en", "-Duser.country=GB", "-Duser.timezone=UTC");
  private static final List<String> TURKEY =
      List.of(
          "-Duser.language=tr", "-Duser.country=TR", "-Duser.timezone=Asia/Kathmandu", THREADS + 1);
  private static final List<String> EGYPT =
      List.of(
          "-Duser.language=ar",
          "-Duser.country=EG",
          "-Duser.timezone=Pacific/Apia",
          "-Duser.extensions=u-nu-arab",
          THREADS + 4);
  private static final List<String> GERMANY =
      List.of("-Duser.language=de", "-Duser.country=DE", "-Duser.timezone=America/St_Johns");

  private static String said(List<String> options, String... arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    command.addAll(options);
    command.addAll(List.of("-cp", OwnClasses.path()));
    command.add("fettle.desk.cli.Main");
    command.addAll(List.of(arguments));
    Process process =
        new ProcessBuilder(command)
            .redirectInput(new File("pom.xml"))
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(said).isBetween(0, 1);
    return said;
  }

  @Test
  void theForecastIsTheSameInEveryLanguageAndTimeZone() throws Exception {
    String[] forecast = {"forecast", DEMO, "quiet-drive", "--json"};
    String here = said(HERE, forecast);
    assertThat(here).contains("\"format\" : \"fettle forecast").hasSizeGreaterThan(10_000);
    assertThat(said(TURKEY, forecast)).isEqualTo(here);
    assertThat(said(EGYPT, forecast)).isEqualTo(here);
  }

  @Test
  @Tag("slow")
  void wordsAndFiniteElementsAreTheSameEverywhere() throws Exception {
    for (String[] command :
        List.of(
            new String[] {"forecast", DEMO, "--workings"},
            new String[] {"rigidity", DEMO},
            new String[] {"clearance", DEMO},
            new String[] {"prove", DEMO},
            new String[] {"order", DEMO})) {
      String here = said(HERE, command);
      assertThat(said(TURKEY, command)).isEqualTo(here);
      assertThat(said(EGYPT, command)).isEqualTo(here);
      assertThat(said(GERMANY, command)).isEqualTo(here);
    }
  }
}
