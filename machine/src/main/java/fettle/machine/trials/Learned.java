package fettle.machine.trials;

import fettle.machine.lathe.Machine;
import fettle.machine.lathe.MachineReader;
import fettle.machine.state.Book;
import fettle.machine.text.MergePatch;
import fettle.machine.text.Node;
import fettle.machine.text.Quantity;
import fettle.machine.text.TextEdit;
import fettle.machine.text.YamlReader;
import fettle.machine.topics.Figure;
import fettle.machine.topics.Topics;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Unit;
import fettle.mechanics.metrology.Forecast;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a trial teaches of the lathe's values: their posterior after the measurement, and the change
 * that lays it over the lathe's text. The change is a file like any other: it shows in every list,
 * and taking it away takes the correction back.
 *
 * @param change key of the change
 * @param values the values before and after
 * @param distance squared distance of the measurement from the forecast, by their covariance [-]
 * @param gate largest distance at which the values are corrected [-]
 * @param text text of the change; empty if the measurement lies too far from the forecast
 * @param words what was found, in words
 */
public record Learned(
    String change, List<Value> values, double distance, double gate, String text, String words) {

  /** Start of the key of a change that a trial taught. */
  public static final String PREFIX = "learned-";

  /** Keeps its own copy. */
  public Learned {
    values = List.copyOf(values);
  }

  /**
   * One value.
   *
   * @param path its keys, joined with dots
   * @param before as the book states it
   * @param after as it is after the measurement
   */
  public record Value(String path, String before, String after) {}

  /**
   * A value that may be corrected.
   *
   * @param path its keys
   * @param quantity as the book states it
   */
  private record Prior(String path, Quantity quantity) {
    double sigma() {
      return quantity.doubt() / 2;
    }

    String written(double value, double sigma) {
      Unit unit = quantity.unit();
      double factor = unit.factor().toDouble();
      double width = 2 * sigma / factor;
      int places = Math.max(0, Math.min(9, 1 - (int) Math.floor(Math.log10(width))));
      String symbol = unit.symbol().isEmpty() ? "" : " " + unit.symbol();
      return Numbers.fixed(value / factor, places)
          + symbol
          + " ± "
          + Numbers.fixed(width, places)
          + symbol;
    }
  }

  /**
   * Learns from a trial.
   *
   * @param tree the lathe's text as it was tested
   * @throws IllegalArgumentException if a value it is to correct is none, or has no doubt
   */
  static Optional<Learned> of(Trial trial, Book book, Node tree, List<Proof.Line> lines) {
    List<String> paths = trial.values().texts("corrects");
    List<Proof.Line> met = lines.stream().filter(l -> l.met().isPresent()).toList();
    if (paths.isEmpty() || met.isEmpty()) {
      return Optional.empty();
    }
    List<Prior> priors = paths.stream().map(p -> prior(p, tree)).toList();
    List<Met> foretold = met.stream().flatMap(l -> l.met().stream()).toList();
    double[][] design = design(priors, foretold, book, tree);
    return Optional.of(learned(trial, priors, met, foretold, design));
  }

  private static Prior prior(String path, Node tree) {
    Node at = tree;
    for (String key : path.split("\\.")) {
      Node.Entry next = at instanceof Node.Mapping m ? m.entries().get(key) : null;
      if (next == null) {
        throw new IllegalArgumentException(
            "corrects: found '" + path + "', expected keys of the lathe as tested");
      }
      at = next.value();
    }
    String text = at instanceof Node.Scalar s ? s.text() : "";
    try {
      String first = text.split("±")[0].strip();
      String symbol = first.replaceFirst("^[-+0-9./\\s]+(e-?\\d+)?", "").strip();
      Unit unit = Unit.parse(symbol).orElse(Unit.ONE);
      Quantity quantity = Quantity.parse(text, unit.dimension(), unit);
      if (quantity.doubt() > 0 && !unit.reciprocal()) {
        return new Prior(path, quantity);
      }
    } catch (Quantity.NotOne e) {
      // Said below, with what stands there.
    }
    throw new IllegalArgumentException(
        "corrects: "
            + path
            + " is '"
            + text
            + "', expected a quantity with its doubt, such as 0.2 mm ± 0.1 mm");
  }

  /** How much each figure changes for a change of each value: differences of half a doubt. */
  private static double[][] design(List<Prior> priors, List<Met> foretold, Book book, Node tree) {
    double[][] design = new double[foretold.size()][priors.size()];
    for (int k = 0; k < priors.size(); k++) {
      Prior prior = priors.get(k);
      double step = prior.sigma();
      Map<String, Double> up = figures(prior, step, book, tree);
      Map<String, Double> down = figures(prior, -step, book, tree);
      for (int i = 0; i < foretold.size(); i++) {
        String id = foretold.get(i).figure();
        Double above = up.get(id);
        Double below = down.get(id);
        if (above == null || below == null) {
          throw new IllegalArgumentException(
              "corrects: without a figure '" + id + "' when " + prior.path() + " changes a little");
        }
        design[i][k] = (above - below) / (2 * step);
      }
    }
    return design;
  }

  private static Map<String, Double> figures(Prior prior, double by, Book book, Node tree) {
    String value = prior.written(prior.quantity().value() + by, 1e-4 * prior.sigma());
    Node patch =
        YamlReader.read("learned", nested(Map.of(prior.path(), value), 0))
            .orThrow(IllegalStateException::new);
    Machine machine =
        MachineReader.read(MergePatch.apply(tree, patch))
            .orThrow(
                () ->
                    new IllegalArgumentException(
                        "corrects: the lathe cannot be read with " + prior.path() + ": " + value));
    Map<String, Double> figures = new LinkedHashMap<>();
    for (Figure figure : Topics.study(machine, book.shop()).figures()) {
      figure.working().ifPresent(w -> figures.put(figure.id(), w.value()));
    }
    return figures;
  }

  private static Learned learned(
      Trial trial,
      List<Prior> priors,
      List<Proof.Line> met,
      List<Met> foretold,
      double[][] design) {
    int n = priors.size();
    int m = met.size();
    double[][] before = new double[n][n];
    for (int k = 0; k < n; k++) {
      before[k][k] = priors.get(k).sigma() * priors.get(k).sigma();
    }
    double[] rest = new double[m];
    double[][] noise = new double[m][m];
    for (int i = 0; i < m; i++) {
      Measured measured = met.get(i).figure();
      rest[i] = measured.value() - foretold.get(i).predicted();
      double own = foretold.get(i).doubt() * foretold.get(i).doubt() / 4;
      for (int k = 0; k < n; k++) {
        own -= design[i][k] * design[i][k] * before[k][k];
      }
      noise[i][i] = measured.standard() * measured.standard() + Math.max(0, own);
    }
    double[] zero = new double[n];
    Forecast.Update update = Forecast.update(zero, before, design, rest, noise);
    List<Value> values = new ArrayList<>();
    Map<String, String> texts = new TreeMap<>();
    for (int k = 0; k < n; k++) {
      Prior prior = priors.get(k);
      double sigma = Math.sqrt(update.covariance().getEntry(k, k));
      double value = prior.quantity().value() + update.parameters().getEntry(k);
      String after = prior.written(value, sigma);
      String stood = prior.written(prior.quantity().value(), prior.sigma());
      values.add(new Value(prior.path(), stood, update.isAllowed() ? after : stood));
      texts.put(prior.path(), after);
    }
    String key = PREFIX + trial.name();
    if (update.isAllowed()) {
      String words = "the measurement is explained; these values are surer than the book's";
      String text = text(trial, texts);
      return new Learned(key, values, update.distance(), update.gate(), text, words);
    }
    double[] suspects = Forecast.suspects(zero, before, design, rest, noise);
    return new Learned(
        key, values, update.distance(), update.gate(), "", refusal(priors, suspects));
  }

  private static String refusal(List<Prior> priors, double[] suspects) {
    List<String> found = new ArrayList<>();
    for (int k = 0; k < suspects.length; k++) {
      if (Double.isFinite(suspects[k])) {
        found.add(
            priors.get(k).path()
                + " (it would have to lie "
                + Numbers.fixed(suspects[k], 1)
                + " standard uncertainties off)");
      }
    }
    return "the measurement lies too far from the forecast to correct it; "
        + (found.isEmpty()
            ? "none of these values explains it by itself: look for another cause, and read again"
            : "what would explain it: " + String.join(", ", found));
  }

  private static String text(Trial trial, Map<String, String> values) {
    StringBuilder text = new StringBuilder();
    text.append("title: ").append(TextEdit.quoted("Learned from the trial " + trial.name()));
    text.append("\nreason: ")
        .append(
            TextEdit.quoted(
                "The measurement makes these values surer; take this file away"
                    + " to go back to what the book states."));
    text.append("\nstage: proved\n");
    trial.values().text("proves").ifPresent(c -> text.append("needs: [" + c + "]\n"));
    return text.append("differs:\n").append(nested(values, 1)).toString();
  }

  /** Writes values by their paths as blocks, each block once. */
  private static String nested(Map<String, String> values, int depth) {
    StringBuilder text = new StringBuilder();
    Map<String, Map<String, String>> blocks = new LinkedHashMap<>();
    values.forEach(
        (path, value) -> {
          int dot = path.indexOf('.');
          if (dot < 0) {
            text.append("  ".repeat(depth)).append(path).append(": ").append(value).append('\n');
          } else {
            blocks
                .computeIfAbsent(path.substring(0, dot), k -> new LinkedHashMap<>())
                .put(path.substring(dot + 1), value);
          }
        });
    blocks.forEach(
        (key, inner) ->
            text.append("  ".repeat(depth))
                .append(key)
                .append(":\n")
                .append(nested(inner, depth + 1)));
    return text.toString();
  }
}
