package fettle.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every starter lathe is a sound book whose forecast and example change say something. */
class StartersTest {

  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource(Starter.class)
  void eachIsSoundAndForeseen(Starter starter) {
    String book = folder.resolve(starter.word()).toString();
    assertThat(Told.of("new", book, "--like", starter.word()).status()).isZero();
    Told check = Told.of("check", book);
    assertThat(check.status()).as(check.err()).isZero();
    Told stands = Told.of("forecast", book);
    assertThat(stands.status()).as(stands.err()).isZero();
    assertThat(stands.out()).contains("travel per turn", "highest speed", "Findings");
    if (starter != Starter.BENCH) {
      assertThat(stands.out()).contains("stiffness at the nose", "deepest cut");
    }
    Told changed = Told.of("forecast", book, starter.change());
    assertThat(changed.status()).as(changed.err()).isZero();
    assertThat(changed.out())
        .contains("change  " + starter.change(), "figures stay as they are")
        .containsAnyOf("* new", "+ better");
  }

  @Test
  void kindsAreListedAndAWrongOneIsAnswered() {
    assertThat(Told.of("new", "--help").out()).contains(Starter.words());
    Told wrong = Told.of("new", folder.resolve("x").toString(), "--like", "toolrom");
    assertThat(wrong.status()).isEqualTo(2);
    assertThat(wrong.err()).contains("Did you mean 'toolroom'?", "mini-metric");
    assertThat(folder.resolve("x")).doesNotExist();
  }
}
