package fettle.sheets.revision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Revisions rise when the content changes, and only then. */
class RevisionsTest {

  @Test
  void indicesLeaveOutIAndO() {
    assertThat(Revision.after("A")).isEqualTo("B");
    assertThat(Revision.after("H")).isEqualTo("J");
    assertThat(Revision.after("N")).isEqualTo("P");
    assertThat(Revision.after("Z")).isEqualTo("AA");
    assertThat(Revision.after("AZ")).isEqualTo("BA");
  }

  @Test
  void aChangedContentIsDueANewRevision() {
    Revisions none = new Revisions(List.of());
    Revision first = none.due("a/b", Revisions.digest("x"), "2026-01-15");
    assertThat(first.index()).isEqualTo("A");
    Revisions one = none.with(first);
    assertThat(one.due("a/b", Revisions.digest("x"), "2026-02-01")).isEqualTo(first);
    Revision second = one.due("a/b", Revisions.digest("y"), "2026-02-01");
    assertThat(second.index()).isEqualTo("B");
    assertThat(one.due("a/c", Revisions.digest("y"), "2026-02-01").index()).isEqualTo("A");
    Revisions two = one.with(second).with(second);
    assertThat(two.all()).hasSize(2);
    assertThat(Revisions.parse(two.text())).isEqualTo(two);
  }

  @Test
  void aSpoiltListIsRefusedWithItsLine() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Revisions.parse("sheet,revision,date,digest\na,1\n"))
        .withMessageContaining("line 2");
  }
}
