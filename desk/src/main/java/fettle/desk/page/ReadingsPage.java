package fettle.desk.page;

import java.util.List;

/**
 * Taking readings at the bench.
 *
 * @param frame what frames it
 * @param name the trial
 * @param what what is tested
 * @param file the file the readings stand in
 * @param mark mark of that file as this page shows it
 * @param line line of the file that is asked for; 0 if nothing is missing
 * @param place where to take the reading: column and value
 * @param asked what is read, with its unit
 * @param stands the reading that stands there; empty if there is none
 * @param done readings taken
 * @param all readings planned
 * @param last the readings taken last
 * @param more true if another run can be planned
 * @param trial where the trial opens
 */
public record ReadingsPage(
    Shell frame,
    String name,
    String what,
    String file,
    String mark,
    int line,
    List<Cell> place,
    String asked,
    String stands,
    int done,
    int all,
    List<Taken> last,
    boolean more,
    String trial) {

  /** A column and what it holds. */
  public record Cell(String head, String value) {}

  /** A reading taken: where, what, and where to take it again. */
  public record Taken(String place, String reading, String href) {}
}
