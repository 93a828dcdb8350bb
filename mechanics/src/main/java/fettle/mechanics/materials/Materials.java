package fettle.mechanics.materials;

import fettle.mechanics.base.Interval;
import fettle.mechanics.base.Rows;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The table of materials. */
public final class Materials {

  private static final int LONGEST_NAME = 60;
  private static final List<Material> ALL = read();
  private static final Map<String, Material> BY_NAME = byName();

  private Materials() {}

  /** Returns all materials in the order of the table. */
  public static List<Material> all() {
    return ALL;
  }

  /**
   * Returns the material of that designation; case, spaces and hyphens do not count.
   *
   * @throws IllegalArgumentException if there is none, with the nearest names
   */
  public static Material of(String designation) {
    return find(designation)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "material: found '"
                        + (designation.length() > LONGEST_NAME
                            ? designation.substring(0, LONGEST_NAME) + "…"
                            : designation)
                        + "', which the table does not list; nearest are "
                        + String.join(", ", nearest(designation))));
  }

  /** Returns the material of that designation, if it is listed. */
  public static Optional<Material> find(String designation) {
    return Optional.ofNullable(BY_NAME.get(plain(designation)));
  }

  /** Returns the three listed designations whose names come nearest. */
  public static List<String> nearest(String designation) {
    String wanted = plain(designation);
    String shortened = wanted.length() > LONGEST_NAME ? wanted.substring(0, LONGEST_NAME) : wanted;
    return BY_NAME.entrySet().stream()
        .sorted(
            Comparator.comparingDouble(
                (Map.Entry<String, Material> e) -> distance(shortened, e.getKey())))
        .map(e -> e.getValue().designation())
        .distinct()
        .limit(3)
        .toList();
  }

  /**
   * Edits from one name to the other over the longer length; a name that begins alike is nearer.
   */
  private static double distance(String a, String b) {
    if (a.isEmpty()) {
      return 1;
    }
    int[] previous = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      previous[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] current = new int[b.length() + 1];
      current[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        current[j] = Math.min(Math.min(current[j - 1], previous[j]) + 1, previous[j - 1] + change);
      }
      previous = current;
    }
    double share = (double) previous[b.length()] / Math.max(a.length(), b.length());
    return b.startsWith(a) || b.contains(a) ? share / 4 : share;
  }

  private static String plain(String name) {
    StringBuilder plain = new StringBuilder(name.length());
    name.toUpperCase(Locale.ROOT)
        .codePoints()
        .filter(c -> c == '+' || isLetterOrNumber(c))
        .forEach(plain::appendCodePoint);
    return plain.toString();
  }

  private static boolean isLetterOrNumber(int c) {
    int type = Character.getType(c);
    return Character.isLetterOrDigit(c)
        || type == Character.LETTER_NUMBER
        || type == Character.OTHER_NUMBER;
  }

  private static Map<String, Material> byName() {
    Map<String, Material> names = new LinkedHashMap<>();
    for (Material material : ALL) {
      put(names, material.designation(), material);
    }
    for (Material material : ALL) {
      for (String other : material.otherNames()) {
        put(names, other, material);
      }
    }
    return names;
  }

  private static void put(Map<String, Material> names, String name, Material material) {
    Material before = names.putIfAbsent(plain(name), material);
    if (before != null && !before.designation().equals(material.designation())) {
      throw new IllegalStateException("materials.csv names '" + name + "' twice");
    }
  }

  private static List<Material> read() {
    Map<String, List<Map<String, String>>> rows = new LinkedHashMap<>();
    for (Map<String, String> row : Rows.read(Materials.class, "properties.csv")) {
      rows.computeIfAbsent(cell(row, "material"), k -> new ArrayList<>()).add(row);
    }
    List<Material> materials = new ArrayList<>();
    for (Map<String, String> row : Rows.read(Materials.class, "materials.csv")) {
      String name = cell(row, "material");
      List<String> others =
          cell(row, "other").isEmpty()
              ? List.of()
              : List.of(cell(row, "other").split("\\|", -1)).stream().map(String::trim).toList();
      materials.add(
          new Material(
              name,
              Material.Family.valueOf(cell(row, "family")),
              others,
              properties(rows.getOrDefault(name, List.of()))));
      rows.remove(name);
    }
    if (!rows.isEmpty()) {
      throw new IllegalStateException("properties.csv has unlisted materials " + rows.keySet());
    }
    return List.copyOf(materials);
  }

  private static Map<Property, Quantity> properties(List<Map<String, String>> rows) {
    Map<Property, Quantity> properties = new EnumMap<>(Property.class);
    for (Map<String, String> row : rows) {
      Property property = Property.valueOf(cell(row, "property"));
      Unit unit = property.unit();
      double low = Double.parseDouble(cell(row, "low"));
      double high = Double.parseDouble(cell(row, "high"));
      Quantity quantity =
          new Quantity(
              unit.toCoherent(Double.parseDouble(cell(row, "value"))),
              new Interval(unit.toCoherent(low), unit.toCoherent(high)),
              new Source(
                  cell(row, "document"),
                  cell(row, "place"),
                  Source.Basis.valueOf(cell(row, "basis"))));
      if (properties.put(property, quantity) != null) {
        throw new IllegalStateException("properties.csv states a property twice: " + row);
      }
    }
    return properties;
  }

  private static String cell(Map<String, String> row, String column) {
    return row.getOrDefault(column, "");
  }
}
