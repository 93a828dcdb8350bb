package fettle.desk.page;

import java.util.List;

/**
 * One or several values being changed.
 *
 * @param frame what frames it
 * @param title what they belong to
 * @param single true if one value of the book is edited; false for a what-if of several
 * @param fields the values
 * @param joint what follows
 * @param problems what is wrong with what was typed
 * @param notice what happened last; empty if nothing did
 * @param suggestion name proposed for a new change
 * @param leftOut other values the same block could have
 */
public record ValuePage(
    Shell frame,
    String title,
    boolean single,
    List<Field> fields,
    @org.jspecify.annotations.Nullable JointPage joint,
    List<String> problems,
    String notice,
    String suggestion,
    List<MemberPage.ValueLine> leftOut) {

  /**
   * One value.
   *
   * @param name its name in the form
   * @param file file it stands in
   * @param path its path there
   * @param label what it is called
   * @param text what stands there now
   * @param typed what is in the field
   * @param meaning what the dictionary says
   * @param expects unit and bounds
   * @param stands what holds now, and where it is written
   * @param mark mark of the file's text
   * @param words words to choose from; empty for free text
   * @param slide a slider beside it; null if it is no number
   */
  public record Field(
      String name,
      String file,
      String path,
      String label,
      String text,
      String typed,
      String meaning,
      String expects,
      String stands,
      String mark,
      List<String> words,
      @org.jspecify.annotations.Nullable Slide slide) {}

  /**
   * A slider over a number; {@code pattern} is the text with a hash where the number goes.
   *
   * @param low least
   * @param high greatest
   * @param step step
   * @param at where it is
   * @param pattern text with {@code #} in the number's place
   */
  public record Slide(String low, String high, String step, String at, String pattern) {}
}
