package fettle.mechanics.solids;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A part that lies on springs, as on its ways, and takes a wrench at one face: its 6 by 6
 * compliance on two meshes, the finer with every cell of the coarser halved.
 *
 * @param material what it is made of
 * @param springs the faces it bears on
 * @param load the face that takes the wrench; it is read by the same average
 * @param step largest step of the finer mesh [mm]
 */
public record SprungPart(Elastic material, List<Support.Springs> springs, Patch load, double step) {

  private static final double SAFETY = 1.25;

  /** Keeps its own list. */
  public SprungPart {
    springs = List.copyOf(springs);
  }

  /**
   * What came out.
   *
   * @param fine compliance of the finer mesh at the middle of the loaded face, 36 entries by rows,
   *     ux uy uz rx ry rz by Fx Fy Fz Mx My Mz [mm/N, 1/N, rad/(N mm)]
   * @param coarse the same of the coarser mesh [same]
   * @param point middle of the loaded face: x, y, z [mm]
   * @param unknowns unknowns of the finer mesh
   * @param iterations most iterations of a solution
   */
  public record Flex(
      List<Double> fine, List<Double> coarse, List<Double> point, int unknowns, int iterations) {

    /**
     * Compliance for one wrench, extrapolated, with the error bar of the two meshes.
     *
     * @param wrench Fx, Fy, Fz, Mx, My, Mz at the point [-]
     */
    public Rigidity.Estimate along(double... wrench) {
      return Rigidity.Estimate.of(form(fine, wrench), form(coarse, wrench));
    }

    /**
     * Stiffness after over stiffness before; errors that both meshes have in common cancel.
     *
     * @param after the part after a cut, on the same meshes
     * @param wrench Fx, Fy, Fz, Mx, My, Mz at the point [-]
     */
    public Rigidity.Estimate kept(Flex after, double... wrench) {
      return Rigidity.Estimate.of(
          form(fine, wrench) / form(after.fine, wrench),
          form(coarse, wrench) / form(after.coarse, wrench));
    }

    private static double form(List<Double> c, double[] w) {
      double sum = 0;
      for (int i = 0; i < 6; i++) {
        for (int j = 0; j < 6; j++) {
          sum += w[i] * c.get(6 * i + j) * w[j];
        }
      }
      return sum;
    }

    /**
     * Share by which the two meshes differ, the greatest of the three forces.
     *
     * @return half-width of the error bar over the compliance [-]
     */
    public double bar() {
      double most = 0;
      for (int i = 0; i < 3; i++) {
        double step = Math.abs(fine.get(7 * i) - coarse.get(7 * i));
        most = Math.max(most, SAFETY * 2 / 3 * step / fine.get(7 * i));
      }
      return most;
    }
  }

  /** What one mesh gives. */
  private record Solved(List<Double> compliance, List<Double> middle, int unknowns, int count) {}

  /** Returns the flex of a part. */
  public Flex of(Body body) {
    return of(List.of(body)).get(0);
  }

  /**
   * Returns the flex of several states of a part, all on the same meshes, which hold the planes of
   * all.
   *
   * @param states the part before, after, ...
   */
  public List<Flex> of(List<Body> states) {
    Grid coarse = grid(states);
    Grid fine = coarse.halved();
    int n = states.size();
    Solved[] solved = new Solved[2 * n];
    Workers.run(2 * n, i -> solved[i] = solved(states.get(i % n), i < n ? fine : coarse));
    List<Flex> list = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Solved good = solved[i];
      Solved rough = solved[n + i];
      int most = Math.max(good.count, rough.count);
      list.add(new Flex(good.compliance, rough.compliance, good.middle, good.unknowns, most));
    }
    return list;
  }

  private Solved solved(Body body, Grid grid) {
    ElasticModel model = ElasticModel.of(body, material, grid, springs);
    double[][] c = model.compliances(List.of(load));
    double[] e = new double[36];
    for (int i = 0; i < 36; i++) {
      e[i] = (c[i / 6][i % 6] + c[i % 6][i / 6]) / 2;
    }
    double[] middle = Area.of(load.spots(grid)).middle();
    return new Solved(list(e), list(middle), model.unknowns(), model.iterations());
  }

  private Grid grid(List<Body> states) {
    List<Rigidity.Load> loads = new ArrayList<>(List.of(new Rigidity.Load(load, List.of(0.0))));
    return new Rigidity(material, List.copyOf(springs), loads).grid(states, 2 * step);
  }

  private static List<Double> list(double[] values) {
    return Arrays.stream(values).boxed().toList();
  }
}
