package fettle.mechanics.cutting;

import fettle.mechanics.base.Source;

/** Where the formulas and tables of this room come from. */
public final class Sources {

  public static final Source KIENZLE =
      Source.memory("Kienzle and Victor, 1957; VDI 3206", "kc = kc1.1 h^-mc");
  public static final Source MATERIALS =
      Source.page(
          "VDI 3206 family", "checked against a public table of kc over feed within 3 percent");
  public static final Source MATERIALS_MEMORY = Source.memory("VDI 3206 family", "kc1.1 and mc");
  public static final Source FORCE_SHARES =
      Source.practice("feed force 0.4, passive force 0.35 of the cutting force");
  public static final Source POWER = Source.derived("force times speed");
  public static final Source LIMITS = Source.derived("the smallest of all limits rules");
  public static final Source FINISH = Source.derived("feed marks of a round or a pointed tool");
  public static final Source CHATTER =
      Source.memory("Tlusty; Tobias", "regenerative chatter of one mode, orthogonal turning");
  public static final Source SPEEDS = Source.practice("starting values of cutting speed");
  public static final Source DRILL =
      Source.derived("Kienzle on two lips at half the point angle; chisel edge added by practice");

  private Sources() {}
}
