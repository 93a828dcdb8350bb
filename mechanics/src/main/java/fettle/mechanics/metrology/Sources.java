package fettle.mechanics.metrology;

import fettle.mechanics.base.Source;

/** Where the rules of measuring and acceptance come from. */
final class Sources {

  static final Source GUM =
      Source.memory("ISO/IEC Guide 98-3:2008 (JCGM 100:2008)", "clauses 4, 5, annex G");
  static final Source GUM_H1 = Source.memory("JCGM 100:2008", "annex H.1");
  static final Source GUM_H2 = Source.memory("JCGM 100:2008", "annex H.2");
  static final Source GUM_H3 = Source.memory("JCGM 100:2008", "annex H.3");
  static final Source GUM_H5 = Source.memory("JCGM 100:2008", "annex H.5");
  static final Source GUM_COSINE = Source.memory("JCGM 100:2008", "F.2.4.4");
  static final Source MONTE_CARLO = Source.memory("JCGM 101:2008", "clause 7");
  static final Source STATISTICS =
      Source.page(
          "NIST Statistical Reference Datasets",
          "https://www.itl.nist.gov/div898/strd/, definitions of the certified values");
  static final Source GRUBBS =
      Source.page("NIST/SEMATECH e-Handbook of Statistical Methods", "1.3.5.17.1 (Grubbs 1969)");
  static final Source LEVENE =
      Source.memory("NIST/SEMATECH e-Handbook of Statistical Methods", "1.3.5.10 (Brown-Forsythe)");
  static final Source SHEWHART = Source.memory("ISO 7870-2:2023", "individuals and range charts");
  static final Source EWMA =
      Source.page("NIST/SEMATECH e-Handbook of Statistical Methods", "6.3.2.4; ISO 7870-6:2016");
  static final Source CUSUM =
      Source.page("NIST/SEMATECH e-Handbook of Statistical Methods", "6.3.2.3; ISO 7870-4");
  static final Source RUN_LENGTH =
      Source.memory(
          "Lucas & Saccucci, Technometrics 32 (1990)", "Markov chain, Brook & Evans 1972");
  static final Source PREDICTION_LIMITS =
      Source.derived("prediction interval of one further normal value");
  static final Source POSITIONING = Source.memory("ISO 230-2:2014", "clause 3");
  static final Source RADIAL_ERROR = Source.memory("ISO 230-7:2015", "clauses 3 and 5");
  static final Source GEOMETRY = Source.memory("ISO 230-1:1996", "clauses 5.2 to 5.6");
  static final Source DIAL = Source.derived("least squares with one offset for each run");
  static final Source HARMONICS = Source.derived("first harmonic of readings over one turn");
  static final Source REVERSAL = Source.memory("Donaldson 1972", "reversal of ball and indicator");
  static final Source BEAM = Source.derived("Euler beam under its own weight and an end force");
  static final Source ALIGNMENT = Source.derived("geometry of axis, bed and slides");
  static final Source STIFFNESS = Source.derived("least squares on the push-pull loop");
  static final Source CONTACT = Source.derived("point contact: approach grows with force^(2/3)");
  static final Source HEAT = Source.derived("first-order warm-up law");
  static final Source SPIN = Source.derived("energy balance of a coasting spindle");
  static final Source SPEED = Source.derived("count over time");
  static final Source PLAN = Source.derived("variance of a least-squares slope");
  static final Source VERDICT = Source.memory("ISO 14253-1:2017", "default rule, 95 %");
  static final Source CONFORMANCE = Source.memory("JCGM 106:2012", "clause 7");
  static final Source ADJUSTMENT = Source.derived("weighted least squares over the adjusters");
  static final Source NORMALISED = Source.memory("ISO/IEC 17043, ISO 13528", "En number");
  static final Source BAYES = Source.derived("conjugate normal update of linear parameters");
  static final Source INDICATOR =
      Source.page("JIS B 7503:2011", "maximum permissible errors, extract on a maker's page");
  static final Source LEVEL = Source.practice("level read both ways round");
  static final Source RUN_IN = Source.practice("run-in in steps with a temperature log");

  static final Source TRIAL_PLAN = Source.practice("number of targets and runs of shop trials");

  private Sources() {}
}
