package fettle.mechanics.motion;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Members on their seats.
 *
 * @param domain the axes and their limits
 * @param links the members, each after what it sits on
 * @param bodies the solids of the members
 */
public record Mechanism(Domain domain, List<Link> links, List<Body> bodies) {

  /**
   * A member.
   *
   * @param name its name
   * @param on what it sits on; empty for the one that stands
   * @param steps from the zero of what it sits on to its own
   */
  public record Link(String name, String on, List<Step> steps) {}

  /**
   * A solid of a member.
   *
   * @param link the member
   * @param name what it is called
   * @param solid the solid in the member's directions
   */
  public record Body(String link, String name, Convex solid) {
    /** Returns member and solid in one. */
    public String title() {
      return link + " (" + name + ")";
    }
  }

  /**
   * Two members that are not searched, and why.
   *
   * @param first the one
   * @param second the other
   * @param reason why
   */
  public record Skipped(String first, String second, String reason) {}

  /**
   * What is searched and what is not.
   *
   * @param searched pairs of solids
   * @param skipped pairs of members
   */
  public record Pairs(List<Pair> searched, List<Skipped> skipped) {}

  /** Keeps its own copies. */
  public Mechanism {
    links = List.copyOf(links);
    bodies = List.copyOf(bodies);
    Set<String> known = new HashSet<>();
    for (Link link : links) {
      if (!link.on().isEmpty() && !known.contains(link.on())) {
        throw new IllegalArgumentException(
            link.name() + " sits on " + link.on() + ", which must be named before it");
      }
      if (!known.add(link.name())) {
        throw new IllegalArgumentException("two members are called " + link.name());
      }
    }
  }

  /** Returns every pair of solids that move against each other and do not sit on one another. */
  public Pairs pairs() {
    Map<String, List<Link>> ways = ways();
    List<Pair> searched = new ArrayList<>();
    Map<List<String>, Skipped> skipped = new LinkedHashMap<>();
    for (int i = 0; i < bodies.size(); i++) {
      for (int j = i + 1; j < bodies.size(); j++) {
        Body a = bodies.get(i);
        Body b = bodies.get(j);
        if (a.link().equals(b.link())) {
          continue;
        }
        Pair pair = pair(a, b, ways);
        String reason = reason(pair, a, b, ways);
        if (reason.isEmpty()) {
          searched.add(pair);
        } else {
          skipped.putIfAbsent(List.of(a.link(), b.link()), new Skipped(a.link(), b.link(), reason));
        }
      }
    }
    return new Pairs(List.copyOf(searched), List.copyOf(skipped.values()));
  }

  /**
   * Returns where a point of a member lies at a position, seen from the member that stands.
   *
   * @param member the member
   * @param point the point in the member's directions
   * @param position position of every axis [mm or rad]
   */
  public Vector place(String member, Vector point, double[] position) {
    return new Chain(steps(way(member), 0), new Convex.Hull(List.of(point))).place(point, position);
  }

  /**
   * Returns the place, seen from the member that stands, of a point that is seen from the member on
   * which both of two stand.
   *
   * @param first the one
   * @param second the other
   * @param point the point
   * @param position position of every axis [mm or rad]
   */
  public Vector common(String first, String second, Vector point, double[] position) {
    List<Link> a = way(first);
    int shared = shared(a, way(second));
    return shared == 0 ? point : place(a.get(shared - 1).name(), point, position);
  }

  private Map<String, List<Link>> ways() {
    Map<String, List<Link>> ways = new LinkedHashMap<>();
    for (Link link : links) {
      List<Link> way = new ArrayList<>(ways.getOrDefault(link.on(), List.of()));
      way.add(link);
      ways.put(link.name(), List.copyOf(way));
    }
    return ways;
  }

  private List<Link> way(String member) {
    List<Link> way = ways().get(member);
    if (way == null) {
      throw new IllegalArgumentException("there is no member " + member);
    }
    return way;
  }

  private static Pair pair(Body a, Body b, Map<String, List<Link>> ways) {
    List<Link> wayA = ways.getOrDefault(a.link(), List.of());
    List<Link> wayB = ways.getOrDefault(b.link(), List.of());
    int shared = shared(wayA, wayB);
    return new Pair(
        a.title(),
        b.title(),
        new Chain(steps(wayA, shared), a.solid()),
        new Chain(steps(wayB, shared), b.solid()));
  }

  private static int shared(List<Link> a, List<Link> b) {
    int n = 0;
    while (n < a.size() && n < b.size() && a.get(n).equals(b.get(n))) {
      n++;
    }
    return n;
  }

  private static List<Step> steps(List<Link> way, int from) {
    return way.subList(from, way.size()).stream().flatMap(l -> l.steps().stream()).toList();
  }

  private static String reason(Pair pair, Body a, Body b, Map<String, List<Link>> ways) {
    if (sits(a, b, ways) || sits(b, a, ways)) {
      return "one sits on the other";
    }
    boolean moves =
        java.util.stream.Stream.of(pair.a(), pair.b())
            .flatMap(c -> c.steps().stream())
            .anyMatch(s -> s instanceof Step.Slide || s instanceof Step.Turn);
    return moves ? "" : "they do not move against each other";
  }

  private static boolean sits(Body upper, Body lower, Map<String, List<Link>> ways) {
    List<Link> way = ways.getOrDefault(upper.link(), List.of());
    return !way.isEmpty() && way.get(way.size() - 1).on().equals(lower.link());
  }
}
