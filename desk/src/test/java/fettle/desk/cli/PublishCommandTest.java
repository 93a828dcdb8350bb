package fettle.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import fettle.desk.Links;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code fettle publish} from end to end on a small book. */
class PublishCommandTest {

  /** Nothing else in the program or in the book says this word. */
  private static final String SECRET = "quicksilver";

  private static final String HIDDEN =
      """
      title: The SECRET engine
      reason: SECRET it is.
      stage: fitted
      public: no
      differs: {members: {SECRET wheel: {seat: {kind: bolted, on: bed}, mass: 1 kg}}}
      parts:
        SECRET pin: {what: A SECRET pin., material: C45, stock: bar SECRET, recipe: secret-pin}
      """
          .replace("SECRET", SECRET);

  @TempDir private Path folder;
  private Path book = Path.of("");
  private Path out = Path.of("");

  @BeforeEach
  void write() throws IOException {
    book = folder.resolve("book");
    out = folder.resolve("site");
    SmallBook.write(book);
  }

  private Told publish(Path to, String... more) {
    String[] args = {"publish", book.toString(), "--out", to.toString(), "--date", "2026-01-15"};
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

  private static String pdf(Path file) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
      return new PDFTextStripper().getText(pdf) + pdf.getDocumentInformation().getTitle();
    }
  }

  @Test
  void theSameBookGivesTheSameBytesAndEveryLinkLeadsSomewhere() throws IOException {
    Told told = publish(out);
    assertThat(told.err()).contains("1 of 1  pair");
    assertThat(told.status()).isZero();
    publish(folder.resolve("again"));
    Map<String, String> first = files(out);
    assertThat(first).isEqualTo(files(folder.resolve("again")));
    publish(out);
    assertThat(files(out)).isEqualTo(first);
    assertThat(Links.broken(out)).isEmpty();
    assertThat(first.keySet())
        .contains("index.html", "changes.html", "change-pair.html", "drawings.html", "packs.html")
        .contains("figures.html", "three.js", "files/pair/pack.pdf", "files/pair/sheets/pin.step");
    assertThat(first.get("change-pair.html")).contains("47.11");
  }

  @Test
  void aChangeHeldBackLeavesNoTrace() throws IOException {
    SmallBook.put(book, "changes/" + SECRET + ".yaml", HIDDEN.replace("public: no", "public: yes"));
    SmallBook.put(
        book,
        "parts/secret-pin.yaml",
        "title: " + SECRET + "\nturned: {outside: [{cylinder: {diameter: 8 mm, length: 9 mm}}]}\n");
    SmallBook.put(
        book,
        "changes/follower.yaml",
        "title: A follower\nreason: It follows.\nneeds: [" + SECRET + "]\ndiffers: {}\n");
    publish(out);
    assertThat(files(out).toString().toLowerCase(java.util.Locale.ROOT)).contains(SECRET);
    SmallBook.put(book, "changes/" + SECRET + ".yaml", HIDDEN);
    Told told = publish(out);
    assertThat(told.out())
        .contains(SECRET + ": not public")
        .contains("follower: it needs " + SECRET + ", which is held back");
    for (Map.Entry<String, String> file : files(out).entrySet()) {
      String seen = file.getKey() + file.getValue();
      if (file.getKey().endsWith(".pdf")) {
        seen += pdf(out.resolve(file.getKey()));
      }
      assertThat(seen.toLowerCase(java.util.Locale.ROOT))
          .as(file.getKey())
          .doesNotContain(SECRET, "follower");
    }
    assertThat(Links.broken(out)).isEmpty();
  }

  @Test
  void whatTheShopHoldsBackStandsNowhere() throws IOException {
    SmallBook.put(
        book,
        "shop.yaml",
        "owner: A workshop\nhold back: [prices, hours, solids, workings, trials]\n");
    publish(out);
    for (Map.Entry<String, String> file : files(out).entrySet()) {
      if (file.getKey().endsWith(".js") || file.getKey().endsWith(".css")) {
        continue;
      }
      String seen =
          file.getKey().endsWith(".pdf")
              ? pdf(out.resolve(file.getKey()))
              : file.getValue().replaceAll("<[^>]*>", " ");
      assertThat(seen).as(file.getKey()).doesNotContain("47.11", "47,11", "3 h");
      assertThat(file.getKey()).doesNotEndWith(".step").doesNotEndWith(".3mf");
    }
    assertThat(files(out).get("figures.html")).doesNotContain("class=\"formula\"");
    SmallBook.put(book, "shop.yaml", "owner: A workshop\nhold back: [sheets, packs]\n");
    publish(out);
    assertThat(files(out).keySet())
        .doesNotContain("drawings.html", "packs.html", "files/pair/pack.pdf")
        .noneMatch(f -> f.startsWith("files/") && !f.endsWith("revisions.csv"));
    assertThat(Links.broken(out)).isEmpty();
  }

  @Test
  void textOfTheBookNeverBecomesMarkup() throws IOException {
    SmallBook.put(
        book,
        "changes/pair.yaml",
        SmallBook.CHANGE
            .replace("To try it.", "'</p><script>alert(1)</script>'")
            .replace("Two parts", "'\"><img src=x onerror=alert(1)>'"));
    SmallBook.put(
        book, "shop.yaml", "owner: '<b onmouseover=alert(1)>'\nlicence: 'javascript:alert(1)'\n");
    publish(out);
    for (Map.Entry<String, String> file : files(out).entrySet()) {
      if (file.getKey().endsWith(".html")) {
        assertThat(file.getValue())
            .doesNotContain("<script>alert", "<img src=x", "<b onmouseover", "href=\"javascript");
      }
    }
    assertThat(Links.broken(out)).isEmpty();
  }

  @Test
  void aFolderOfOtherThingsIsLeftAlone() throws IOException {
    Files.createDirectories(out);
    Files.writeString(out.resolve("letters.txt"), "mine");
    Told told = publish(out);
    assertThat(told.status()).isEqualTo(2);
    assertThat(told.err()).contains("holds other files");
    assertThat(files(out).keySet()).containsExactly("letters.txt");
    Files.writeString(out.resolve("published.txt"), "../book/machine.yaml\n");
    assertThat(publish(out).err()).contains("leads out of the folder");
    assertThat(book.resolve("machine.yaml")).exists();
  }

  @Test
  void theJsonFollowsItsSchemaAndWrongWordsAreSaid() throws IOException {
    Told told = publish(out, "--json");
    String schema = Files.readString(Told.DOCS.resolve("publish.schema.json"));
    assertThat(
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schema)
                .validate(told.out(), InputFormat.JSON))
        .isEmpty();
    assertThat(Told.of("publish", book.toString()).err()).contains("--out DIR is missing");
    SmallBook.put(book, "shop.yaml", "owner: A workshop\nhold back: [price]\n");
    assertThat(publish(out).err()).contains("shop.yaml:2:", "prices");
  }
}
