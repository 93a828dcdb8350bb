package fettle.mechanics.metrology;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Single calculations on what to adjust and by how much. */
final class AdjustReckoners {

  private static final String GROUP = StatisticsReckoners.GROUP;

  private AdjustReckoners() {}

  static List<Reckoner> all() {
    return List.of(adjust(), influence(), feet(), rock(), shimStack(), screwTurns());
  }

  private static Reckoner adjust() {
    return Reckoner.of(
            GROUP, "adjust", "Which adjusters to move and by how much, all errors together")
        .numbers("errors", Unit.ONE, "errors measured")
        .numbers("limits", Unit.ONE, "limit of each error")
        .rows(
            "influence", Unit.ONE, "a row for each error: its change for one unit of each adjuster")
        .input(
            "targets", Input.Kind.NUMBERS, Unit.ONE, "wanted value of each error, 0", null, false)
        .input("names", Input.Kind.WORDS, Unit.ONE, "names of the adjusters", null, false)
        .input(
            "low",
            Input.Kind.TEXT,
            Unit.ONE,
            "least moves, 'free' or a number for each",
            null,
            false)
        .input("high", Input.Kind.TEXT, Unit.ONE, "largest moves, 'free' or a number", null, false)
        .input(
            "step", Input.Kind.NUMBERS, Unit.ONE, "step of each adjuster, 0 for none", null, false)
        .input(
            "stock",
            Input.Kind.TEXT,
            Unit.ONE,
            "allowed moves of each adjuster, semicolons between adjusters, '-' for any",
            null,
            false)
        .choice(
            "aim",
            "least-squares, or the largest error over its limit least",
            "least-squares",
            "largest")
        .input("u", Input.Kind.NUMBERS, Unit.ONE, "standard uncertainty of each error", null, false)
        .result("moves", Unit.ONE, "move of each adjuster")
        .result("left", Unit.ONE, "errors left, targets taken off")
        .result("worst", Unit.ONE, "largest error left over its limit")
        .result("before", Unit.ONE, "largest error before over its limit")
        .result("objective", Unit.ONE, "sum of squares left")
        .result("chance", Unit.ONE, "chance of each error to end within its limit")
        .result("orders", Unit.ONE, "what to do, in words")
        .source(Sources.ADJUSTMENT)
        .rule(AdjustReckoners::adjust);
  }

  private static double[] bounds(Given g, String name, int n, double otherwise) {
    double[] bounds = new double[n];
    Arrays.fill(bounds, otherwise);
    if (g.has(name)) {
      List<String> words = g.words(name);
      Require.sameLength(name, words.size(), n);
      for (int i = 0; i < n; i++) {
        bounds[i] = words.get(i).equals("free") ? otherwise : number(name, words.get(i));
      }
    }
    return bounds;
  }

  private static double number(String name, String word) {
    if (!word.matches("[-+]?[0-9]*\\.?[0-9]+([eE][-+]?[0-9]{1,3})?")) {
      throw new IllegalArgumentException(name + ": found '" + word + "', expected a number");
    }
    return Double.parseDouble(word);
  }

  private static List<List<Double>> allowed(Given g, int n, double[] low, double[] high) {
    List<List<Double>> allowed = new ArrayList<>();
    for (int k = 0; k < n; k++) {
      allowed.add(List.of());
    }
    if (g.has("step")) {
      double[] step = g.numbers("step");
      Require.sameLength("step", step.length, n);
      for (int k = 0; k < n; k++) {
        if (Require.notNegative("step", step[k]) > 0) {
          allowed.set(k, List.of(step[k]));
        }
      }
    }
    if (g.has("stock")) {
      String[] parts = g.text("stock").split(";", -1);
      Require.sameLength("stock", parts.length, n);
      for (int k = 0; k < n; k++) {
        List<Double> values = new ArrayList<>();
        for (String word : parts[k].trim().equals("-") ? new String[0] : parts[k].split(",", -1)) {
          double value = number("stock", word.trim());
          if (value >= low[k] && value <= high[k]) {
            values.add(value);
          }
        }
        if (!parts[k].trim().equals("-")) {
          Require.atLeast("stock within the bounds", values.size(), 1);
          allowed.set(k, values);
        }
      }
    }
    return allowed;
  }

  private static Answer adjust(Given g) {
    double[] errors = g.numbers("errors");
    double[] limits = g.numbers("limits");
    double[][] influence = g.rows("influence");
    int m = errors.length;
    Require.sameLength("influence", influence.length, m);
    Require.atLeast("errors", m, 1);
    if (g.has("targets")) {
      double[] targets = g.numbers("targets");
      Require.sameLength("targets", targets.length, m);
      for (int i = 0; i < m; i++) {
        errors[i] -= targets[i];
      }
    }
    int n = influence[0].length;
    Adjustment task = Adjustment.of(errors, limits, influence);
    double[] low = bounds(g, "low", n, Double.NEGATIVE_INFINITY);
    double[] high = bounds(g, "high", n, Double.POSITIVE_INFINITY);
    List<List<Double>> allowed = allowed(g, n, low, high);
    boolean discrete = allowed.stream().anyMatch(l -> !l.isEmpty());
    double[] moves;
    if (discrete) {
      moves = task.discrete(steps(g, task, allowed, low, high), low, high);
    } else if (g.choice("aim").equals("largest")) {
      moves = task.smallestWorst(low, high);
    } else {
      moves = task.bounded(low, high);
    }
    boolean ignored = discrete && g.choice("aim").equals("largest");
    double[] left = task.residuals(moves);
    double[] chance = new double[m];
    for (int i = 0; i < m; i++) {
      left[i] *= limits[i];
    }
    Answer answer =
        Answer.start()
            .with("moves", moves)
            .with("left", left)
            .with("worst", task.worst(moves))
            .with("before", task.worst(new double[n]))
            .with("objective", task.objective(moves))
            .with("orders", orders(g, moves));
    if (g.has("u")) {
      double[] u = g.numbers("u");
      Require.sameLength("u", u.length, m);
      boolean noise = true;
      for (int i = 0; i < m; i++) {
        chance[i] = Adjustment.chance(left[i], u[i], limits[i]);
        noise &= Math.abs(left[i] - errors[i]) <= 2 * u[i];
      }
      answer = answer.with("chance", chance);
      if (noise) {
        answer =
            answer.caution(
                "Every gain is smaller than its uncertainty: this would chase noise; leave it.");
      }
    }
    if (ignored) {
      answer =
          answer.caution("With steps or a stock the aim is least squares; 'largest' was not used.");
    }
    return answer.caution(
        "Make about 80 % of a big move first, clamp, measure again, then the rest.");
  }

  /** Turns steps into lists of allowed moves around the best continuous ones. */
  private static List<List<Double>> steps(
      Given g, Adjustment task, List<List<Double>> allowed, double[] low, double[] high) {
    if (!g.has("step")) {
      return allowed;
    }
    double[] step = g.numbers("step");
    double[] smooth = task.bounded(low, high);
    List<List<Double>> lists = new ArrayList<>(allowed);
    for (int k = 0; k < step.length; k++) {
      if (step[k] > 0 && (!g.has("stock") || allowed.get(k).size() == 1)) {
        List<Double> values = new ArrayList<>();
        double middle = Math.rint(smooth[k] / step[k]);
        for (int i = -20; i <= 20; i++) {
          double value = (middle + i) * step[k];
          if (value >= low[k] - 1e-9 * step[k] && value <= high[k] + 1e-9 * step[k]) {
            values.add(value);
          }
        }
        Require.atLeast("steps within the bounds of adjuster " + (k + 1), values.size(), 1);
        lists.set(k, values);
      }
    }
    return lists;
  }

  private static List<String> orders(Given g, double[] moves) {
    List<String> names = g.has("names") ? g.words("names") : List.of();
    if (g.has("names")) {
      Require.sameLength("names", names.size(), moves.length);
    }
    List<String> orders = new ArrayList<>();
    for (int k = 0; k < moves.length; k++) {
      String name = names.isEmpty() ? "adjuster " + (k + 1) : names.get(k);
      orders.add(
          (orders.size() + 1)
              + ". "
              + name
              + ": "
              + (moves[k] == 0
                  ? "leave"
                  : (moves[k] > 0 ? "+" : "") + Numbers.significant(moves[k], 4)));
    }
    return orders;
  }

  private static Reckoner influence() {
    return Reckoner.of(
            GROUP, "influence-update", "Influence of adjusters learnt from a move (Broyden)")
        .rows("influence", Unit.ONE, "influence so far, a row for each error")
        .numbers("moves", Unit.ONE, "moves made")
        .numbers("changes", Unit.ONE, "changes of the errors seen")
        .result("row", Unit.ONE, "corrected influence, row after row")
        .source(Sources.ADJUSTMENT)
        .rule(
            g -> {
              double[][] next =
                  Adjustment.corrected(
                      g.rows("influence"), g.numbers("moves"), g.numbers("changes"));
              double[] flat = Arrays.stream(next).flatMapToDouble(Arrays::stream).toArray();
              return Answer.start().with("row", flat);
            });
  }

  private static Reckoner feet() {
    return Reckoner.of(GROUP, "feet-shims", "Shims under feet to tip a casting")
        .numbers("feet_h", Unit.MM, "places of the feet across, + towards the operator")
        .numbers("feet_z", Unit.MM, "places of the feet along, + towards the tailstock")
        .number("wanted_pitch", Unit.MICRON_PER_M, "tip along, + tailstock side up", "0")
        .number("wanted_roll", Unit.MICRON_PER_M, "tip across, + operator side up", "0")
        .result("shims", Unit.MICRON, "shim of each foot, the smallest 0")
        .result("largest", Unit.MICRON, "largest shim")
        .source(Sources.ALIGNMENT)
        .rule(
            g -> {
              double[] t =
                  Adjustment.feet(
                      g.numbers("feet_h"),
                      g.numbers("feet_z"),
                      g.number("wanted_pitch"),
                      g.number("wanted_roll"));
              return Answer.start()
                  .with("shims", t)
                  .with("largest", Arrays.stream(t).max().orElseThrow())
                  .caution("Support the head before slackening its bolts; it is heavy.");
            });
  }

  private static Reckoner rock() {
    return Reckoner.of(GROUP, "feet-rock", "Rock of a casting from the gaps under its feet")
        .numbers("feet_h", Unit.MM, "places of the feet across")
        .numbers("feet_z", Unit.MM, "places of the feet along")
        .numbers("gaps", Unit.MICRON, "gap measured under each foot, 4 feet or more")
        .result("pitch", Unit.MICRON_PER_M, "slope along")
        .result("roll", Unit.MICRON_PER_M, "slope across")
        .result("rock", Unit.MICRON, "what each foot stands off the best plane")
        .result("shims", Unit.MICRON, "shim under each foot to fill its gap to the lowest plane")
        .source(Sources.ALIGNMENT)
        .rule(
            g -> {
              double[] h = g.numbers("feet_h");
              double[] z = g.numbers("feet_z");
              double[] gaps = g.numbers("gaps");
              Require.sameLength("feet_z", z.length, h.length);
              Require.sameLength("gaps", gaps.length, h.length);
              double[][] rows = new double[h.length][];
              for (int i = 0; i < h.length; i++) {
                rows[i] = new double[] {1, z[i], h[i]};
              }
              LinearFit fit = LeastSquares.fit(List.of("c", "pitch", "roll"), rows, gaps);
              double[] rest = fit.residuals().toArray();
              double least = Arrays.stream(rest).min().orElseThrow();
              double[] shims = Arrays.stream(rest).map(v -> v - least).toArray();
              return Answer.start()
                  .with("pitch", fit.value("pitch"))
                  .with("roll", fit.value("roll"))
                  .with("rock", rest)
                  .with("shims", shims);
            });
  }

  private static Reckoner shimStack() {
    return Reckoner.of(GROUP, "shim-stack", "Pieces of shim at hand whose sum comes nearest")
        .numbers("stock", Unit.MM, "thickness of each piece at hand, at most 20")
        .number("wanted", Unit.MM, "thickness wanted")
        .result("pieces", Unit.MM, "pieces to take, thickest first")
        .result("sum", Unit.MM, "their sum")
        .result("miss", Unit.MICRON, "sum less wanted")
        .source(Sources.ADJUSTMENT)
        .rule(
            g -> {
              double wanted = g.number("wanted");
              double[] pieces = Adjustment.stack(g.numbers("stock"), wanted);
              double sum = Arrays.stream(pieces).sum();
              return Answer.start()
                  .with("pieces", pieces)
                  .with("sum", sum)
                  .with("miss", sum - wanted);
            });
  }

  private static Reckoner screwTurns() {
    return Reckoner.of(
            GROUP, "screw-turns", "Turns of an adjusting screw for an angle or a movement")
        .optional("angle", Unit.MICRON_PER_M, "angle to change")
        .optional("rho", Unit.MM, "lever of the screw from the fixed point")
        .optional("move", Unit.MICRON, "movement, instead of angle and lever")
        .number("p", Unit.MM, "pitch of the screw")
        .result("move", Unit.MICRON, "movement at the screw")
        .result("turns", Unit.TURNS, "turns")
        .result("degrees", Unit.DEG, "the same as an angle of the screw")
        .source(Sources.ALIGNMENT)
        .rule(
            g -> {
              double move;
              if (g.has("move")) {
                move = g.number("move");
              } else if (g.has("angle") && g.has("rho")) {
                move = g.number("angle") * Require.positive("rho", g.number("rho"));
              } else {
                throw new IllegalArgumentException("give move, or angle and rho");
              }
              double turns = move / Require.positive("p", g.number("p"));
              return Answer.start()
                  .with("move", move)
                  .with("turns", turns)
                  .with("degrees", 2 * Math.PI * turns);
            });
  }
}
