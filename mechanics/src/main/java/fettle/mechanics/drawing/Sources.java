package fettle.mechanics.drawing;

import fettle.mechanics.base.Source;

/** Where the figures of this room come from. */
final class Sources {

  static final Source SHEETS =
      Source.page(
          "ISO 5457:1999", "sizes; border 20 on the filing side, 10 elsewhere; fields of 50");
  static final Source LINES = Source.page("ISO 128-2:2022", "line groups and line elements");
  static final Source LETTERS = Source.page("ISO 3098-1:2015", "lettering type B");
  static final Source SCALES = Source.page("ISO 5455:1979", "5.1");
  static final Source THREADS = Source.memory("ISO 6410-1:1993", "drawn depths and distances");
  static final Source TREE = Source.derived("dimensions are complete if they form a spanning tree");
  static final Source DIAL = Source.derived("circumference divided; 25.4 mm to the inch exactly");

  private Sources() {}
}
