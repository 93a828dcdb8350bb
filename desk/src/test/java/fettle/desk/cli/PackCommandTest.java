package fettle.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code fettle pack} from end to end on a small book. */
class PackCommandTest {

  @TempDir private Path folder;
  private Path book = Path.of("");
  private Path out = Path.of("");

  @BeforeEach
  void write() throws IOException {
    book = folder.resolve("book");
    out = folder.resolve("out");
    SmallBook.write(book);
  }

  private void put(String file, String text) throws IOException {
    SmallBook.put(book, file, text);
  }

  private Told pack(Path to, String date, String... more) {
    String[] args = {"pack", book.toString(), "pair", "--out", to.toString(), "--date", date};
    return Told.of(Stream.concat(Stream.of(args), Stream.of(more)).toArray(String[]::new));
  }

  private static Map<String, String> files(Path from) throws IOException {
    Map<String, String> all = new TreeMap<>();
    try (Stream<Path> paths = Files.walk(from)) {
      for (Path p : paths.filter(Files::isRegularFile).toList()) {
        String name = from.relativize(p).toString().replace('\\', '/');
        all.put(name, new String(Files.readAllBytes(p), StandardCharsets.ISO_8859_1));
      }
    }
    return all;
  }

  private static PDDocument read(Path pdf) throws IOException {
    return Loader.loadPDF(pdf.toFile());
  }

  @Test
  void theSameBookGivesTheSameBytesAndAnUnchangedPackStaysTheSameIssue() throws IOException {
    Told told = pack(out, "2026-01-15");
    assertThat(told.err()).contains("drawn: sheets/pin");
    assertThat(told.status()).isZero();
    pack(folder.resolve("again"), "2026-01-15");
    Map<String, String> first = files(out);
    assertThat(first).isEqualTo(files(folder.resolve("again")));
    assertThat(first.keySet())
        .contains("pair/pack.pdf", "pair/pack.txt", "pair/issues.csv", "pair/manifest.csv")
        .contains("pair/assembly.svg", "pair/sheets/pin.step", "pair/sheets/plate.3mf");
    assertThat(pack(out, "2026-02-02").out()).contains("revision A of 2026-01-15, unchanged");
    assertThat(files(out)).isEqualTo(first);
  }

  @Test
  void whatChangedIsListedAndItsDrawingIsMarked() throws IOException {
    pack(out, "2026-01-15");
    put("changes/pair.yaml", SmallBook.CHANGE.replace("Mind the spring.", "Mind the long spring."));
    put(
        "parts/pin.yaml",
        "title: Pin\nturned: {outside: [{cylinder: {diameter: 8 mm h6, length: 31 mm}}]}\n");
    assertThat(pack(out, "2026-02-02").out())
        .contains("revision B of 2026-02-02: Drawings (2 lines changed)")
        .contains("Cautions (1 line changed)");
    assertThat(files(out).get("pair/issues.csv")).contains("A,2026-01-15,First", "B,2026-02-02,");
    try (PDDocument pdf = read(out.resolve("pair/pack.pdf"))) {
      String text = new PDFTextStripper().getText(pdf);
      assertThat(text).contains(" rev A", " rev B, changed", "Record of revisions");
    }
  }

  @Test
  void everyChapterHasABookmarkAndEveryPageItsNumber() throws IOException {
    pack(out, "2026-01-15");
    try (PDDocument pdf = read(out.resolve("pair/pack.pdf"))) {
      List<String> titles = new ArrayList<>();
      for (PDOutlineItem item : pdf.getDocumentCatalog().getDocumentOutline().children()) {
        titles.add(item.getTitle());
      }
      assertThat(titles)
          .containsExactly(
              "Cover",
              "Contents",
              "What it does",
              "Parts list",
              "Buying list",
              "Drawings",
              "How the parts are made",
              "Order of work",
              "Settings",
              "Cautions",
              "How to prove it",
              "Record of revisions, licence");
      int pages = pdf.getNumberOfPages();
      for (int i = 2; i <= pages; i++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(i);
        stripper.setEndPage(i);
        assertThat(stripper.getText(pdf).replaceAll("\\s+", "")).contains(i + "of" + pages);
      }
      for (PDPage page : pdf.getPages()) {
        assertThat(page.getAnnotations()).isEmpty();
        assertThat(page.getCOSObject().containsKey(COSName.AA)).isFalse();
      }
      assertThat(new PDFTextStripper().getText(pdf)).contains("Licence: For private use.");
    }
  }

  @Test
  void whatIsHeldBackStandsInNoFile() throws IOException {
    pack(out, "2026-01-15", "--without", "prices+hours+solids");
    Map<String, String> files = files(out);
    assertThat(files.keySet()).noneMatch(f -> f.endsWith(".step") || f.endsWith(".3mf"));
    assertThat(files.get("pair/pack.txt")).doesNotContain("47.11", "(1 h)", "Own hours");
    assertThat(files.get("pair/assembly.svg")).doesNotContain("47,11");
    try (PDDocument pdf = read(out.resolve("pair/pack.pdf"))) {
      assertThat(new PDFTextStripper().getText(pdf)).doesNotContain("47.11", "47,11", "(1 h)");
    }
    pack(folder.resolve("all"), "2026-01-15");
    assertThat(files(folder.resolve("all")).get("pair/pack.txt")).contains("47.11", "(1 h)");
  }

  @Test
  void textOfTheBookIsTextAndNothingElse() throws IOException {
    String sly = "(a) Tj ET /OpenAction << /S /JavaScript >> <script>alert(1)</script> \\u0000 ==";
    put("changes/pair.yaml", SmallBook.CHANGE.replace("To try it.", "'" + sly + "'"));
    put("shop.yaml", "owner: A workshop\nlicence: '" + "endstream /Launch ".repeat(300) + "'\n");
    Told told = pack(out, "2026-01-15");
    assertThat(told.status()).isBetween(0, 3);
    if (told.status() == 0) {
      try (PDDocument pdf = read(out.resolve("pair/pack.pdf"))) {
        assertThat(pdf.getDocumentCatalog().getOpenAction()).isNull();
        assertThat(pdf.getDocumentCatalog().getCOSObject().containsKey(COSName.NAMES)).isFalse();
        assertThat(new PDFTextStripper().getText(pdf)).contains("endstream /Launch");
      }
    }
  }

  @Test
  void theJsonFollowsItsSchema() throws IOException {
    Told told = pack(out, "2026-01-15", "--json");
    String schema = Files.readString(Told.DOCS.resolve("pack.schema.json"));
    assertThat(
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schema)
                .validate(told.out(), InputFormat.JSON))
        .isEmpty();
  }

  @Test
  void whatIsWrongIsSaid() throws IOException {
    assertThat(Told.of("pack", book.toString()).err()).contains("Missing CHANGE");
    assertThat(Told.of("pack", book.toString(), "pairs").err()).contains("Did you mean 'pair'?");
    assertThat(pack(out, "2026-01-15", "--without", "secrets").err()).contains("expected one of");
    Files.createDirectories(out.resolve("pair"));
    Files.writeString(out.resolve("pair/issues.csv"), "what is this\n");
    assertThat(pack(out, "2026-01-15").err()).contains("line 1: expected revision,date");
  }
}
