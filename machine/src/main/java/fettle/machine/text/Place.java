package fettle.machine.text;

/**
 * Where something stands in the owner's files.
 *
 * @param file file, relative to the book
 * @param line line, from 1; 0 for the file as a whole
 * @param column column, from 1; 0 for the line as a whole
 */
public record Place(String file, int line, int column) {

  /** Returns the file as a whole. */
  public static Place file(String file) {
    return new Place(file, 0, 0);
  }

  /** Returns {@code file:line:column}. */
  public String text() {
    return line == 0 ? file : file + ":" + line + ":" + column;
  }
}
