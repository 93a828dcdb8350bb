package fettle.machine.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a book's text may not hold is refused with its line. */
class YamlReaderTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          a: 1\\na: 2              | 2 | a second time
          a: 1\\nb:\\n  c: 1\\n  c: 2 | 4 | a second time
          a: &x 1\\nb: 2           | 1 | an anchor
          a: 1\\n&x b: 2           | 2 | an anchor
          a: &x {b: 1}            | 1 | an anchor
          a: &x [1]               | 1 | an anchor
          a: 1\\nb: *x             | 2 | an alias
          a: 1\\n*x : 2            | 2 | a key that is not
          a: !!int 1              | 1 | a tag
          a: !mine {b: 1}         | 1 | a tag
          a: !mine [1]            | 1 | a tag
          !mine a: 1              | 1 | a tag
          a: 1\\n---\\nb: 2         | 2 | a second document
          a: 1\\n? [b]\\n: 2        | 2 | a key that is not
          a:\\n\\tb: 1              | 2 | YAML
          a: [1, 2                | 1 | YAML
          a: "open                | 1 | YAML
          a: 1\\n  b: 2            | 2 | YAML
          a: 1\\n}                 | 2 | YAML
          a: @x                   | 1 | YAML
          a: {b: 1}}              | 1 | YAML
          """)
  void refusedWithItsLine(String escaped, int line, String words) {
    Parsed<Node> parsed =
        YamlReader.read("machine.yaml", escaped.replace("\\n", "\n").replace("\\t", "\t"));
    assertThat(parsed.problems()).isNotEmpty();
    Problem first = parsed.problems().get(0);
    assertThat(first.text()).contains(words);
    assertThat(first.at().file()).isEqualTo("machine.yaml");
    assertThat(first.at().line()).as(first.text()).isEqualTo(line);
  }

  @Test
  void allKeysThatStandTwiceAreReportedAtOnce() {
    Parsed<Node> parsed = YamlReader.read("shop.yaml", "a: 1\na: 2\nb: 1\nb: 2\nb: 3");
    assertThat(parsed.problems()).extracting(p -> p.at().line()).containsExactly(2, 4, 5);
  }

  @Test
  void deepNestingIsRefused() {
    for (String open : new String[] {"[", "{a: ", "- ", "a: ["}) {
      Parsed<Node> parsed = YamlReader.read("machine.yaml", open.repeat(60_000));
      assertThat(parsed.value()).isNull();
      assertThat(parsed.problems()).hasSize(1);
      assertThat(parsed.problems().get(0).at().line()).isEqualTo(1);
    }
  }

  @Test
  void hugeTextsKeysAndValuesAreRefused() {
    assertThat(YamlReader.read("machine.yaml", "x".repeat(3_000_000)).problems()).hasSize(1);
    assertThat(YamlReader.read("machine.yaml", "a: " + "x".repeat(30_000)).problems()).hasSize(1);
    assertThat(YamlReader.read("machine.yaml", "x".repeat(900) + ": 1").problems()).hasSize(1);
    assertThat(YamlReader.read("machine.yaml", "a: [" + "1,".repeat(100_000) + "1]").problems())
        .hasSize(1);
  }

  @Test
  void manyKeysThatStandTwiceAreNotAllListed() {
    Parsed<Node> parsed = YamlReader.read("machine.yaml", "a: 1\n".repeat(5_000));
    assertThat(parsed.problems()).hasSizeBetween(100, 1_000);
  }

  @Test
  void emptyTextsAreRefused() {
    for (String text : new String[] {"", " ", "\n\n", "# only a remark\n"}) {
      Parsed<Node> parsed = YamlReader.read("machine.yaml", text);
      assertThat(parsed.value()).isNull();
      assertThat(parsed.problems()).hasSize(1);
    }
  }

  @Test
  void aMessageStaysShortAndOnOneLine() {
    Parsed<Node> parsed = YamlReader.read("machine.yaml", "a: !<" + "x".repeat(5000) + "> 1");
    assertThat(parsed.problems()).hasSize(1);
    assertThat(parsed.problems().get(0).text()).hasSizeLessThan(400).doesNotContain("\n");
  }
}
