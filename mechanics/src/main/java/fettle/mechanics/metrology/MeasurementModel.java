package fettle.mechanics.metrology;

import fettle.mechanics.base.Formula;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A result as a formula of measured inputs, differentiated by central differences over one standard
 * uncertainty.
 *
 * @param formula the formula
 * @param names names of the inputs
 */
public record MeasurementModel(Formula formula, List<String> names) {

  /** Reads the formula and makes sure it knows no other names. */
  public static MeasurementModel of(String text, List<String> names, double[] values) {
    Require.sameLength("values", values.length, names.size());
    Require.atMost("inputs", names.size(), 40);
    MeasurementModel model = new MeasurementModel(Formula.parse(text), List.copyOf(names));
    if (!Double.isFinite(model.value(values))) {
      throw new IllegalArgumentException(
          "formula: " + text + " has no value at the given inputs; check for a division by 0");
    }
    return model;
  }

  /**
   * Evaluates the formula.
   *
   * @param values the inputs in order [any]
   * @return the result [any]
   */
  public double value(double[] values) {
    Map<String, Double> map = new HashMap<>();
    for (int i = 0; i < values.length; i++) {
      map.put(names.get(i), values[i]);
    }
    return formula.value(
        name -> {
          Double value = map.get(name);
          if (value == null) {
            throw new IllegalArgumentException(
                "formula: found the name '" + name + "', expected one of " + names);
          }
          return value;
        });
  }

  /**
   * Returns the sensitivities.
   *
   * @param values the inputs [any]
   * @param steps step for each input, 0 for a small one [any]
   * @return derivative to each input [result/input]
   */
  public double[] sensitivities(double[] values, double[] steps) {
    double[] c = new double[values.length];
    for (int i = 0; i < c.length; i++) {
      double size = steps[i] > 0 ? steps[i] : Math.max(Math.abs(values[i]), 1);
      double h = 1e-3 * size;
      c[i] =
          (8 * (moved(values, i, h) - moved(values, i, -h))
                  - (moved(values, i, 2 * h) - moved(values, i, -2 * h)))
              / (12 * h);
    }
    return c;
  }

  /**
   * Returns the variance that the terms of second order add: {@code sum(f_ij^2/2 + f_i f_ijj) u_i^2
   * u_j^2}.
   *
   * @param values the inputs [any]
   * @param u standard uncertainties [same as the inputs]
   * @return variance, not below 0 [result, squared]
   */
  public double secondOrder(double[] values, double[] u) {
    double[] c = sensitivities(values, u);
    double sum = 0;
    for (int i = 0; i < u.length; i++) {
      for (int j = 0; j < u.length; j++) {
        if (u[i] > 0 && u[j] > 0) {
          double fij = i == j ? second(values, i, u[i]) : mixed(values, i, j, u);
          double third = i == j ? third(values, i, u[i]) : thirdMixed(values, i, j, u);
          double ui = u[i] * u[i];
          double uj = u[j] * u[j];
          sum += (0.5 * fij * fij + c[i] * third) * ui * uj;
        }
      }
    }
    return Math.max(0, sum);
  }

  /** Returns the contributions of the inputs. */
  public List<Contribution> contributions(double[] values, double[] u, double[] freedom) {
    double[] c = sensitivities(values, u);
    List<Contribution> list = new ArrayList<>();
    for (int i = 0; i < c.length; i++) {
      Contribution.Kind kind =
          Double.isFinite(freedom[i]) ? Contribution.Kind.READINGS : Contribution.Kind.JUDGEMENT;
      list.add(new Contribution(names.get(i), u[i], c[i], freedom[i], kind));
    }
    return list;
  }

  private double moved(double[] values, int i, double by) {
    double[] moved = values.clone();
    moved[i] += by;
    return value(moved);
  }

  private double moved(double[] values, int i, double byI, int j, double byJ) {
    double[] moved = values.clone();
    moved[i] += byI;
    moved[j] += byJ;
    return value(moved);
  }

  private double second(double[] values, int i, double h) {
    return (moved(values, i, h) - 2 * value(values) + moved(values, i, -h)) / (h * h);
  }

  private double mixed(double[] values, int i, int j, double[] u) {
    double a = u[i];
    double b = u[j];
    return (moved(values, i, a, j, b)
            - moved(values, i, a, j, -b)
            - moved(values, i, -a, j, b)
            + moved(values, i, -a, j, -b))
        / (4 * a * b);
  }

  private double third(double[] values, int i, double h) {
    return (moved(values, i, 2 * h)
            - 2 * moved(values, i, h)
            + 2 * moved(values, i, -h)
            - moved(values, i, -2 * h))
        / (2 * h * h * h);
  }

  private double thirdMixed(double[] values, int i, int j, double[] u) {
    double a = u[i];
    double b = u[j];
    double up =
        moved(values, i, a, j, b) - 2 * moved(values, i, a, j, 0) + moved(values, i, a, j, -b);
    double down =
        moved(values, i, -a, j, b) - 2 * moved(values, i, -a, j, 0) + moved(values, i, -a, j, -b);
    return (up - down) / (2 * a * b * b);
  }
}
