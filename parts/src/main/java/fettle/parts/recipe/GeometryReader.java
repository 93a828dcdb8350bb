package fettle.parts.recipe;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Reads datums and geometrical tolerances. */
final class GeometryReader {

  private GeometryReader() {}

  /** Reads what a part asks of its geometry. */
  static Geometry geometry(Keys part) {
    List<Geometry.Datum> datums = new ArrayList<>();
    List<Geometry.Zone> tolerances = new ArrayList<>();
    for (Geometry.Asked asked : part.groups("geometry", GeometryReader::asked)) {
      if (asked instanceof Geometry.Datum d) {
        datums.add(d);
      } else {
        tolerances.add((Geometry.Zone) asked);
      }
    }
    return new Geometry(datums, tolerances);
  }

  private static Geometry.Asked asked(Keys k) {
    return k.operation.equals("datum")
        ? new Geometry.Datum(letter(k.text("letter")), k.text("on"))
        : zone(k);
  }

  private static String letter(String letter) {
    if (!letter.matches("[A-HJ-NPR-WYZ]")) {
      throw new IllegalArgumentException(
          "a datum has one capital letter, not I, O, Q or X; found '" + letter + "'");
    }
    return letter;
  }

  private static Geometry.Zone zone(Keys k) {
    Characteristic what = Characteristic.of(k.word("what"));
    List<String> to = Arrays.stream(k.text("to").split("[ ,]+")).filter(t -> !t.isEmpty()).toList();
    for (String t : to) {
      if (!t.matches("[A-Z](-[A-Z])?")) {
        throw new IllegalArgumentException(
            "datums are written in order with blanks between, such as A B or A-B C; found '"
                + k.text("to")
                + "'");
      }
    }
    return new Geometry.Zone(what, k.text("on"), k.number("value"), shape(k, what), to);
  }

  private static Geometry.Shape shape(Keys k, Characteristic what) {
    if (k.has("zone")) {
      return Geometry.Shape.valueOf(k.word("zone").toUpperCase(Locale.ROOT));
    }
    boolean round = what == Characteristic.POSITION || what == Characteristic.COAXIALITY;
    return round ? Geometry.Shape.ROUND : Geometry.Shape.BETWEEN;
  }
}
