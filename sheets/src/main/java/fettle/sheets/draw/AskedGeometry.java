package fettle.sheets.draw;

import fettle.parts.recipe.Geometry;
import fettle.parts.recipe.Held;
import fettle.parts.recipe.Recipe;
import fettle.sheets.dimension.Attached;
import fettle.sheets.dimension.Scheme;
import fettle.sheets.dimension.ToleranceFrame;
import fettle.sheets.dimension.Wanted;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** What is asked of the geometry of a part, feature by feature, booked when it is drawn. */
final class AskedGeometry {

  private final Geometry geometry;
  private final Map<String, Held> held;
  private final Scheme scheme;

  AskedGeometry(Recipe recipe, Scheme scheme) {
    this.geometry = recipe.geometry();
    this.held = Held.of(recipe);
    this.scheme = scheme;
  }

  /** Returns what is asked of the axis or middle plane of a feature: it stands at its size. */
  Attached median(String feature) {
    Held h = held.get(feature);
    return h == null || h.nature() == Held.Nature.PLANE
        ? Attached.NOTHING
        : attached(feature, h::isMedian, geometry.letterOf(feature));
  }

  /** Returns what is asked of a surface: it stands apart from any size. */
  Attached surface(String feature) {
    Held h = held.get(feature);
    if (h == null) {
      return Attached.NOTHING;
    }
    String datum = h.nature() == Held.Nature.PLANE ? geometry.letterOf(feature) : "";
    return attached(feature, z -> !h.isMedian(z), datum);
  }

  /** Returns what is asked of a feature whose leader can mean nothing else. */
  Attached all(String feature) {
    return held.containsKey(feature)
        ? attached(feature, z -> true, geometry.letterOf(feature))
        : Attached.NOTHING;
  }

  /** Tells whether the place of a feature is held by a position tolerance. */
  boolean isPlaced(String feature) {
    return geometry.on(feature).stream()
        .anyMatch(z -> z.what() == fettle.parts.recipe.Characteristic.POSITION);
  }

  /** Returns the plane faces of the part. */
  List<Held> faces() {
    return held.values().stream().filter(h -> h.nature() == Held.Nature.PLANE).toList();
  }

  private Attached attached(String feature, Predicate<Geometry.Zone> which, String datum) {
    List<Geometry.Zone> zones = geometry.on(feature).stream().filter(which).toList();
    zones.forEach(z -> scheme.printed(Wanted.of(z)));
    if (!datum.isEmpty()) {
      scheme.printed(Wanted.of(new Geometry.Datum(datum, feature)));
    }
    return new Attached(zones.stream().map(ToleranceFrame::of).toList(), datum);
  }
}
