package fettle.parts.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Counts and volumes of evaluated solids against closed forms. */
class BrepTest {

  private static Body block(double l, double w, double h) {
    return new Body(List.of())
        .with(Body.Act.ADD, push(Frame.WORLD, Profile.rectangle(0, 0, l, w, "block"), h), "block");
  }

  private static Primitive push(Frame f, Profile p, double h) {
    return new Primitive.Push(f, p, h);
  }

  private static Primitive rod(Vec at, Vec along, double r, double l) {
    return new Primitive.Turn(Frame.along(at, along), Profile.rectangle(0, 0, l, r, "rod"));
  }

  private static String counts(Brep b) {
    return b.vertices().size()
        + "|"
        + b.edges().size()
        + "|"
        + b.faces().size()
        + "|"
        + b.loops()
        + "|"
        + b.genus();
  }

  @Test
  void blockWithFiveThroughHoles() {
    Body body = block(100, 60, 20);
    double removed = 0;
    double[][] at = {{15, 15, 3}, {85, 15, 3}, {15, 45, 3}, {85, 45, 3}, {50, 30, 11}};
    for (double[] h : at) {
      body = body.with(Body.Act.CUT, rod(new Vec(h[0], h[1], -1), Vec.Z, h[2], 22), "hole");
      removed += Math.PI * h[2] * h[2] * 20;
    }
    Brep b = Brep.of(body);
    assertThat(counts(b)).isEqualTo("18|27|11|21|5");
    assertThat(Moments.of(b).volume()).isCloseTo(120_000 - removed, within(1e-6));
  }

  @Test
  void steppedShaft() {
    Profile p =
        Profile.start(0, 0)
            .line(0, 10, "a")
            .line(20, 10, "a")
            .line(20, 8, "b")
            .line(50, 8, "b")
            .line(50, 6, "c")
            .line(60, 6, "c")
            .line(60, 0, "c")
            .close("axis");
    Body body =
        new Body(List.of())
            .with(Body.Act.ADD, new Primitive.Turn(Frame.of(Vec.ZERO, Vec.X, Vec.Z), p), "shaft");
    Brep b = Brep.of(body);
    assertThat(counts(b)).isEqualTo("6|9|7|9|0");
    double volume = Math.PI * (100 * 20 + 64 * 30 + 36 * 10);
    assertThat(Moments.of(b).volume()).isCloseTo(volume, within(1e-7));
  }

  @Test
  void crossHoleThroughShaft() {
    double r = 10;
    double a = 3;
    Body body =
        new Body(List.of())
            .with(Body.Act.ADD, rod(Vec.ZERO, Vec.X, r, 40), "shaft")
            .with(Body.Act.CUT, rod(new Vec(20, 0, -15), Vec.Z, a, 30), "cross");
    Brep b = Brep.of(body);
    double hole = 0;
    int n = 4000;
    for (int i = 0; i < n; i++) {
      double t = (i + 0.5) * Math.PI / n;
      double y = a * Math.cos(t);
      hole += 4 * a * a * Math.sin(t) * Math.sin(t) * Math.sqrt(r * r - y * y) * Math.PI / n;
    }
    assertThat(counts(b)).isEqualTo("4|6|4|6|1");
    assertThat(b.genus()).isEqualTo(1);
    assertThat(Moments.of(b).volume()).isCloseTo(Math.PI * r * r * 40 - hole, within(1e-6));
  }

  @Test
  void keywayWithRoundEnds() {
    Profile slot =
        Profile.start(10, -3)
            .line(24, -3, "key")
            .bulge(24, 3, 1, "key")
            .line(10, 3, "key")
            .bulge(10, -3, 1, "key")
            .close("key");
    Body body =
        new Body(List.of())
            .with(Body.Act.ADD, rod(Vec.ZERO, Vec.X, 10, 40), "shaft")
            .with(
                Body.Act.CUT,
                push(new Frame(new Vec(0, 0, 6.5), Vec.X, Vec.Y, Vec.Z), slot, 9),
                "key");
    Brep b = Brep.of(body);
    assertThat(b.genus()).isZero();
    double removed = 0;
    int n = 200_000;
    for (int i = 0; i < n; i++) {
      double y = -3 + 6 * (i + 0.5) / n;
      removed += (Math.sqrt(100 - y * y) - 6.5) * (14 + 2 * Math.sqrt(9 - y * y)) * 6 / n;
    }
    assertThat(Moments.of(b).volume()).isCloseTo(Math.PI * 4000 - removed, within(1e-4));
  }

  @Test
  void hexagonOnRoundBarAndFlats() {
    Profile hex =
        Profile.start(20, 0)
            .line(10, 10 * Math.sqrt(3), "hex")
            .line(-10, 10 * Math.sqrt(3), "hex")
            .line(-20, 0, "hex")
            .line(-10, -10 * Math.sqrt(3), "hex")
            .line(10, -10 * Math.sqrt(3), "hex")
            .close("hex");
    Body body =
        new Body(List.of())
            .with(Body.Act.ADD, push(Frame.WORLD, hex, 10), "hex")
            .with(Body.Act.ADD, rod(Vec.ZERO, Vec.Z, 8, 40), "shank");
    Brep b = Brep.of(body);
    double v = 6 * Math.sqrt(3) / 4 * 400 * 10 + Math.PI * 64 * 30;
    assertThat(Moments.of(b).volume()).isCloseTo(v, within(1e-6));
    Body flats =
        new Body(List.of())
            .with(Body.Act.ADD, rod(Vec.ZERO, Vec.X, 10, 40), "shaft")
            .with(
                Body.Act.CUT,
                push(
                    new Frame(new Vec(-1, -20, 8), Vec.X, Vec.Y, Vec.Z),
                    Profile.rectangle(0, 0, 11, 40, "flat"),
                    5),
                "flat");
    double segment = 100 * Math.acos(0.8) - 8 * 6;
    assertThat(Moments.of(Brep.of(flats)).volume())
        .isCloseTo(Math.PI * 4000 - 10 * segment, within(1e-6));
  }

  @Test
  void drillPointBlindHoleCounterboreAndSlotAcross() {
    Profile drill =
        Profile.start(-1, 0)
            .line(-1, 4, "h")
            .line(12, 4, "h")
            .line(12 + 4 / Math.sqrt(3), 0, "h")
            .close("axis");
    Body body =
        block(60, 40, 30)
            .with(
                Body.Act.CUT,
                new Primitive.Turn(Frame.of(new Vec(20, 20, 30), new Vec(0, 0, -1), Vec.X), drill),
                "h")
            .with(
                Body.Act.CUT,
                push(
                    new Frame(new Vec(40, -1, 20), Vec.Y, Vec.Z, Vec.X),
                    Profile.rectangle(0, 0, 42, 11, "slot"),
                    6),
                "slot");
    Brep b = Brep.of(body);
    double removed = Math.PI * 16 * 12 + Math.PI * 16 * 4 / Math.sqrt(3) / 3 + 40 * 10 * 6;
    assertThat(Moments.of(b).volume()).isCloseTo(72_000 - removed, within(1e-6));
    assertThat(b.genus()).isZero();
  }

  @Test
  void grip() {
    Profile p =
        Profile.start(0, 0)
            .line(0, 5, "a")
            .bulge(40, 5, -0.25, "grip")
            .line(40, 3, "a")
            .bulge(44, 0, -0.4, "nose")
            .close("axis");
    Body body =
        new Body(List.of())
            .with(Body.Act.ADD, new Primitive.Turn(Frame.of(Vec.ZERO, Vec.X, Vec.Z), p), "grip");
    Brep b = Brep.of(body);
    assertThat(b.genus()).isZero();
    double volume = 0;
    int n = 20_000;
    for (Profile.Piece piece : p.pieces()) {
      for (int i = 0; i < n; i++) {
        double[] from = piece.at((double) i / n);
        double[] to = piece.at((i + 1.0) / n);
        double[] at = piece.at((i + 0.5) / n);
        volume -= Math.PI * at[1] * at[1] * (to[0] - from[0]);
      }
    }
    assertThat(Moments.of(b).volume()).isCloseTo(volume, within(1e-4));
  }
}
