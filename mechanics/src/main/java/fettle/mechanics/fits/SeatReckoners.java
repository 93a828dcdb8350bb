package fettle.mechanics.fits;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Bound;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.List;
import java.util.Locale;

/** Single calculations on seats of bearings and the usual choice of fits. */
final class SeatReckoners {

  private SeatReckoners() {}

  static List<Reckoner> all() {
    return List.of(bearingLimits(), bearingSeat(), fitAdvice(), runningClearance());
  }

  private static Reckoner bearingLimits() {
    return Reckoner.of(
            "fits", "bearing-limits", "A rolling bearing's own limits of bore or outside diameter")
        .number("size", Unit.MM, "bore or outside diameter of the bearing")
        .choice("part", "which diameter", "bore", "outside")
        .choice("class", "tolerance class of the bearing", "normal", "P6", "P5", "P4", "tapered")
        .result("upper", Unit.MICRON, "upper limit deviation")
        .result("lower", Unit.MICRON, "lower limit deviation")
        .source(Sources.BEARINGS)
        .rule(
            g -> {
              Deviations d = bearing(g.choice("part"), g.choice("class"), g.number("size"));
              return Answer.start().with("upper", d.upper()).with("lower", d.lower());
            });
  }

  private static Deviations bearing(String part, String tolerance, double size) {
    BearingClass found = BearingClass.parse(tolerance);
    return part.equals("bore") ? found.bore(size) : found.outside(size);
  }

  private static Reckoner bearingSeat() {
    return Reckoner.of(
            "fits", "bearing-seat", "Seat of a rolling bearing against the bearing's own limits")
        .number("size", Unit.MM, "bore or outside diameter of the bearing")
        .text("class", "tolerance class of the seat: k5 on a shaft, J7 in a housing")
        .choice("bearing", "tolerance class of the bearing", "normal", "P6", "P5", "P4", "tapered")
        .result("max_interference", Unit.MICRON, "greatest interference; negative is clearance")
        .result("min_interference", Unit.MICRON, "least interference; negative is clearance")
        .result("max_clearance", Unit.MICRON, "greatest clearance; negative is interference")
        .result("min_clearance", Unit.MICRON, "least clearance; negative is interference")
        .result("kind", Unit.ONE, "clearance, transition or interference")
        .result("seat_upper", Unit.MICRON, "upper limit deviation of the seat")
        .result("seat_lower", Unit.MICRON, "lower limit deviation of the seat")
        .result("bearing_lower", Unit.MICRON, "lower limit deviation of the bearing")
        .result(
            "clearance_loss",
            Unit.MICRON,
            "most the bearing's radial clearance falls: 0.8 of the interference on a shaft, 0.7 in"
                + " a housing")
        .source(Sources.BEARINGS)
        .rule(
            g -> {
              double size = g.number("size");
              ToleranceClass seat = ToleranceClass.parse(g.text("class"));
              Deviations own = seat.deviations(size);
              Deviations ring =
                  bearing(seat.isHole() ? "outside" : "bore", g.choice("bearing"), size);
              Fit fit = seat.isHole() ? new Fit(own, ring) : new Fit(ring, own);
              double tight = Math.max(0, -fit.minClearance());
              return Answer.start()
                  .with("max_interference", 0 - fit.minClearance())
                  .with("min_interference", 0 - fit.maxClearance())
                  .with("max_clearance", fit.maxClearance())
                  .with("min_clearance", fit.minClearance())
                  .with("kind", fit.kind().name().toLowerCase(Locale.ROOT))
                  .with("seat_upper", own.upper())
                  .with("seat_lower", own.lower())
                  .with("bearing_lower", ring.lower())
                  .with("clearance_loss", Deviations.exact((seat.isHole() ? 0.7 : 0.8) * tight))
                  .caution(
                      "reckoned against the bearing's own limits, not against H or h (W-FIT-BRG);"
                          + " the loss of radial clearance is common practice, from memory");
            });
  }

  private static Reckoner fitAdvice() {
    return Reckoner.of("fits", "fit-advice", "The usual class for a seat or fit of a small lathe")
        .number("size", Unit.MM, "nominal size, over 0 to 500 mm")
        .choice("purpose", "what it is for", FitAdvice.words().toArray(new String[0]))
        .result("class", Unit.ONE, "usual class or fit")
        .result("meaning", Unit.ONE, "what it is for")
        .result("max_clearance", Unit.MICRON, "greatest clearance; negative is interference")
        .result("min_clearance", Unit.MICRON, "least clearance; negative is interference")
        .source(Sources.SEATS)
        .rule(
            g -> {
              double size = g.number("size");
              FitAdvice advice = FitAdvice.of(g.choice("purpose"));
              Designation found = advice.at(size);
              String shown =
                  (found.isFit() ? found.hole().orElseThrow().text() + "/" : "")
                      + (found.isFit() || found.hole().isEmpty()
                          ? found.shaft().orElseThrow().text()
                          : found.hole().orElseThrow().text());
              Answer answer = Answer.start().with("class", shown).with("meaning", advice.meaning());
              if (found.isFit() || advice.isBearingSeat()) {
                Fit fit = found.isFit() ? found.fit() : seat(found, size);
                answer =
                    answer
                        .with("max_clearance", fit.maxClearance())
                        .with("min_clearance", fit.minClearance());
              }
              return advice == FitAdvice.BUSH_OUTSIDE
                  ? answer.caution("the bore of a pressed bush closes: ream it in place")
                  : answer;
            });
  }

  private static Fit seat(Designation found, double size) {
    return found.hole().isPresent()
        ? new Fit(found.deviations(), BearingClass.NORMAL.outside(size))
        : new Fit(BearingClass.NORMAL.bore(size), found.deviations());
  }

  private static Reckoner runningClearance() {
    return Reckoner.of(
            "fits", "running-clearance", "Usual clearance of a plain journal: 0.001 d and a little")
        .number("d", Unit.MM, "journal diameter")
        .result("low", Unit.MM, "0.001 d + 0.005 mm")
        .result("high", Unit.MM, "0.001 d + 0.010 mm")
        .source(Source.practice("clearance rule for oiled journals"))
        .rule(
            g -> {
              Bound.positive("d", g.number("d"), "mm");
              return Answer.start()
                  .with("low", Working.of("low", Unit.MM, "0.001*d + 0.005", g.term("d")))
                  .with("high", Working.of("high", Unit.MM, "0.001*d + 0.010", g.term("d")));
            });
  }
}
