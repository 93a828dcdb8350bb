package fettle.machine.state;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.machine.SampleBooks;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two changes that alter the same thing are told apart from two that say the same. */
class ConflictTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {name: A}                              | {name: B}                              | name
          {name: A}                              | {name: A}                              |
          {name: A}                              | {units: inch}                          |
          {lathe: {centre height: 95 mm}}        | {lathe: {between centres: 310 mm}}     |
          {trains: {drive: {elements: {c: {wheels: [20, 60]}}}}} | {trains: {drive: {elements: {c: {wheels: [20, 80]}}}}} | trains.drive.elements.c.wheels
          {trains: {drive: {elements: {c: {wheels: [20, 60]}}}}} | {trains: {drive: {elements: {c: {wheels: [20, 60]}}}}} |
          {banjo: null}                          | {banjo: {gap: 2 mm}}                   | banjo.gap
          {banjo: {gap: 2 mm}}                   | {banjo: null}                          | banjo
          {limits: {play: 0.2 mm}}               | {limits: null}                         | limits
          """)
  void pathsOfConflicts(String first, String second, String path) {
    String machine =
        SampleBooks.slide(
            "c: {kind: change gears, wheels: [20, 40]}, s: {kind: screw, thread: Tr 10x2}",
            "banjo: {centre distance: 90 mm, slot from: 30 mm, slot to: 80 mm}");
    Map<String, String> texts =
        Map.of(
            "machine.yaml", machine,
            "changes/a.yaml", "title: A\nreason: a\ndiffers: " + first,
            "changes/b.yaml", "title: B\nreason: b\ndiffers: " + second);
    State both = State.of(bookOf(texts), "", List.of("a", "b"));
    assertThat(both.conflicts())
        .extracting(Conflict::path)
        .isEqualTo(path == null ? List.of() : List.of(path));
  }

  private static Book bookOf(Map<String, String> texts) {
    return SampleBooks.sound(texts);
  }
}
