package fettle.desk.page;

import fettle.machine.topics.Figure;
import fettle.mechanics.base.Working;
import java.util.Optional;

/**
 * A figure in a boxed cell, as in a title block.
 *
 * @param label what it is
 * @param subject what it is about
 * @param firm the digits one can rely on
 * @param loose the digits within the doubt
 * @param doubt half-width of the doubt; empty if there is none
 * @param unit symbol of the unit
 * @param words the exact value or the statement in words
 * @param href where it opens
 */
public record Cell(
    String label,
    String subject,
    String firm,
    String loose,
    String doubt,
    String unit,
    String words,
    String href) {

  /** Makes the cell of a figure. */
  public static Cell of(Figure figure, Measure measure, String href) {
    Optional<Working> working = figure.working();
    if (working.isEmpty()) {
      return new Cell(figure.name(), figure.subject(), "", "", "", "", figure.words(), href);
    }
    Working w = working.get();
    Amount amount = Amount.of(w.value(), w.doubt(), w.unit(), measure);
    int uncertain = loose(amount);
    int split = amount.number().length() - uncertain;
    return new Cell(
        figure.name(),
        figure.subject(),
        amount.number().substring(0, split),
        amount.number().substring(split),
        amount.doubt(),
        amount.unit(),
        figure.words(),
        href);
  }

  /** Counts the trailing characters of the number that the doubt reaches. */
  private static int loose(Amount amount) {
    String doubt = amount.doubt().replaceFirst("^0\\.?0*", "");
    return doubt.isEmpty()
        ? 0
        : Math.min(doubt.length(), Math.max(0, amount.number().length() - 1));
  }
}
