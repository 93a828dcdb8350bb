package fettle.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code fettle sheets} from end to end: what changes gets a new revision, nothing else does. */
class SheetsCommandTest {

  private static final String MACHINE =
      """
      fettle: 1
      name: Small
      lathe: {centre height: 90 mm, between centres: 300 mm}
      members:
        bed: {seat: {kind: fixed}}
        slide: {seat: {kind: sliding, on: bed, axis: Z, travel: 100 mm}, length: 60 mm}
      """;

  @TempDir private Path folder;
  private Path book = Path.of("");
  private Path out = Path.of("");

  @BeforeEach
  void write() throws IOException {
    book = folder.resolve("book");
    out = folder.resolve("out");
    put("machine.yaml", MACHINE);
    put("shop.yaml", "owner: A workshop\n");
    put(
        "changes/pair.yaml",
        """
        title: Two parts
        reason: To try it.
        differs: {}
        assembly: [pin, plate]
        parts:
          pin: {what: A pin., material: C45, stock: bar 10 mm, recipe: pin, price: 1 EUR}
          plate: {what: A plate., material: S235, stock: flat, recipe: plate}
        """);
    put(
        "parts/pin.yaml",
        "title: Pin\nturned: {outside: [{cylinder: {diameter: 8 mm h6, length: 30 mm}}]}\n");
    put(
        "parts/plate.yaml",
        "title: Plate\nblock: {length: = members.slide.length, width: 20 mm, height: 9 mm}\n");
  }

  private void put(String file, String text) throws IOException {
    Path path = book.resolve(file);
    Path parent = path.getParent();
    if (parent != null) {
      Files.createDirectories(parent);
    }
    Files.writeString(path, text);
  }

  private Told sheets(String date, String... more) {
    String[] args = {"sheets", book.toString(), "--out", out.toString(), "--date", date};
    return Told.of(Stream.concat(Stream.of(args), Stream.of(more)).toArray(String[]::new));
  }

  private Map<String, String> files() throws IOException {
    Map<String, String> all = new TreeMap<>();
    try (Stream<Path> paths = Files.walk(out)) {
      for (Path p : paths.filter(Files::isRegularFile).toList()) {
        String name = out.relativize(p).toString().replace('\\', '/');
        all.put(name, new String(Files.readAllBytes(p), StandardCharsets.ISO_8859_1));
      }
    }
    return all;
  }

  @Test
  void onlyWhatChangedIsDrawnAgainAndGetsANewRevision() throws IOException {
    Told first = sheets("2026-01-15");
    assertThat(first.err()).contains("1 of 2  pair/pin  revision A, first issue");
    assertThat(first.status()).isZero();
    Map<String, String> before = files();
    assertThat(before.keySet())
        .containsExactly(
            "pair/assembly.pdf",
            "pair/assembly.svg",
            "pair/pin.3mf",
            "pair/pin.pdf",
            "pair/pin.step",
            "pair/pin.svg",
            "pair/plate.3mf",
            "pair/plate.pdf",
            "pair/plate.step",
            "pair/plate.svg",
            "revisions.csv");

    assertThat(sheets("2026-02-01").out()).contains("3 sheets, 0 drawn, 3 unchanged");
    assertThat(files()).isEqualTo(before);

    put("machine.yaml", MACHINE.replace("length: 60 mm", "length: 70 mm"));
    assertThat(sheets("2026-02-01").out()).contains("3 sheets, 2 drawn, 1 unchanged");
    Map<String, String> after = files();
    for (String name : before.keySet()) {
      boolean touched = name.contains("plate") || name.contains("assembly") || name.contains("rev");
      assertThat(Objects.equals(after.get(name), before.get(name))).as(name).isEqualTo(!touched);
    }
    assertThat(after.get("revisions.csv"))
        .contains("pair/plate,A,2026-01-15", "pair/plate,B,2026-02-01", "pair/assembly,B")
        .doesNotContain("pair/pin,B");
    assertThat(after.get("pair/plate.step")).contains("ISO-10303-21");
  }

  @Test
  void aLostFileIsWrittenAgainAsItWas() throws IOException {
    sheets("2026-01-15");
    Map<String, String> before = files();
    Files.delete(out.resolve("pair/pin.pdf"));
    assertThat(sheets("2026-03-01").out()).contains("1 drawn, 2 unchanged");
    assertThat(files()).isEqualTo(before);
  }

  @Test
  void theJsonFollowsItsSchema() throws IOException {
    Told told = sheets("2026-01-15", "--json");
    String schema = Files.readString(Told.DOCS.resolve("sheets.schema.json"));
    assertThat(
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schema)
                .validate(told.out(), InputFormat.JSON))
        .isEmpty();
  }

  @Test
  void whatIsWrongIsSaid() throws IOException {
    assertThat(Told.of("sheets", book.toString()).err()).contains("--out DIR is missing");
    assertThat(sheets("tomorrow").status()).isEqualTo(2);
    assertThat(sheets("2026-01-15", "--part", "pinn").err()).contains("Did you mean 'pin'?");
    assertThat(sheets("2026-01-15", "--change", "pear").status()).isEqualTo(2);
    put(
        "parts/pin.yaml",
        "title: Pin\nturned: {outside: [{cylinder: {diameter: 8, length: 1 mm}}]}");
    Told wrong = sheets("2026-01-15");
    assertThat(wrong.status()).isEqualTo(2);
    assertThat(wrong.err()).contains("parts/pin.yaml:2:");
    assertThat(Told.of("check", book.toString()).err()).contains("parts/pin.yaml:2:");
  }
}
