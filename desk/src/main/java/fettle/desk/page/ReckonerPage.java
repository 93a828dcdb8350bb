package fettle.desk.page;

import java.util.List;

/**
 * One reckoner.
 *
 * @param frame what frames it
 * @param topic its name
 * @param title what it computes
 * @param picture key of its explaining picture; empty if there is none
 * @param fields its inputs
 * @param answer what it answers
 * @param link address that brings back these inputs
 * @param command the same on the command line
 * @param source where its formula comes from
 */
public record ReckonerPage(
    Shell frame,
    String topic,
    String title,
    String picture,
    List<Field> fields,
    Result answer,
    String link,
    String command,
    String source) {

  /** One input. */
  public record Field(
      String name,
      String unit,
      String meaning,
      String typed,
      String standard,
      boolean required,
      boolean wide,
      List<String> choices) {}

  /** The answer: values, workings, cautions; or what is missing or wrong. */
  public record Result(
      List<Line> lines, List<String> workings, List<String> cautions, String wrong, String waits) {}

  /** One value of the answer. */
  public record Line(String name, String meaning, List<String> values, String unit) {}

  /** All reckoners by group. */
  public record Index(Shell frame, List<Group> groups) {}

  /** Reckoners of one chapter. */
  public record Group(String title, List<Shell.Link> links) {}
}
