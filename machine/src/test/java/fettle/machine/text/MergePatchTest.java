package fettle.machine.text;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.machine.SampleBooks;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The merge patch does what RFC 7396 says, by its own examples and by its laws. */
class MergePatchTest {

  private static final Place HERE = new Place("patch.yaml", 7, 3);

  /** Appendix A of RFC 7396, every row: original, patch, result. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '`',
      textBlock =
          """
          {"a":"b"};            {"a":"c"};                    {"a":"c"}
          {"a":"b"};            {"b":"c"};                    {"a":"b","b":"c"}
          {"a":"b"};            {"a":null};                   {}
          {"a":"b","b":"c"};    {"a":null};                   {"b":"c"}
          {"a":["b"]};          {"a":"c"};                    {"a":"c"}
          {"a":"c"};            {"a":["b"]};                  {"a":["b"]}
          {"a":{"b":"c"}};      {"a":{"b":"d","c":null}};     {"a":{"b":"d"}}
          {"a":[{"b":"c"}]};    {"a":[1]};                    {"a":[1]}
          ["a","b"];            ["c","d"];                    ["c","d"]
          {"a":"b"};            ["c"];                        ["c"]
          {"a":"foo"};          null;                         null
          {"a":"foo"};          "bar";                        "bar"
          {"e":null};           {"a":1};                      {"e":null,"a":1}
          [1,2];                {"a":"b","c":null};           {"a":"b"}
          {};                   {"a":{"bb":{"ccc":null}}};    {"a":{"bb":{}}}
          """)
  void appendixA(String original, String patch, String result) {
    Node patched = MergePatch.apply(SampleBooks.tree(original), SampleBooks.tree(patch));
    assertThat(written(patched)).isEqualTo(written(SampleBooks.tree(result)));
  }

  /** The example of section 3 of RFC 7396. */
  @Test
  void sectionThree() {
    String original =
        """
        {"title": "Goodbye!", "author": {"givenName": "John", "familyName": "Doe"},
         "tags": ["example", "sample"], "content": "This will be unchanged"}\
        """;
    String patch =
        """
        {"title": "Hello!", "phoneNumber": "+01-123-456-7890",
         "author": {"familyName": null}, "tags": ["example"]}\
        """;
    String result =
        """
        {"title": "Hello!", "author": {"givenName": "John"}, "tags": ["example"],
         "content": "This will be unchanged", "phoneNumber": "+01-123-456-7890"}\
        """;
    Node patched = MergePatch.apply(SampleBooks.tree(original), SampleBooks.tree(patch));
    assertThat(written(patched)).isEqualTo(written(SampleBooks.tree(result)));
  }

  @Test
  void placesStayThoseOfTheTextAValueCameFrom() {
    Node patched =
        MergePatch.apply(
            SampleBooks.tree("a: 1\nb: 2"),
            new Node.Mapping(
                Map.of("b", new Node.Entry(HERE, new Node.Scalar("3", false, HERE))), HERE));
    Map<String, Node.Entry> entries = ((Node.Mapping) patched).entries();
    assertThat(entries.values())
        .extracting(e -> e.value().at().text())
        .containsExactly("machine.yaml:1:4", HERE.text());
  }

  @Property(tries = 300)
  void laidTwiceIsLaidOnce(@ForAll("trees") Node target, @ForAll("trees") Node patch) {
    Node once = MergePatch.apply(target, patch);
    assertThat(written(MergePatch.apply(once, patch))).isEqualTo(written(once));
  }

  @Property(tries = 300)
  void anEmptyPatchLeavesABlockAsItIs(@ForAll("blocks") Node target) {
    Node patched = MergePatch.apply(target, new Node.Mapping(Map.of(), HERE));
    assertThat(written(patched)).isEqualTo(written(target));
  }

  @Property(tries = 300)
  void keysThatAPatchDoesNotNameStay(
      @ForAll("blocks") Node.Mapping target, @ForAll("blocks") Node.Mapping patch) {
    Node.Mapping patched = (Node.Mapping) MergePatch.apply(target, patch);
    target
        .entries()
        .forEach(
            (key, entry) -> {
              if (!patch.entries().containsKey(key)) {
                assertThat(patched.entries().get(key)).isEqualTo(entry);
              }
            });
    patch
        .entries()
        .forEach(
            (key, entry) ->
                assertThat(patched.entries().containsKey(key))
                    .isEqualTo(!(entry.value() instanceof Node.Nothing)));
  }

  @Property(tries = 200)
  void patchesOfDifferentKeysMayBeLaidInAnyOrder(
      @ForAll("blocks") Node target, @ForAll("blocks") Node one, @ForAll("blocks") Node other) {
    Node left = under("left", one);
    Node right = under("right", other);
    String a = written(MergePatch.apply(MergePatch.apply(target, left), right));
    String b = written(MergePatch.apply(MergePatch.apply(target, right), left));
    assertThat(a).isEqualTo(b);
  }

  private static Node under(String key, Node node) {
    return new Node.Mapping(Map.of(key, new Node.Entry(HERE, node)), HERE);
  }

  @Provide
  Arbitrary<Node> trees() {
    return Arbitraries.recursive(MergePatchTest::leaves, MergePatchTest::nested, 0, 3);
  }

  @Provide
  Arbitrary<Node> blocks() {
    return nested(trees());
  }

  private static Arbitrary<Node> leaves() {
    return Arbitraries.oneOf(
        Arbitraries.of("x", "2 mm", "C45").map(t -> new Node.Scalar(t, false, HERE)),
        Arbitraries.just(new Node.Nothing(true, HERE)),
        Arbitraries.just(new Node.Listing(List.of(new Node.Scalar("1", false, HERE)), HERE)));
  }

  private static Arbitrary<Node> nested(Arbitrary<Node> inner) {
    return Arbitraries.maps(Arbitraries.of("a", "b", "c", "d"), inner)
        .ofMaxSize(3)
        .map(
            map -> {
              Map<String, Node.Entry> entries = new LinkedHashMap<>();
              map.forEach((key, node) -> entries.put(key, new Node.Entry(HERE, node)));
              return new Node.Mapping(entries, HERE);
            });
  }

  /** Writes a tree with its keys in order, so that equal trees give equal text. */
  private static String written(Node node) {
    if (node instanceof Node.Mapping mapping) {
      Map<String, String> inner = new TreeMap<>();
      mapping.entries().forEach((key, entry) -> inner.put(key, written(entry.value())));
      return inner.toString();
    } else if (node instanceof Node.Listing listing) {
      return listing.items().stream().map(MergePatchTest::written).toList().toString();
    } else if (node instanceof Node.Scalar scalar) {
      return "'" + scalar.text() + "'";
    }
    return "null";
  }
}
