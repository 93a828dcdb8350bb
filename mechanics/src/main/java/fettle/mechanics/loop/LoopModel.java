package fettle.mechanics.loop;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * The machine as rigid bodies joined by elastic elements, from tool to work; chains and parallel
 * paths alike. Forces act between two bodies, so what stands still does not matter; a body of the
 * name {@code ground} does not move.
 *
 * @param links the elements
 * @param tool the body that carries the tool
 * @param work the body that is turned
 * @param point the point of cut when all axes stand at 0: x, y, z [mm]
 * @param rides axes whose travel carries the point of cut along, each with its direction
 */
public record LoopModel(
    List<Link> links,
    String tool,
    String work,
    List<Double> point,
    Map<String, List<Double>> rides) {

  /** Doubts that differ by less than this share are of the same element, before and after [-]. */
  private static final double KIN = 0.15;

  /** Keeps its own lists. */
  public LoopModel {
    links = List.copyOf(links);
    point = List.copyOf(point);
    rides = Map.copyOf(rides);
  }

  /**
   * What an element gives to the flex in one direction.
   *
   * @param name the element
   * @param share share of the whole, 0 to 1 [-]
   * @param compliance its part of the compliance [mm/N]
   */
  public record Share(String name, double share, double compliance) {}

  /**
   * What an element gives, with its doubt.
   *
   * @param name the element
   * @param share share by the assumed values [-]
   * @param low share that is undershot in 16 of 100 samples [-]
   * @param high share that is overshot in 16 of 100 samples [-]
   * @param first how often it is the softest of all [-]
   */
  public record Ranked(String name, double share, double low, double high, double first) {}

  /**
   * Compliance with its doubt.
   *
   * @param compliance by the assumed values [mm/N]
   * @param low undershot in 16 of 100 samples [mm/N]
   * @param high overshot in 16 of 100 samples [mm/N]
   * @param elements the elements, softest first
   */
  public record Ranking(double compliance, double low, double high, List<Ranked> elements) {}

  /** Returns the model with the axes travelled. */
  public LoopModel at(Map<String, Double> travel) {
    double[] p = point.stream().mapToDouble(Double::doubleValue).toArray();
    rides.forEach(
        (axis, direction) -> {
          double s = travel.getOrDefault(axis, 0.0);
          for (int a = 0; a < 3; a++) {
            p[a] += s * direction.get(a);
          }
        });
    return new LoopModel(
        links.stream().map(l -> l.moved(travel)).toList(), tool, work, Link.list(p), rides);
  }

  /** Returns the model with one element replaced; refuses a name that is not there. */
  public LoopModel with(Link link) {
    if (links.stream().noneMatch(l -> l.name().equals(link.name()))) {
      throw new IllegalArgumentException("the loop has no element " + link.name());
    }
    return new LoopModel(
        links.stream().map(l -> l.name().equals(link.name()) ? link : l).toList(),
        tool,
        work,
        point,
        rides);
  }

  /** Returns the model with the stiffness of each element multiplied, in the order of links. */
  LoopModel scaled(double[] factors) {
    List<Link> next = new ArrayList<>();
    for (int i = 0; i < factors.length; i++) {
      next.add(links.get(i).stiffer(factors[i]));
    }
    return new LoopModel(next, tool, work, point, rides);
  }

  /** Returns the compliance of the work against the tool at the point of cut. */
  public Compliance compliance() {
    return Assembly.of(this).between(tool, work);
  }

  /**
   * Shares of the elements for a direction, greatest first; they add up to 1.
   *
   * @param direction force between tool and work: x, y, z, and moments if wanted [any]
   */
  public List<Share> shares(double... direction) {
    double[] parts = parts(direction);
    double total = Arrays.stream(parts).sum();
    List<Share> shares = new ArrayList<>();
    double size = length(direction);
    for (int i = 0; i < parts.length; i++) {
      shares.add(
          new Share(
              links.get(i).name(), total > 0 ? parts[i] / total : 0, parts[i] / (size * size)));
    }
    shares.sort((a, b) -> Double.compare(b.share(), a.share()));
    return List.copyOf(shares);
  }

  /**
   * How the bodies move under a force between tool and work, all told at the point of cut.
   *
   * @param against the body that counts as still
   * @param force force on the tool, its opposite on the work: x, y, z [N]
   * @return for each body ux, uy, uz [mm] and the turns about x, y, z [rad]
   */
  public Map<String, List<Double>> motions(String against, double... force) {
    Assembly assembly = Assembly.of(this);
    double[] u = assembly.solve(assembly.pair(tool, work, Arrays.copyOf(force, 6)));
    double[] still = assembly.motion(against, u);
    Map<String, List<Double>> motions = new LinkedHashMap<>();
    for (Link l : links) {
      for (String body : List.of(l.from(), l.to())) {
        double[] own = assembly.motion(body, u);
        Arrays.setAll(own, i -> own[i] - still[i]);
        motions.put(body, Link.list(own));
      }
    }
    return motions;
  }

  /**
   * A force on a body at a point.
   *
   * @param body the body
   * @param at the point: x, y, z [mm]
   * @param force the force: x, y, z [N]
   */
  public record Pull(String body, List<Double> at, List<Double> force) {}

  /**
   * Give under forces that hold each other in balance: the sum of each force times the way its
   * point goes along it.
   *
   * @param pulls the forces
   * @return twice the strain energy [N mm]
   */
  public double give(List<Pull> pulls) {
    Assembly assembly = Assembly.of(this);
    double[] f = assembly.load(pulls);
    double[] u = assembly.solve(f);
    double sum = 0;
    for (int i = 0; i < f.length; i++) {
      sum += f[i] * u[i];
    }
    return sum;
  }

  private static double length(double[] direction) {
    double sum = 0;
    for (double d : direction) {
      sum += d * d;
    }
    if (!(sum > 0)) {
      throw new IllegalArgumentException("the force needs a direction");
    }
    return Math.sqrt(sum);
  }

  private double[] parts(double[] direction) {
    return parts(Assembly.of(this), direction);
  }

  private double[] parts(Assembly assembly, double[] direction) {
    double[] force = assembly.pair(tool, work, Arrays.copyOf(direction, 6));
    double[] u = assembly.solve(force);
    double[] parts = new double[links.size()];
    Arrays.setAll(parts, i -> assembly.energy(i, u, u));
    return parts;
  }

  /**
   * Ranks the elements with the doubts of their stiffness carried through: lognormal samples with a
   * fixed seed, so that the same model gives the same answer.
   *
   * @param samples number of samples, at least 20
   * @param direction force between tool and work: x, y, z [any]
   */
  public Ranking ranked(int samples, double... direction) {
    return rankings(samples, List.<double[]>of(direction)).get(0);
  }

  /**
   * Ranks the elements for several directions on the same samples.
   *
   * @param samples number of samples, at least 20
   * @param directions forces between tool and work, each x, y, z [any]
   */
  public List<Ranking> rankings(int samples, List<double[]> directions) {
    if (samples < 20 || samples > 100_000) {
      throw new IllegalArgumentException("samples: found " + samples + ", must be 20 to 100000");
    }
    int n = links.size();
    double[][][] drawn = new double[directions.size()][samples][];
    Random random = new Random(20_240_229L);
    for (int s = 0; s < samples; s++) {
      double[] factor = new double[n];
      for (int i = 0; i < n; i++) {
        factor[i] = Math.exp(random.nextGaussian() * Math.log(links.get(i).doubt()));
      }
      Assembly assembly = Assembly.of(scaled(factor));
      for (int d = 0; d < drawn.length; d++) {
        drawn[d][s] = parts(assembly, directions.get(d));
      }
    }
    Assembly assumed = Assembly.of(this);
    List<Ranking> rankings = new ArrayList<>();
    for (int d = 0; d < drawn.length; d++) {
      double[] direction = directions.get(d);
      rankings.add(ranking(parts(assumed, direction), drawn[d], length(direction)));
    }
    return List.copyOf(rankings);
  }

  private Ranking ranking(double[] assumed, double[][] drawn, double size) {
    int n = links.size();
    int samples = drawn.length;
    double total = Arrays.stream(assumed).sum();
    double[] whole = new double[samples];
    double[][] share = new double[n][samples];
    int[] first = new int[n];
    for (int s = 0; s < samples; s++) {
      whole[s] = Arrays.stream(drawn[s]).sum();
      int softest = 0;
      for (int i = 0; i < n; i++) {
        share[i][s] = drawn[s][i] / whole[s];
        softest = drawn[s][i] > drawn[s][softest] ? i : softest;
      }
      first[softest]++;
    }
    List<Ranked> list = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Arrays.sort(share[i]);
      list.add(
          new Ranked(
              links.get(i).name(),
              assumed[i] / total,
              share[i][(int) (0.16 * samples)],
              share[i][(int) (0.84 * samples)],
              first[i] / (double) samples));
    }
    list.sort((a, b) -> Double.compare(b.share(), a.share()));
    Arrays.sort(whole);
    double square = size * size;
    return new Ranking(
        total / square,
        whole[(int) (0.16 * samples)] / square,
        whole[(int) (0.84 * samples)] / square,
        List.copyOf(list));
  }

  /**
   * Loss of stiffness if one element's stiffness changes, with the doubts of all others carried
   * through.
   *
   * @param name the element
   * @param factor its stiffness after over before, above 0 [-]
   * @param samples number of samples, at least 20
   * @param direction force between tool and work: x, y, z [any]
   * @return relative change of the loop's stiffness: by the assumed values, undershot in 16 and
   *     overshot in 16 of 100 samples [-]
   */
  public double[] change(String name, double factor, int samples, double... direction) {
    double[] changes = new double[samples];
    Random random = new Random(20_240_229L);
    for (int s = 0; s < samples; s++) {
      double[] f = new double[links.size()];
      double[] g = new double[links.size()];
      for (int i = 0; i < f.length; i++) {
        f[i] = Math.exp(random.nextGaussian() * Math.log(links.get(i).doubt()));
        g[i] = links.get(i).name().equals(name) ? f[i] * factor : f[i];
      }
      double before = Arrays.stream(scaled(f).parts(direction)).sum();
      changes[s] = before / Arrays.stream(scaled(g).parts(direction)).sum() - 1;
    }
    double assumed = changes(name, factor, direction);
    Arrays.sort(changes);
    return new double[] {assumed, changes[(int) (0.16 * samples)], changes[(int) (0.84 * samples)]};
  }

  /**
   * Loss of stiffness against another state of the same elements. What is not known of an element
   * is the same in both states; an element of another kind, known better or worse than the one in
   * its place, is drawn by itself.
   *
   * @param after the loop after, with the same elements in the same order
   * @param samples number of samples, at least 20
   * @param direction force between tool and work: x, y, z [any]
   * @return stiffness lost: by the assumed values, undershot in 16 and overshot in 16 of 100
   *     samples [-]
   */
  public double[] lost(LoopModel after, int samples, double... direction) {
    if (samples < 20 || !elements().equals(after.elements())) {
      throw new IllegalArgumentException("lost: needs 20 samples or more, and the same elements");
    }
    double[] losses = new double[samples];
    Random random = new Random(20_240_229L);
    Random other = new Random(20_250_331L);
    for (int s = 0; s < samples; s++) {
      double[] factor = new double[links.size()];
      double[] changed = new double[links.size()];
      for (int i = 0; i < factor.length; i++) {
        double was = Math.log(links.get(i).doubt());
        double is = Math.log(after.links.get(i).doubt());
        double drawn = random.nextGaussian();
        double afresh = other.nextGaussian();
        factor[i] = Math.exp(drawn * was);
        boolean kin = Math.abs(is - was) <= KIN * Math.max(is, was);
        changed[i] = kin ? Math.exp(drawn * is) : Math.exp(afresh * is);
      }
      double before = Arrays.stream(scaled(factor).parts(direction)).sum();
      losses[s] = 1 - before / Arrays.stream(after.scaled(changed).parts(direction)).sum();
    }
    Arrays.sort(losses);
    double assumed =
        1 - Arrays.stream(parts(direction)).sum() / Arrays.stream(after.parts(direction)).sum();
    return new double[] {assumed, losses[(int) (0.16 * samples)], losses[(int) (0.84 * samples)]};
  }

  /** Returns the names of the elements, in order. */
  public List<String> elements() {
    return links.stream().map(Link::name).toList();
  }

  private double changes(String name, double factor, double[] direction) {
    double before = Arrays.stream(parts(direction)).sum();
    Link old =
        links.stream()
            .filter(l -> l.name().equals(name))
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException("the loop has no element " + name));
    double after = Arrays.stream(with(old.stiffer(factor)).parts(direction)).sum();
    return before / after - 1;
  }
}
