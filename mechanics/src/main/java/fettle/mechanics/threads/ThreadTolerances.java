package fettle.mechanics.threads;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import java.util.function.IntSupplier;

/** Answers for the tolerances of a thread, as far as the form knows them. */
final class ThreadTolerances {

  private static final double MICRON = 0.001;
  private static final double INCH = 25.4;

  private ThreadTolerances() {}

  static Answer answer(Given g) {
    ThreadForm form =
        g.has("thread")
            ? GivenThread.of(g).form()
            : ThreadForm.valueOf(g.choice("form").toUpperCase(java.util.Locale.ROOT));
    return switch (form) {
      case METRIC, TRAPEZOIDAL -> byGrade(g, form);
      case UNIFIED -> unified(g);
      case ACME -> acme(g);
      case WHITWORTH -> whitworth(g);
    };
  }

  private static Answer byGrade(Given g, ThreadForm form) {
    boolean byNumbers = !g.has("thread");
    if (byNumbers && !g.has("P")) {
      throw new IllegalArgumentException("missing input 'P': pitch");
    }
    double p = byNumbers ? g.number("P") : GivenThread.of(g).profile().p();
    boolean hasDiameter = !byNumbers || g.has("d");
    double d = byNumbers ? g.number("d", 0) : GivenThread.of(g).profile().d();
    String fit = g.has("class") ? g.text("class") : byNumbers ? "" : GivenThread.of(g).fit();
    if (g.has("grade")) {
      return grade(form, hasDiameter, d, p, g.count("grade"));
    }
    Answer answer = Answer.start();
    String screw = ThreadLimits.screwClass(form, fit);
    String nut = ThreadLimits.nutClass(form, fit);
    if (!screw.isEmpty()) {
      answer = screw(answer, form, hasDiameter, d, p, ThreadClass.parse(screw));
    }
    return nut.isEmpty() ? answer : nut(answer, form, hasDiameter, d, p, ThreadClass.parse(nut));
  }

  private static Answer screw(
      Answer start, ThreadForm form, boolean hasDiameter, double d, double p, ThreadClass c) {
    boolean metric = form == ThreadForm.METRIC;
    int es =
        metric
            ? MetricTolerances.deviation(p, c.position())
            : ThreadLimits.trapezoidalDeviation(p, c.position());
    int td =
        metric
            ? MetricTolerances.majorOfScrew(p, c.crestGrade())
            : ThreadLimits.trapezoidalMajor(p);
    Answer answer = start.with("es", -es * MICRON).with("Td", td * MICRON);
    if (!hasDiameter) {
      return answer;
    }
    double td2 =
        metric
            ? MetricTolerances.pitchDiameterOfScrew(d, p, c.pitchGrade())
            : ThreadLimits.trapezoidalScrewTolerance(d, p, c.pitchGrade(), 1);
    answer = answer.with("Td2", td2 * MICRON);
    return metric ? answer : answer.with("Td3", (1.25 * td2 + es) * MICRON);
  }

  private static Answer nut(
      Answer start, ThreadForm form, boolean hasDiameter, double d, double p, ThreadClass c) {
    boolean metric = form == ThreadForm.METRIC;
    int ei = MetricTolerances.deviation(p, c.position());
    int td1 =
        metric ? MetricTolerances.minorOfNut(p, c.crestGrade()) : ThreadLimits.trapezoidalMinor(p);
    Answer answer = start.with("EI", ei * MICRON).with("TD1", td1 * MICRON);
    if (!hasDiameter) {
      return answer;
    }
    int td2 =
        metric
            ? MetricTolerances.pitchDiameterOfNut(d, p, c.pitchGrade())
            : ThreadLimits.trapezoidalNutTolerance(d, p, c.pitchGrade(), 1);
    return answer.with("TD2", td2 * MICRON);
  }

  private static Answer grade(ThreadForm form, boolean hasDiameter, double d, double p, int grade) {
    if (grade < 3 || grade > 9) {
      throw new IllegalArgumentException("grade = " + grade + ": expected 3 to 9");
    }
    boolean metric = form == ThreadForm.METRIC;
    Answer answer = Answer.start();
    if (hasDiameter) {
      answer =
          where(
              answer,
              "Td2",
              () ->
                  metric
                      ? MetricTolerances.pitchDiameterOfScrew(d, p, grade)
                      : ThreadLimits.trapezoidalScrewTolerance(d, p, grade, 1));
      answer =
          where(
              answer,
              "TD2",
              () ->
                  metric
                      ? MetricTolerances.pitchDiameterOfNut(d, p, grade)
                      : ThreadLimits.trapezoidalNutTolerance(d, p, grade, 1));
    }
    if (metric) {
      answer = where(answer, "Td", () -> MetricTolerances.majorOfScrew(p, grade));
      answer = where(answer, "TD1", () -> MetricTolerances.minorOfNut(p, grade));
    } else {
      answer = answer.with("Td", ThreadLimits.trapezoidalMajor(p) * MICRON);
      answer = answer.with("TD1", ThreadLimits.trapezoidalMinor(p) * MICRON);
    }
    if (answer.values().isEmpty()) {
      throw new IllegalArgumentException(
          "grade = " + grade + ": no tolerance of that grade for these sizes; give d as well");
    }
    return answer;
  }

  /** Leaves out a tolerance that the grade does not have. */
  private static Answer where(Answer answer, String name, IntSupplier tolerance) {
    try {
      return answer.with(name, tolerance.getAsInt() * MICRON);
    } catch (IllegalArgumentException e) {
      return answer.caution(String.valueOf(e.getMessage()));
    }
  }

  private static Answer unified(Given g) {
    ThreadDesignation t = GivenThread.of(g);
    ThreadProfile p = t.profile();
    double engagement = g.number("LE", ThreadLimits.engagement(t));
    if (!(engagement > 0)) {
      throw new IllegalArgumentException("LE = " + engagement + " mm: expected more than 0");
    }
    String fit = g.has("class") ? g.text("class") : t.fit();
    String screw = ThreadLimits.screwClass(t.form(), fit);
    String nut = ThreadLimits.nutClass(t.form(), fit);
    Answer answer = Answer.start();
    if (!screw.isEmpty()) {
      double allowance = UnifiedTolerances.allowance(p.d(), p.p(), engagement, screw);
      answer =
          answer
              .with("Td2", UnifiedTolerances.pitchDiameter(p.d(), p.p(), engagement, screw))
              .with("Td", UnifiedTolerances.major(p.p(), screw))
              .with("allowance", allowance)
              .with("es", -allowance);
    }
    return nut.isEmpty()
        ? answer
        : answer
            .with("TD2", UnifiedTolerances.pitchDiameter(p.d(), p.p(), engagement, nut))
            .with("TD1", UnifiedTolerances.minor(p.d(), p.p(), nut))
            .with("EI", 0);
  }

  private static Answer acme(Given g) {
    ThreadDesignation t = GivenThread.of(g);
    ThreadProfile p = t.profile();
    String fit = g.has("class") ? g.text("class") : t.fit().isEmpty() ? "2G" : t.fit();
    double td2 = AcmeTolerances.pitchDiameter(p, fit);
    double crest = AcmeTolerances.crest(p.p() / INCH) * INCH;
    double allowance = AcmeTolerances.allowance(p, fit);
    return Answer.start()
        .with("Td2", td2)
        .with("TD2", td2)
        .with("Td", crest)
        .with("TD1", crest)
        .with("Td3", 1.5 * td2)
        .with("allowance", allowance)
        .with("es", -allowance)
        .with("EI", 0);
  }

  private static Answer whitworth(Given g) {
    ThreadDesignation t = GivenThread.of(g);
    ThreadProfile p = t.profile();
    String fit = g.has("class") ? g.text("class") : t.fit().isEmpty() ? "medium" : t.fit();
    double td2 = WhitworthTolerances.pitchDiameter(p, fit);
    double allowance = WhitworthTolerances.allowance(p, fit);
    return Answer.start()
        .with("Td2", td2)
        .with("TD2", td2)
        .with("allowance", allowance)
        .with("es", -allowance)
        .with("EI", 0);
  }
}
