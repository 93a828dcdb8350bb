package fettle.machine.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

/** An edit changes one value of a text and nothing else. */
final class TextEditTest {

  private static final String TEXT =
      """
      # first remark
      name: Dunlin 85   # second remark
      seat: {kind: sliding, travel: 300 mm, at: {z: 60 mm}}
      about: >
        folded over
        two lines
      wheels: [20, 60]
      'quoted key': "quoted value"
      last: 1
      """;

  @Test
  void aPlainValueKeepsItsRemark() {
    assertThat(edited(2, 7, "Dunlin 90")).contains(TEXT.replace("Dunlin 85", "Dunlin 90"));
  }

  @Test
  void aValueInAFlowMappingStaysInItsLine() {
    assertThat(edited(3, 31, "310 mm")).contains(TEXT.replace("300 mm", "310 mm"));
  }

  @Test
  void whatWouldBreakTheFlowIsQuoted() {
    assertThat(edited(3, 31, "a, b: {c} # d"))
        .contains(TEXT.replace("300 mm", "\"a, b: {c} # d\""));
  }

  @Test
  void anItemOfAListIsReplacedAlone() {
    assertThat(edited(7, 14, "65")).contains(TEXT.replace("60]", "65]"));
  }

  @Test
  void aQuotedValueStaysQuoted() {
    assertThat(edited(8, 15, "say \"it\""))
        .contains(TEXT.replace("quoted value", "say \\\"it\\\""));
  }

  @Test
  void aBlockOfLinesIsReplacedAsAWhole() {
    Optional<String> text = edited(4, 8, "one line");
    assertThat(text.orElseThrow()).contains("# second remark").contains("wheels: [20, 60]");
    assertThat(value(text.orElseThrow(), "about")).isEqualTo("one line");
  }

  @Test
  void wherePlacesHoldNoValueNothingIsEdited() {
    assertThat(edited(3, 7, "x")).isEmpty();
    assertThat(edited(99, 1, "x")).isEmpty();
  }

  @Test
  void aKeyIsAddedBehindTheOthers() {
    assertThat(TextEdit.add(TEXT, new Place("f.yaml", 2, 1), "units", "mm"))
        .contains(TEXT + "units: mm\n");
    assertThat(TextEdit.add(TEXT, new Place("f.yaml", 3, 7), "swivel", "5 deg"))
        .contains(TEXT.replace("60 mm}}", "60 mm}, swivel: 5 deg}"));
    assertThat(TextEdit.add(TEXT, new Place("f.yaml", 3, 43), "x", "1 mm"))
        .contains(TEXT.replace("60 mm}}", "60 mm, x: 1 mm}}"));
  }

  @Test
  void aKeyIsAddedToAnInnerBlockWithoutTouchingRemarks() {
    String text = "a:\n  b: 1 # of b\n  c: {}\n\n# of d\nd: 2";
    assertThat(TextEdit.add(text, new Place("f.yaml", 2, 3), "e", "#3"))
        .contains(text.replace("c: {}\n", "c: {}\n  e: \"#3\"\n"));
    assertThat(TextEdit.add(text, new Place("f.yaml", 3, 6), "e", "3"))
        .contains(text.replace("{}", "{e: 3}"));
    assertThat(TextEdit.add(text, new Place("f.yaml", 1, 1), "e", "3")).contains(text + "\ne: 3\n");
    String folded = "a:\n  b: >\n    one\n    two\nd: 2\n";
    assertThat(TextEdit.add(folded, new Place("f.yaml", 2, 3), "e", "3"))
        .contains(folded.replace("two\n", "two\n  e: 3\n"));
  }

  @Test
  void aKeyThatIsThereOrHasNoBlockIsNotAdded() {
    assertThat(TextEdit.add(TEXT, new Place("f.yaml", 2, 1), "name", "x")).isEmpty();
    assertThat(TextEdit.add(TEXT, new Place("f.yaml", 7, 9), "x", "1")).isEmpty();
    assertThat(TextEdit.add(TEXT, new Place("f.yaml", 4, 8), "x", "1")).isEmpty();
  }

  @Property
  void anyTextIsAddedSoThatItReadsBack(@ForAll @StringLength(max = 60) String value) {
    Optional<String> text = TextEdit.add(TEXT, new Place("f.yaml", 2, 1), "fresh", value);
    text.ifPresent(
        t -> {
          assertThat(t).startsWith(TEXT);
          assertThat(value(t, "fresh")).isEqualTo(value);
        });
  }

  @Test
  void lineEndsStayAsTheyAre() {
    String windows = TEXT.replace("\n", "\r\n");
    Optional<String> text = TextEdit.replace(windows, new Place("f.yaml", 9, 7), "2");
    assertThat(text).contains(windows.replace("last: 1", "last: 2"));
  }

  @Property
  void anyTextIsWrittenSoThatItReadsBack(@ForAll @StringLength(max = 60) String value) {
    Optional<String> text = edited(2, 7, value);
    text.ifPresent(
        t -> {
          assertThat(value(t, "name")).isEqualTo(value);
          assertThat(value(t, "last")).isEqualTo("1");
          assertThat(t).endsWith("last: 1\n").startsWith("# first remark\nname: ");
        });
    boolean printable = value.codePoints().allMatch(c -> c >= 32 && c < 127);
    assertThat(text.isPresent() || !printable).isTrue();
  }

  private static Optional<String> edited(int line, int column, String value) {
    return TextEdit.replace(TEXT, new Place("f.yaml", line, column), value);
  }

  private static String value(String text, String key) {
    Node.Mapping root = (Node.Mapping) YamlReader.read("f.yaml", text).value();
    if (root == null) {
      throw new AssertionError(text);
    }
    Node.Entry entry = root.entries().get(key);
    return entry != null && entry.value() instanceof Node.Scalar s ? s.text() : "";
  }
}
