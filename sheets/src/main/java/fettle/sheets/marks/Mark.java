package fettle.sheets.marks;

import java.util.List;

/** One mark on paper; {@code group} says what it belongs to, e.g. {@code view:front}. */
public sealed interface Mark {

  /** Returns what it belongs to. */
  String group();

  /** Returns this mark moved. */
  Mark moved(double dx, double dy);

  /**
   * A line through points.
   *
   * @param group what it belongs to
   * @param pen kind of line
   * @param points points in order
   */
  record Stroke(String group, Pen pen, List<Point> points) implements Mark {
    /** Keeps its own copy. */
    public Stroke {
      points = List.copyOf(points);
    }

    /** Returns a straight line. */
    public static Stroke line(String group, Pen pen, double x0, double y0, double x1, double y1) {
      return new Stroke(group, pen, List.of(new Point(x0, y0), new Point(x1, y1)));
    }

    /** Returns a rectangle. */
    public static Stroke box(String group, Pen pen, Box b) {
      return new Stroke(
          group,
          pen,
          List.of(
              new Point(b.x0(), b.y0()),
              new Point(b.x1(), b.y0()),
              new Point(b.x1(), b.y1()),
              new Point(b.x0(), b.y1()),
              new Point(b.x0(), b.y0())));
    }

    /**
     * Returns the length.
     *
     * @return length [mm]
     */
    public double length() {
      double sum = 0;
      for (int i = 1; i < points.size(); i++) {
        sum += points.get(i).to(points.get(i - 1));
      }
      return sum;
    }

    @Override
    public Mark moved(double dx, double dy) {
      return new Stroke(group, pen, points.stream().map(p -> p.moved(dx, dy)).toList());
    }
  }

  /**
   * An arc or circle.
   *
   * @param group what it belongs to
   * @param pen kind of line
   * @param x centre [mm]
   * @param y centre [mm]
   * @param radius radius [mm]
   * @param start angle of its start [rad]
   * @param sweep angle turned, positive anticlockwise [rad]
   */
  record Arc(String group, Pen pen, double x, double y, double radius, double start, double sweep)
      implements Mark {
    /** Returns the point at a share of the arc. */
    public Point at(double share) {
      double a = start + share * sweep;
      return new Point(x + radius * Math.cos(a), y + radius * Math.sin(a));
    }

    @Override
    public Mark moved(double dx, double dy) {
      return new Arc(group, pen, x + dx, y + dy, radius, start, sweep);
    }
  }

  /**
   * A filled shape.
   *
   * @param group what it belongs to
   * @param points corners in order
   */
  record Fill(String group, List<Point> points) implements Mark {
    /** Keeps its own copy. */
    public Fill {
      points = List.copyOf(points);
    }

    /** Returns a filled arrow of 15 degrees whose point lies at a place. */
    public static Fill arrow(String group, double x, double y, double towards) {
      double length = 3.5;
      double half = length * Math.tan(Math.toRadians(7.5));
      double c = Math.cos(towards);
      double s = Math.sin(towards);
      return new Fill(
          group,
          List.of(
              new Point(x, y),
              new Point(x - length * c - half * s, y - length * s + half * c),
              new Point(x - length * c + half * s, y - length * s - half * c)));
    }

    /** Returns a filled dot. */
    public static Fill dot(String group, double x, double y, double radius) {
      java.util.ArrayList<Point> round = new java.util.ArrayList<>();
      for (int i = 0; i < 16; i++) {
        double a = Math.PI * i / 8;
        round.add(new Point(x + radius * Math.cos(a), y + radius * Math.sin(a)));
      }
      return new Fill(group, round);
    }

    @Override
    public Mark moved(double dx, double dy) {
      return new Fill(group, points.stream().map(p -> p.moved(dx, dy)).toList());
    }
  }

  /**
   * Lettering. The place is the left end of its base line.
   *
   * @param group what it belongs to
   * @param text the text
   * @param x left end of the base line [mm]
   * @param y base line [mm]
   * @param height nominal height [mm]
   * @param reading from where it is read
   */
  record Text(String group, String text, double x, double y, double height, Reading reading)
      implements Mark {

    /** Returns the width of the text. */
    public double width() {
      return Lettering.width(text, height);
    }

    /** Returns the box of the text. */
    public Box box() {
      double below = 0.1 * height;
      return reading == Reading.FROM_BELOW
          ? new Box(x, y - below, x + width(), y + height)
          : new Box(x - height, y, x + below, y + width());
    }

    @Override
    public Mark moved(double dx, double dy) {
      return new Text(group, text, x + dx, y + dy, height, reading);
    }
  }

  /** From where text is read. */
  enum Reading {
    FROM_BELOW,
    FROM_RIGHT
  }
}
