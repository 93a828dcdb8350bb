package fettle.desk.cli;

import fettle.machine.state.Book;
import fettle.planning.order.Alternative;
import fettle.planning.order.BookWork;
import fettle.planning.order.Order;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * All that is said about an order of work.
 *
 * @param book the book
 * @param work the tasks
 * @param order their order
 * @param alternatives the order and others beside it
 * @param start the day of the start, if it was given
 * @param usual the tasks as the book has them
 * @param before their order, if something else was tried
 */
record OrderAnswer(
    Book book,
    BookWork work,
    Order order,
    List<Alternative> alternatives,
    Optional<LocalDate> start,
    BookWork usual,
    Optional<Order> before) {

  OrderAnswer {
    alternatives = List.copyOf(alternatives);
  }

  /** Returns the day, or the week, in which a tick of shop time lies. */
  String when(BookWork of, int tick) {
    double days = of.terms().days(tick);
    return start
        .map(d -> d.plusDays((long) Math.floor(days + 1e-9)).toString())
        .orElse("week " + ((int) Math.floor(days / 7 + 1e-9) + 1));
  }

  String when(int tick) {
    return when(work, tick);
  }
}
