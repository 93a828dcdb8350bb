package fettle.mechanics.electrics;

import fettle.mechanics.base.Source;

/** Where the electrics come from. */
final class Sources {

  static final Source MOTOR = Source.derived("power over voltage, efficiency and power factor");
  static final Source AMPACITY =
      Source.page(
          "IEC 60204-1:2016", "Table 6, PVC copper, 40 °C; B1 and C at 0.75 and 1 mm² from memory");
  static final Source AMBIENT = Source.page("IEC 60204-1:2016", "Table D.1");
  static final Source LEAST = Source.memory("IEC 60204-1:2016", "12.2, Table 5");
  static final Source PROTECTIVE = Source.memory("IEC 60204-1:2016", "Table 1");
  static final Source ADIABATIC = Source.page("IEC 60364-5-54", "543.1.2, adiabatic heating");
  static final Source DROP =
      Source.page("IEC 60228", "class 5, resistance at 20 °C; 0.00393 1/K for copper");
  static final Source OVERLOAD = Source.memory("IEC 60364-4-43", "433.1");
  static final Source ENCLOSURE =
      Source.page("IEC/VDE 0660-500", "effective cooling area by mounting");
  static final Source DISCHARGE = Source.memory("IEC 60204-1:2016", "6.2.4, 60 V within 5 s");
  static final Source STOP = Source.memory("ISO 13850:2015", "4.1; IEC 60204-1:2016, 9.2.3.4.2");
  static final Source APPROACH = Source.memory("ISO 13855:2010", "walking approach 1600 mm/s");
  static final Source PLUG = Source.memory("IEC 60204-1:2016", "5.3.2, plug and socket");
  static final Source LOSSES = Source.practice("losses of drives, coils and supplies");
  static final Source CODE = Source.memory("IEC 60529", "first and second numeral");
  static final Source SPINNING = Source.derived("J w = T t and J w^2/2");

  private Sources() {}
}
