package fettle.mechanics.gears;

import fettle.mechanics.base.Source;

/** Where the formulas, limits and lists of this room come from. */
public final class Sources {

  public static final Source CHAIN =
      Source.derived("kinematic chain: teeth passed are equal on both wheels of a mesh");
  public static final Source DIAL_SERIES = Source.page("MIL-HDBK-759B", "5.2.2.3.1.4");
  public static final Source DIAL_PRACTICE =
      Source.practice("line spacing 1 mm recommended, 0.8 mm lowest; reading half a division");
  public static final Source DIAL_ERROR =
      Source.derived("error of a dial cut for another travel than the true one: e = s (T/Td - 1)");
  public static final Source PLAY =
      Source.derived("play at the pitch line referred through the ratio downstream of it");
  public static final Source ECCENTRICITY =
      Source.derived("pitch-line error of an eccentric wheel: e sin(phi)/cos(alpha_w)");
  public static final Source RACK_ERROR = Source.derived("teeth passed times mean pitch deviation");
  public static final Source TOOTH_CHOICE =
      Source.derived("exhaustive search over all tooth numbers in the ranges");
  public static final Source LEAD =
      Source.derived("lead cut: product of drivers over product of driven times the screw's lead");
  public static final Source LEAD_LIMIT =
      Source.derived(
          "lead error over the engagement as pitch diameter: d2 = dP cot(half flank angle);"
              + " the share of the tolerance it may take is the owner's choice");
  public static final Source ISO_965 =
      Source.memory("ISO 965-1:1998", "pitch diameter tolerance Td2 = k 90 P^0.4 d^0.1");
  public static final Source THREAD_DIAL =
      Source.derived(
          "half-nut rule: in register when the travel holds whole leads and whole threads");
  public static final Source BANJO = Source.derived("triangle of the axes S, T, L; cosine rule");
  public static final Source ISO_261 =
      Source.page("ISO 261:1998", "pitches 0.25 to 6 mm; 0.2, 0.75 and 8 mm from memory");
  public static final Source ISO_262 = Source.page("ISO 262:1998", "coarse pitches");
  public static final Source UTS =
      Source.page("ASME B1.1-2003", "threads per inch up to 1 in; above that from memory");
  public static final Source ISO_54 = Source.memory("ISO 54:1996", "rows I and II");
  public static final Source GEOMETRY =
      Source.memory("ISO 21771:2007", "cylindrical gears and gear pairs, spur");
  public static final Source SHIFT_SUM = Source.page("ISO 21771:2007", "Eq. 62");
  public static final Source BACKLASH = Source.page("ISO 21771:2007", "Eq. 63");
  public static final Source ISO_53 = Source.memory("ISO 53:1998", "profile A");
  public static final Source RECOMMENDED_BACKLASH =
      Source.memory("ISO/TR 10064-2:1996", "Annex A, Table A.1");
  public static final Source ISO_1328 = Source.memory("ISO 1328-1:2013", "5.3");
  public static final Source CHORDAL =
      Source.page("Elements of Metric Gear Technology", "section 10, table 10-1");
  public static final Source LEWIS =
      Source.memory("Shigley, Mechanical Engineering Design, 8th ed.", "table 14-2, eq. 14-7");
  public static final Source ISO_6336_3 =
      Source.memory("ISO 6336-3:2006", "method B, clauses 6, 7");
  public static final Source ISO_6336_5 = Source.memory("ISO 6336-5:2003", "quality MQ");
  public static final Source PLASTICS =
      Source.memory("Machinery's Handbook, 29th ed.", "plastic gearing");
  public static final Source SHEAR_PIN = Source.derived("double-shear pin across a shaft");
  public static final Source CUTTERS =
      Source.practice("involute form cutters, series of eight, numbered 1 (rack) to 8 (12 teeth)");
  public static final Source SYNTHESIS =
      Source.derived("exhaustive search with counting bounds; exact set cover");

  private Sources() {}
}
