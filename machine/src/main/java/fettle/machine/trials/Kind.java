package fettle.machine.trials;

import java.util.Arrays;
import java.util.List;

/** How a lathe is tested, with the columns its readings need; the last column is the reading. */
public enum Kind {
  /** A dial against an indicator or a scale, both ways, several runs. */
  DIAL(
      "dial",
      Column.count("run"),
      Column.direction("dir"),
      Column.number("turns"),
      Column.length("position")),
  /** A slide brought to the same places from both sides. */
  REVERSAL(
      "reversal",
      Column.count("run"),
      Column.direction("dir"),
      Column.length("target"),
      Column.length("position")),
  /** A bar in the spindle, read at two distances, re-seated at several angles. */
  TEST_BAR(
      "test bar",
      Column.word("plane", "h", "v"),
      Column.angle("seat"),
      Column.length("z"),
      Column.angle("spindle"),
      Column.length("reading")),
  /** Two collars turned without the tailstock. */
  TWO_COLLARS(
      "two collars",
      Column.count("cut"),
      Column.word("collar", "head", "free"),
      Column.length("diameter")),
  /** A bar between centres, read at both ends. */
  TAILSTOCK(
      "tailstock",
      Column.count("seating"),
      Column.word("plane", "h", "v"),
      Column.word("end", "head", "tail"),
      Column.length("reading")),
  /** Push and pull at the tool post. */
  PUSH(
      "push",
      Column.count("loop"),
      Column.direction("dir"),
      Column.force("force"),
      Column.length("movement")),
  /** Axial slip and camming of a turning spindle, and its play by push and pull. */
  AXIAL_FLOAT(
      "axial float",
      Column.word("place", "centre", "face", "push", "pull"),
      Column.count("turn"),
      Column.angle("spindle"),
      Column.length("reading")),
  /** A level along and across the bed, turned end for end at every place. */
  BED(
      "bed",
      Column.word("way", "along", "across"),
      Column.count("run"),
      Column.length("z"),
      Column.word("end", "a", "b"),
      Column.slope("slope")),
  /** A faced disc, read on both sides of its centre. */
  FACING(
      "facing", Column.count("cut"), Column.word("side", "near", "far"), Column.length("reading")),
  /** The carriage driven by the lead screw, against rods, from both sides. */
  LEAD_SCREW(
      "lead screw",
      Column.count("run"),
      Column.direction("dir"),
      Column.length("target"),
      Column.length("position")),
  /** Turns of the spindle counted against time. */
  SPEEDS("speeds", Column.count("step"), Column.number("turns"), Column.time("time")),
  /** Temperature of the bearings against time. */
  RUN_IN(
      "run-in",
      Column.word("place", "front", "rear"),
      Column.time("time"),
      Column.temperature("room"),
      Column.temperature("temperature")),
  /** Axial force until one row of a preloaded pair lets go. */
  PRELOAD(
      "preload",
      Column.count("loop"),
      Column.direction("dir"),
      Column.force("force"),
      Column.length("movement")),
  /** Any figure, read several times. */
  FREE("free", Column.count("run"), Column.number("reading")),
  /** One figure kept over the years. */
  RECORD("record", Column.date("date"), Column.number("hours"), Column.number("reading"));

  private final String word;

  // Made by List.of of records that hold no more than that.
  @SuppressWarnings("ImmutableEnumChecker")
  private final List<Column> columns;

  Kind(String word, Column... columns) {
    this.word = word;
    this.columns = List.of(columns);
  }

  /** Returns the kind as a book writes it. */
  public String word() {
    return word;
  }

  /** Returns the key of the instrument that states its doubt; empty if the trial itself does. */
  public String doubt() {
    return switch (this) {
      case BED -> "slope doubt";
      case SPEEDS -> "time doubt";
      case RUN_IN -> "temperature doubt";
      case FREE, RECORD -> "";
      default -> "doubt";
    };
  }

  /** Returns the columns of its readings, in order. */
  public List<Column> columns() {
    return columns;
  }

  static Kind of(String word) {
    return Arrays.stream(values()).filter(k -> k.word.equals(word)).findFirst().orElseThrow();
  }
}
