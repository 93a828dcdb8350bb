package fettle.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A box from the search to its sheets: written once, sound, foreseen, drawn, never written over.
 */
class BoxGearingTest {

  private static final String WANTED = "0.5 mm, 1 mm, 2 mm, 10 tpi, 20 tpi";

  @TempDir private Path folder;

  private String copy() throws IOException {
    Path demo = Path.of(Told.DEMO);
    Path book = folder.resolve("book");
    try (Stream<Path> all = Files.walk(demo)) {
      for (Path file : all.toList()) {
        Path to = book.resolve(demo.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(to);
        } else {
          Files.copy(file, to);
        }
      }
    }
    return book.toString();
  }

  @Test
  void aFoundBoxIsWrittenForeseenAndDrawn() throws IOException {
    String book = copy();
    Told told = Told.of("gearing", book, "box", "--wanted", WANTED, "--write", "small-box");
    assertThat(told.err()).isEmpty();
    assertThat(told.status()).isZero();
    assertThat(told.out()).contains("proven", "cone gear 20", "Written: changes/small-box.yaml");

    Told check = Told.of("check", book);
    assertThat(check.status()).isZero();
    Told forecast = Told.of("forecast", book, "small-box");
    assertThat(forecast.err()).isEmpty();
    assertThat(forecast.out()).containsPattern("Gearbox of \\d+ wheels").contains("exactly");
    String out = folder.resolve("sheets").toString();
    String part = "small-box-cone-gear-20";
    Told sheets = Told.of("sheets", book, "--change", "small-box", "--part", part, "--out", out);
    assertThat(sheets.status()).isZero();
    assertThat(Files.readString(Path.of(out, "small-box", "small-box-cone-gear-20.svg")))
        .contains("Span over 3 teeth");
    Told route = Told.of("route", book, "small-box", "--part", part);
    assertThat(route.status()).isZero();
  }

  @Test
  void nothingIsWrittenOverUnlessAsked() throws IOException {
    String book = copy();
    String[] write = {"gearing", book, "box", "--wanted", WANTED, "--write", "small-box"};
    assertThat(Told.of(write).status()).isZero();
    Path change = Path.of(book, "changes", "small-box.yaml");
    Path part = Path.of(book, "parts", "small-box-ring.yaml");
    String mine = Files.readString(change).replace("stage: idea", "stage: planned");
    Files.writeString(change, mine);
    Files.delete(part);
    Told again = Told.of(write);
    assertThat(again.status()).isEqualTo(2);
    assertThat(again.err()).contains("changes/small-box.yaml", "--replace");
    assertThat(Files.readString(change)).isEqualTo(mine);
    assertThat(Files.exists(part)).isFalse();
    Told over =
        Told.of(Stream.concat(Stream.of(write), Stream.of("--replace")).toArray(String[]::new));
    assertThat(over.status()).isZero();
    assertThat(Files.readString(change)).contains("stage: idea");
    assertThat(Files.exists(part)).isTrue();
  }

  @Test
  void shaftCentresThatAreThereShiftTheTeeth() {
    Told told =
        Told.of("gearing", Told.DEMO, "box", "--wanted", WANTED, "--centres", "32.3 mm", "--json");
    assertThat(told.status()).isZero();
    assertThat(told.out()).contains("\"format\" : \"fettle gearing box 1\"");
    assertThat(told.out()).containsPattern("\"shift\" : -?0\\.[0-9]*[1-9]");
  }

  @Test
  void wrongAsksAreAnsweredPlainly() {
    for (List<String> wrong :
        List.of(
            List.of("--wanted", "10 tpi"),
            List.of("--wanted", "1 furlong"),
            List.of("--wanted", WANTED, "--centres", "9 mm"),
            List.of("--wanted", WANTED, "--centres", "-3 mm"),
            List.of("--wanted", WANTED, "--thrust", "1e9 N"),
            List.of("--wanted", WANTED, "--write", "../x"))) {
      Told told =
          Told.of(
              Stream.concat(Stream.of("gearing", Told.DEMO, "box"), wrong.stream())
                  .toArray(String[]::new));
      assertThat(told.status()).as(wrong.toString()).isEqualTo(2);
      assertThat(told.err()).as(wrong.toString()).isNotEmpty();
    }
  }
}
