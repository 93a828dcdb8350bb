package fettle.planning.order;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.machine.state.Book;
import fettle.machine.text.BookFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** All changes of the demo book, as if nothing had been made. */
class DemoOrderTest {

  private static final Path BOOK =
      List.of(Path.of("../examples/dunlin-85"), Path.of("examples/dunlin-85")).stream()
          .filter(Files::isDirectory)
          .findFirst()
          .orElseThrow();

  private static BookWork work(double hours, Map<String, Double> days) {
    Book book =
        Objects.requireNonNull(
            Book.read(Objects.requireNonNull(BookFiles.read(BOOK).value())).value());
    Terms said = Terms.of(book.shop());
    Terms terms =
        new Terms(hours, said.downtime(), said.lostWork(), days, Terms.Made.AS_IF_NOTHING_WERE);
    return BookWork.of(book, book.changes().keySet(), terms);
  }

  @Test
  void nineChangesAreProvedBest() {
    BookWork work = work(9, Map.of());
    assertThat(work.problems()).isEmpty();
    assertThat(work.list().impossible()).isEmpty();
    assertThat(work.list().jobs()).hasSize(9);
    Order order = Orders.best(work.list(), Effort.ORDINARY, Progress.SILENT);
    assertThat(order.best()).isTrue();
    assertThat(order.cost()).isEqualTo(Costing.of(work.list(), order.plan()));
    for (Alternative way : Alternative.of(work.list(), order)) {
      assertThat(way.cost().total()).as(way.name()).isGreaterThanOrEqualTo(order.bound());
    }
  }

  @Test
  void whatTheLatheMakesIsMadeBeforeItIsStripped() {
    BookWork work = work(9, Map.of());
    Schedule plan = Orders.best(work.list(), Effort.ORDINARY, Progress.SILENT).plan();
    for (Worklist.Strip strip : work.list().strips()) {
      for (Task task : work.list().tasks()) {
        boolean own = task.job().equals(strip.job());
        if (own && work.work(task.key()).kind() == Work.Kind.LATHE) {
          assertThat(plan.end(task.key())).isLessThanOrEqualTo(plan.start(strip.first()));
        }
      }
    }
  }

  @Test
  void laterDeliveriesNeverMakeTheBoundSmaller() {
    long before = 0;
    for (double days : new double[] {0, 20, 60, 200}) {
      Worklist list = work(9, Map.of("quiet-drive/motor", days)).list();
      long cost = BlockSearch.best(list).cost();
      assertThat(cost).isGreaterThanOrEqualTo(before);
      before = cost;
    }
  }

  @Test
  @Tag("slow")
  void lateDeliveriesLeaveAGapUnderFivePercent() {
    Map<String, Double> late =
        Map.of("quiet-drive/motor", 30.0, "ball-headstock/front bearings", 70.0);
    BookWork work = work(30, late);
    Order order = Orders.best(work.list(), Effort.ORDINARY, Progress.SILENT);
    assertThat(order.gap()).isLessThan(0.05);
  }
}
