package fettle.mechanics.fits;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Bound;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Single calculations on limits, fits, seats and general tolerances. */
public final class FitsReckoners {

  private FitsReckoners() {}

  /** Returns the reckoners of this room. */
  public static List<Reckoner> all() {
    List<Reckoner> all =
        new ArrayList<>(
            List.of(
                standardTolerance(),
                limitDeviations(),
                designation(),
                fundamentalDeviation(),
                fit(),
                fitTemperature(),
                generalTolerance()));
    all.addAll(SeatReckoners.all());
    all.addAll(PressReckoners.all());
    all.addAll(ChainReckoners.all());
    return List.copyOf(all);
  }

  private static Reckoner standardTolerance() {
    return Reckoner.of("fits", "standard-tolerance", "Standard tolerance of ISO 286-1 (IT grade)")
        .number("size", Unit.MM, "nominal size, over 0 to 500 mm")
        .text("grade", "grade 01, 0, 1 to 18, with or without IT")
        .result("IT", Unit.MICRON, "standard tolerance by the table")
        .result("formula", Unit.MICRON, "the formula's value before rounding")
        .result("rounded", Unit.MICRON, "the formula's value rounded (IT5 and coarser)")
        .result("i", Unit.MICRON, "tolerance factor of the step")
        .source(Sources.GRADES)
        .rule(
            g -> {
              double size = g.number("size");
              Grade grade = Grade.parse(g.text("grade"));
              Table.Step step = Grade.mainStep(size);
              double mean = Math.sqrt(Math.max(1, step.over()) * step.to());
              Answer answer =
                  Answer.start()
                      .with("IT", grade.width(size))
                      .with("formula", StandardFormula.width(size, grade))
                      .with(
                          "i",
                          Working.check(
                              "i",
                              StandardFormula.toleranceFactor(mean) / 1000,
                              Unit.MICRON,
                              "(0.45*D^(1/3) + 0.001*D)/1000",
                              Term.exact("D", mean)));
              if (grade.compareTo(Grade.IT5) < 0) {
                return answer;
              }
              double rounded = StandardFormula.rounded(size, grade);
              Answer both = answer.with("rounded", rounded);
              return Math.abs(rounded - grade.width(size)) < 1e-9
                  ? both
                  : both.caution(
                      "the table departs from the rounded formula here; the table counts");
            });
  }

  private static Reckoner limitDeviations() {
    return Reckoner.of(
            "fits", "limit-deviations", "Limits of a size with an ISO 286 tolerance class")
        .number("size", Unit.MM, "nominal size, over 0 to 500 mm")
        .text("class", "tolerance class: k6 for a shaft, H7 for a hole")
        .result("upper", Unit.MICRON, "upper limit deviation, ES or es")
        .result("lower", Unit.MICRON, "lower limit deviation, EI or ei")
        .result("max", Unit.MM, "greatest size")
        .result("min", Unit.MM, "least size")
        .result("aim", Unit.MM, "middle of the limits")
        .result("IT", Unit.MICRON, "width of the tolerance")
        .source(Sources.DEVIATIONS)
        .rule(g -> limits(g.number("size"), ToleranceClass.parse(g.text("class"))));
  }

  private static Reckoner designation() {
    return Reckoner.of("fits", "tolerance", "Limits of a toleranced size as written: 30 k6, 25 H7")
        .text("designation", "size and class, such as 30 k6")
        .result("upper", Unit.MICRON, "upper limit deviation, ES or es")
        .result("lower", Unit.MICRON, "lower limit deviation, EI or ei")
        .result("max", Unit.MM, "greatest size")
        .result("min", Unit.MM, "least size")
        .result("aim", Unit.MM, "middle of the limits")
        .result("IT", Unit.MICRON, "width of the tolerance")
        .source(Sources.DEVIATIONS)
        .rule(
            g -> {
              Designation read = Designation.parse(g.text("designation"));
              if (read.isFit()) {
                throw new IllegalArgumentException(
                    "designation: " + read.text() + " is a fit; ask the topic 'fit' for it");
              }
              double size =
                  read.size()
                      .orElseThrow(
                          () ->
                              new IllegalArgumentException(
                                  "designation: write the size in front, such as 25 "
                                      + read.text()));
              return limits(size, read.hole().or(read::shaft).orElseThrow());
            });
  }

  private static Answer limits(double size, ToleranceClass tolerance) {
    Deviations d = tolerance.deviations(size);
    Answer answer =
        Answer.start()
            .with("upper", d.upper())
            .with("lower", d.lower())
            .with("max", Deviations.exact(size + d.upper()))
            .with("min", Deviations.exact(size + d.lower()))
            .with("aim", Deviations.exact(size + d.middle()))
            .with("IT", d.width());
    if (size + d.lower() <= 0) {
      throw new IllegalArgumentException(
          tolerance.text() + " at " + size + " mm leaves no material: least size is not above 0");
    }
    for (String sentence : tolerance.cautions(size)) {
      answer = answer.caution(sentence);
    }
    return answer;
  }

  private static Reckoner fundamentalDeviation() {
    return Reckoner.of(
            "fits",
            "fundamental-deviation",
            "Fundamental deviation of a shaft letter, by table and by formula")
        .number("size", Unit.MM, "nominal size, over 0 to 500 mm")
        .text("letter", "letter of a shaft: a to zc, not js or j")
        .result("deviation", Unit.MICRON, "es of a to h, ei of k (IT4 to IT7) to zc, by the table")
        .result("formula", Unit.MICRON, "magnitude by the formula before rounding")
        .result("rounded", Unit.MICRON, "magnitude by the formula, rounded")
        .source(Sources.FORMULAS)
        .rule(
            g -> {
              double size = g.number("size");
              String letter = g.text("letter");
              ToleranceClass six = new ToleranceClass(letter, Grade.IT6);
              if (six.isHole() || letter.equals("js") || letter.equals("j")) {
                throw new IllegalArgumentException(
                    "letter '" + letter + "': expected a shaft letter with a formula, a to zc");
              }
              Deviations d = six.deviations(size);
              boolean loose = letter.compareTo("i") < 0;
              double table = loose ? d.upper() : d.lower();
              double rounded = StandardFormula.roundedDeviation(size, letter);
              Answer answer =
                  Answer.start()
                      .with("deviation", table)
                      .with("formula", StandardFormula.deviation(size, letter))
                      .with("rounded", rounded);
              return Math.abs(rounded - Math.abs(table)) < 1e-9
                  ? answer
                  : answer.caution(
                      "the table departs from the rounded formula here; the table counts");
            });
  }

  private static Reckoner fit() {
    return Reckoner.of("fits", "fit", "Clearance and interference of a hole and a shaft")
        .number("size", Unit.MM, "nominal size, over 0 to 500 mm")
        .input("fit", Input.Kind.TEXT, Unit.ONE, "the fit as written, H7/g6", null, false)
        .input("hole", Input.Kind.TEXT, Unit.ONE, "class of the hole, H7", null, false)
        .input("shaft", Input.Kind.TEXT, Unit.ONE, "class of the shaft, g6", null, false)
        .optional("hole_upper", Unit.MICRON, "upper deviation of the hole instead of a class")
        .optional("hole_lower", Unit.MICRON, "lower deviation of the hole instead of a class")
        .optional("shaft_upper", Unit.MICRON, "upper deviation of the shaft instead of a class")
        .optional("shaft_lower", Unit.MICRON, "lower deviation of the shaft instead of a class")
        .result("max_clearance", Unit.MICRON, "greatest clearance; negative is interference")
        .result("min_clearance", Unit.MICRON, "least clearance; negative is interference")
        .result("mean_clearance", Unit.MICRON, "clearance with both parts at mid-limits")
        .result("max_interference", Unit.MICRON, "greatest interference; negative is clearance")
        .result("min_interference", Unit.MICRON, "least interference; negative is clearance")
        .result("kind", Unit.ONE, "clearance, transition or interference")
        .result("hole_upper", Unit.MICRON, "ES")
        .result("hole_lower", Unit.MICRON, "EI")
        .result("shaft_upper", Unit.MICRON, "es")
        .result("shaft_lower", Unit.MICRON, "ei")
        .source(Sources.FITS)
        .rule(
            g -> {
              double size = g.number("size");
              if (!g.has("fit")) {
                return answer(new Fit(part(g, size, "hole"), part(g, size, "shaft")));
              }
              for (String other : List.of("hole", "shaft", "hole_upper", "shaft_upper")) {
                if (g.has(other)) {
                  throw new IllegalArgumentException("give fit or " + other + ", not both");
                }
              }
              Designation read = Designation.parse(g.text("fit"));
              if (read.size().isPresent() && read.size().getAsDouble() != size) {
                throw new IllegalArgumentException(
                    "fit: its size differs from size; give the size once");
              }
              return answer(read.at(size).fit());
            });
  }

  private static Deviations part(Given g, double size, String part) {
    String up = part + "_upper";
    String low = part + "_lower";
    if (g.has(part)) {
      if (g.has(up) || g.has(low)) {
        throw new IllegalArgumentException("give " + part + " or its deviations, not both");
      }
      ToleranceClass tolerance = ToleranceClass.parse(g.text(part));
      if (tolerance.isHole() != part.equals("hole")) {
        throw new IllegalArgumentException(
            part + ": found " + tolerance.text() + "; capitals are holes, small letters shafts");
      }
      return tolerance.deviations(size);
    }
    if (!g.has(up) || !g.has(low)) {
      throw new IllegalArgumentException(
          "give fit, or " + part + ", or both " + up + " and " + low);
    }
    return new Deviations(g.number(low), g.number(up));
  }

  private static Answer answer(Fit fit) {
    Term es = Term.exact("ES", fit.hole().upper(), Unit.MICRON);
    Term ei = Term.exact("EI", fit.hole().lower(), Unit.MICRON);
    Term shaftUpper = Term.exact("es", fit.shaft().upper(), Unit.MICRON);
    Term shaftLower = Term.exact("ei", fit.shaft().lower(), Unit.MICRON);
    return Answer.start()
        .with("max_clearance", fit.maxClearance())
        .showing(Working.of("max_clearance", Unit.MICRON, "ES - ei", es, shaftLower))
        .with("min_clearance", fit.minClearance())
        .showing(Working.of("min_clearance", Unit.MICRON, "EI - es", ei, shaftUpper))
        .with("mean_clearance", Deviations.exact((fit.maxClearance() + fit.minClearance()) / 2))
        .with("max_interference", 0 - fit.minClearance())
        .with("min_interference", 0 - fit.maxClearance())
        .with("kind", fit.kind().name().toLowerCase(Locale.ROOT))
        .with("hole_upper", fit.hole().upper())
        .with("hole_lower", fit.hole().lower())
        .with("shaft_upper", fit.shaft().upper())
        .with("shaft_lower", fit.shaft().lower());
  }

  private static Reckoner fitTemperature() {
    return Reckoner.of("fits", "fit-temperature", "Change of a clearance with temperature")
        .number("d", Unit.MM, "nominal diameter")
        .number("alpha_hole", Unit.PER_K, "expansion of the outer part", "0.0000115")
        .number("alpha_shaft", Unit.PER_K, "expansion of the inner part", "0.0000115")
        .number("dT", Unit.K, "temperature rise of both parts")
        .number("clearance", Unit.MICRON, "clearance at 20 °C; negative is interference", "0")
        .result("change", Unit.MICRON, "growth of the clearance")
        .result("clearance", Unit.MICRON, "clearance when warm")
        .source(Sources.EXPANSION)
        .rule(
            g -> {
              Bound.positive("d", g.number("d"), "mm");
              Working change =
                  Working.check(
                      "change",
                      Fit.clearanceGrowth(
                          g.number("d"),
                          Bound.within("alpha_hole", g.number("alpha_hole"), 0, 1e-3, "1/K"),
                          Bound.within("alpha_shaft", g.number("alpha_shaft"), 0, 1e-3, "1/K"),
                          Bound.within("dT", g.number("dT"), -300, 2000, "K")),
                      Unit.MICRON,
                      "d*(alpha_hole - alpha_shaft)*dT",
                      g.term("d"),
                      g.term("alpha_hole"),
                      g.term("alpha_shaft"),
                      g.term("dT"));
              return Answer.start()
                  .with("change", change)
                  .with("clearance", g.number("clearance") + change.value());
            });
  }

  private static Reckoner generalTolerance() {
    return Reckoner.of("fits", "general-tolerance", "General tolerance of ISO 2768-1")
        .number("size", Unit.MM, "nominal size; for an angle the length of the shorter leg")
        .choice("class", "tolerance class", "m", "f", "c", "v")
        .choice("kind", "what carries it", "linear", "edge", "angle")
        .result("tolerance", Unit.MM, "half tolerance, plus and minus")
        .result("angle", Unit.DEG, "half tolerance of an angle, plus and minus")
        .source(Sources.GENERAL)
        .rule(FitsReckoners::general);
  }

  private static Answer general(Given g) {
    double size = g.number("size");
    String tolerance = g.choice("class");
    return switch (g.choice("kind")) {
      case "edge" -> Answer.start().with("tolerance", GeneralTolerance.edge(size, tolerance));
      case "angle" -> Answer.start().with("angle", GeneralTolerance.angle(size, tolerance));
      default -> {
        Answer answer = Answer.start().with("tolerance", GeneralTolerance.linear(size, tolerance));
        yield tolerance.equals("c") && size <= 6
            ? answer.caution(
                "class c below 6 mm: sources differ (0.15 and 0.2 in an older standard); check"
                    + " the standard before relying on it")
            : answer;
      }
    };
  }
}
