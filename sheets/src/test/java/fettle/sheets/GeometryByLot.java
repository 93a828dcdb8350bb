package fettle.sheets;

import fettle.parts.recipe.Characteristic;
import fettle.parts.recipe.Geometry;
import fettle.parts.recipe.Held;
import fettle.parts.recipe.Recipe;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Datums and geometrical tolerances by lot, on two parts in five. */
final class GeometryByLot {

  private static final double[] WIDTHS = {0.005, 0.01, 0.02, 0.05, 0.1};

  private final Random lot;
  private final List<Held> all;

  private GeometryByLot(Recipe recipe, long seed) {
    this.lot = new Random(seed * 104729 + 3);
    this.all = new ArrayList<>(Held.of(recipe).values());
  }

  /** Returns the part, perhaps with something asked of its geometry. */
  static Recipe of(Recipe recipe, long seed) {
    GeometryByLot g = new GeometryByLot(recipe, seed);
    return g.lot.nextInt(5) < 2 ? recipe.with(g.geometry()) : recipe;
  }

  private Held any() {
    return all.get(lot.nextInt(all.size()));
  }

  private Geometry geometry() {
    Held a = any();
    Held b = any();
    List<Geometry.Datum> datums = new ArrayList<>();
    datums.add(new Geometry.Datum("A", a.name()));
    if (!b.name().equals(a.name())) {
      datums.add(new Geometry.Datum("B", b.name()));
    }
    List<Geometry.Zone> zones = new ArrayList<>();
    int n = 1 + lot.nextInt(3);
    for (int i = 0; i < n; i++) {
      Held on = any();
      Geometry.Zone zone = zone(on, a);
      if (!on.name().equals(a.name())
          && zones.stream().noneMatch(z -> z.on().equals(on.name()) && z.what() == zone.what())) {
        zones.add(zone);
      }
    }
    return new Geometry(datums, zones);
  }

  private Geometry.Zone zone(Held on, Held a) {
    boolean first = lot.nextBoolean();
    boolean round = a.nature() == Held.Nature.ROUND;
    boolean mixed = (on.nature() == Held.Nature.ROUND) != round;
    boolean square = (on.axis() != a.axis()) != mixed;
    Characteristic leaning = square ? Characteristic.PERPENDICULARITY : Characteristic.PARALLELISM;
    Characteristic what =
        switch (on.nature()) {
          case ROUND ->
              first
                  ? Characteristic.CYLINDRICITY
                  : round && !mixed && !square ? Characteristic.COAXIALITY : leaning;
          case WIDTH -> first ? Characteristic.SYMMETRY : leaning;
          case PLANE -> first ? Characteristic.FLATNESS : leaning;
        };
    boolean form = what.kind() == Characteristic.Kind.FORM;
    return new Geometry.Zone(
        what,
        on.name(),
        WIDTHS[lot.nextInt(WIDTHS.length)],
        what == Characteristic.COAXIALITY ? Geometry.Shape.ROUND : Geometry.Shape.BETWEEN,
        form ? List.of() : List.of("A"));
  }
}
