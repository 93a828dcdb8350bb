package fettle.machine.dictionary;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import fettle.machine.SampleBooks;
import fettle.machine.text.Node;
import fettle.machine.text.Parsed;
import fettle.machine.text.YamlReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * The published schemas and the file reference are those of the table, and schema and reader agree
 * on every row. With {@code -Dfettle.regenerate=yes} the published files are written anew.
 */
class SchemaTest {

  private static final Path DOCS = Path.of("../docs");
  private static final Map<String, String> TITLES =
      Map.of(
          "machine", "machine.yaml of a lathe's book",
          "change", "a change of a lathe's book",
          "shop", "shop.yaml of a lathe's book");
  private static final Map<String, com.networknt.schema.Schema> SCHEMAS = schemas();

  private static Map<String, com.networknt.schema.Schema> schemas() {
    SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    Map<String, com.networknt.schema.Schema> schemas = new LinkedHashMap<>();
    TITLES.keySet().forEach(root -> schemas.put(root, registry.getSchema(text(root))));
    for (String shape : Dictionary.standard().shapes().keySet()) {
      schemas.putIfAbsent(
          shape, registry.getSchema(Schema.of(Dictionary.standard(), shape, shape)));
    }
    return schemas;
  }

  private static String text(String root) {
    return Schema.of(Dictionary.standard(), root, TITLES.getOrDefault(root, root));
  }

  private static boolean accepted(String shape, String yaml) {
    com.networknt.schema.Schema schema = SCHEMAS.get(shape);
    if (schema == null) {
      throw new AssertionError("no schema of " + shape);
    }
    List<Error> errors;
    try {
      errors = schema.validate(yaml, InputFormat.YAML);
    } catch (RuntimeException e) {
      return false;
    }
    return errors.isEmpty();
  }

  /** Tells whether the reader accepts a block, references aside. */
  private static boolean read(String shape, String yaml) {
    Parsed<Node> tree = YamlReader.read("book.yaml", yaml);
    Node node = tree.value();
    if (node == null || !tree.problems().isEmpty()) {
      return false;
    }
    Reading reading = new Reading(Dictionary.standard());
    reading.read(shape, node);
    return reading.problems().stream().allMatch(p -> p.found().equals("'elsewhere'"));
  }

  @Test
  void thePublishedFilesAreThoseOfTheTable() throws IOException {
    published("book.schema.json", text("machine"));
    published("change.schema.json", text("change"));
    published("shop.schema.json", text("shop"));
    published("book.md", Reference.of(Dictionary.standard()));
    published("recipe.md", fettle.machine.made.RecipeReference.text());
  }

  private static void published(String name, String text) throws IOException {
    Path file = DOCS.resolve(name);
    if ("yes".equals(System.getProperty("fettle.regenerate"))) {
      Files.createDirectories(DOCS);
      Files.writeString(file, text);
    }
    assertThat(Files.readString(file)).as(name).isEqualTo(text);
  }

  @Test
  void demoAndStarterFollowTheSchema() throws IOException {
    for (Path book : List.of(SampleBooks.DEMO, SampleBooks.STARTER)) {
      for (Map.Entry<String, String> file : SampleBooks.texts(book).entrySet()) {
        if (file.getKey().startsWith("parts/") || !file.getKey().endsWith(".yaml")) {
          continue;
        }
        String root =
            file.getKey().equals("machine.yaml")
                ? "machine"
                : file.getKey().equals("shop.yaml")
                    ? "shop"
                    : file.getKey().startsWith("trials/") ? "trial" : "change";
        com.networknt.schema.Schema schema = Objects.requireNonNull(SCHEMAS.get(root));
        assertThat(schema.validate(file.getValue(), InputFormat.YAML)).as(file.getKey()).isEmpty();
      }
    }
  }

  @TestFactory
  Stream<DynamicTest> everyRowOnceGoodAndOnceBroken() {
    return Dictionary.standard().shapes().entrySet().stream()
        .map(shape -> DynamicTest.dynamicTest(shape.getKey(), () -> rows(shape.getKey())));
  }

  private static void rows(String shape) {
    Random random = new Random(shape.hashCode());
    Samples samples = new Samples(random);
    List<String> wrong = new ArrayList<>();
    for (Row row : Dictionary.standard().shape(shape).values()) {
      for (int i = 0; i < 8; i++) {
        String good = with(shape, row, samples.good(row, "elsewhere"), samples);
        if (!read(shape, good)) {
          wrong.add("the reader refuses " + good);
        }
        if (!accepted(shape, good)) {
          wrong.add("the schema refuses " + good);
        }
      }
      for (String value : samples.broken(row)) {
        String broken = with(shape, row, value, samples);
        if (read(shape, broken)) {
          wrong.add("the reader accepts " + broken);
        }
        if (accepted(shape, broken)) {
          wrong.add("the schema accepts " + broken);
        }
      }
    }
    String unknown = with(shape, null, "", samples).replaceFirst("}$", ", not a key: 1}");
    assertThat(read(shape, unknown) || accepted(shape, unknown)).as(unknown).isFalse();
    assertThat(wrong).isEmpty();
  }

  /** Returns a block with the keys it must have, one of them or one more set to a value. */
  private static String with(
      String shape, @org.jspecify.annotations.Nullable Row row, String value, Samples samples) {
    List<String> entries = new ArrayList<>();
    for (Row other : Dictionary.standard().shape(shape).values()) {
      if (row != null && other.key().equals(row.key())) {
        entries.add(row.key() + ": " + value);
      } else if (other.required()) {
        entries.add(other.key() + ": " + samples.good(other, "elsewhere"));
      }
    }
    return "{" + String.join(", ", entries) + "}";
  }
}
