package fettle.parts.recipe;

/** Reads what holes of all parts have in common. */
final class HoleReader {

  private HoleReader() {}

  /** Reads a hole. */
  static HoleForm hole(Keys k) {
    ScrewThread thread = k.thread("thread");
    double depth = k.orThrough("depth");
    HoleForm hole;
    if (thread != null) {
      hole =
          HoleForm.tapped(thread, k.has("thread-depth") ? k.number("thread-depth") : depth, depth);
    } else if (k.has("diameter")) {
      hole = HoleForm.blind(k.size("diameter"), depth);
    } else {
      throw new IllegalArgumentException("a hole needs a diameter or a thread");
    }
    hole = hole.bottom(bottom(k, "bottom"));
    if (k.has("Ra") || k.has("made")) {
      hole = hole.finish(k.finish());
    }
    if (k.has("counterbore")) {
      hole = hole.counterbore(k.number("counterbore"), k.number("counterbore-depth"));
    } else if (k.has("countersink")) {
      hole = hole.countersink(k.number("countersink"), k.number("countersink-angle"));
    }
    return hole;
  }

  /** Reads the shape of a bottom. */
  static HoleForm.Bottom bottom(Keys k, String key) {
    return k.word(key).equals("point") ? HoleForm.Bottom.DRILL_POINT : HoleForm.Bottom.FLAT;
  }

  /** Reads where holes stand. */
  static Pattern pattern(Keys k) {
    double u = k.number("u");
    double v = k.number("v");
    if (k.has("circle")) {
      return new Pattern.Circle(u, v, k.number("circle"), k.count("count"), k.number("start"));
    }
    int columns = k.count("columns");
    int rows = k.count("rows");
    return columns * rows == 1
        ? new Pattern.At(u, v)
        : new Pattern.Grid(u, v, columns, rows, k.number("step-u"), k.number("step-v"));
  }
}
