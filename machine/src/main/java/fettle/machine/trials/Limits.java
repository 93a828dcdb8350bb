package fettle.machine.trials;

import fettle.machine.dictionary.Values;
import fettle.machine.text.Nearest;
import fettle.machine.text.Problem;
import fettle.machine.text.Quantity;
import fettle.mechanics.base.Unit;
import fettle.mechanics.metrology.AcceptanceLimit;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The limits a trial states: the owner's own, or a row of a table with its source. */
final class Limits {

  private Limits() {}

  /** Adds what is wrong with the limits of a trial. */
  static void problems(Trial trial, List<Problem> problems) {
    Map<String, Unit> names = Evaluations.names(trial);
    trial
        .values()
        .map("limits")
        .forEach(
            (name, limit) -> {
              String path = "limits." + name;
              Unit unit = names.get(name);
              if (unit == null) {
                String expected = "a figure of this trial: " + String.join(", ", names.keySet());
                String remedy = Nearest.hint(name, names.keySet());
                problems.add(new Problem(limit.at(), path, "'" + name + "'", expected, remedy));
              } else if (limit.has("table")) {
                table(limit, path, problems);
              } else {
                own(limit, unit, path, problems);
              }
            });
  }

  private static void table(Values limit, String path, List<Problem> problems) {
    try {
      row(limit, 1);
      if (limit.has("at least") || limit.has("at most")) {
        String expected = "either a table or 'at least' and 'at most'";
        problems.add(new Problem(limit.at(), path, "both", expected, ""));
      }
    } catch (IllegalArgumentException e) {
      String expected = "a row of the acceptance limits";
      String found = "table " + limit.needText("table");
      problems.add(
          new Problem(limit.place("table"), path, found, expected, String.valueOf(e.getMessage())));
    }
  }

  private static void own(Values limit, Unit unit, String path, List<Problem> problems) {
    if (!limit.has("at least") && !limit.has("at most")) {
      String expected = "'at least', 'at most' or a table";
      problems.add(new Problem(limit.at(), path, "no limit", expected, ""));
    }
    for (String key : List.of("at least", "at most")) {
      limit
          .text(key)
          .ifPresent(
              text -> {
                try {
                  Quantity.parse(text, unit.dimension(), unit);
                } catch (Quantity.NotOne e) {
                  String found = "'" + text + "'";
                  problems.add(
                      new Problem(limit.place(key), path + "." + key, found, e.expected(), ""));
                }
              });
    }
    double low = side(limit, "at least", unit, Double.NEGATIVE_INFINITY);
    double high = side(limit, "at most", unit, Double.POSITIVE_INFINITY);
    if (!(low < high)) {
      problems.add(
          new Problem(
              limit.at(),
              path,
              "'at least' not below 'at most'",
              "two limits with room between",
              ""));
    }
  }

  /** Returns the limit a trial states for a figure. */
  static Optional<Limit> of(Trial trial, Measured figure) {
    Values limit = trial.values().map("limits").get(figure.name());
    if (limit == null) {
      return Optional.empty();
    }
    if (!limit.has("table")) {
      return Optional.of(
          new Limit(
              side(limit, "at least", figure.unit(), Double.NEGATIVE_INFINITY),
              side(limit, "at most", figure.unit(), Double.POSITIVE_INFINITY),
              limit.needText("source")));
    }
    double length = figure.length() > 0 ? figure.length() : 1;
    AcceptanceLimit row = row(limit, length);
    double high = row.at(length);
    double low =
        switch (row.side()) {
          case PLUS -> 0;
          case BOTH -> -high;
          case SIZE -> figure.signed() ? -high : Double.NEGATIVE_INFINITY;
        };
    String source = row.source().text() + ", " + row.what();
    return Optional.of(new Limit(low, high, source));
  }

  private static AcceptanceLimit row(Values limit, double length) {
    return AcceptanceLimit.of(
        limit.needText("table"),
        limit.text("test").orElse(""),
        limit.text("class").orElse("bench"),
        length);
  }

  private static double side(Values limit, String key, Unit unit, double otherwise) {
    try {
      Optional<String> text = limit.text(key);
      return text.isEmpty()
          ? otherwise
          : Quantity.parse(text.get(), unit.dimension(), unit).value();
    } catch (Quantity.NotOne e) {
      return otherwise;
    }
  }
}
