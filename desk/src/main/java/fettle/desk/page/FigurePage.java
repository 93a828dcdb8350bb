package fettle.desk.page;

import java.util.List;

/**
 * A number opened.
 *
 * @param frame what frames it
 * @param cell the figure
 * @param formula the formula in symbols
 * @param numbers the formula with the numbers put in
 * @param result the result
 * @param inputs what goes in
 * @param source where the formula comes from
 * @param findings findings that speak of it
 * @param whatIf where its values can be dragged
 */
public record FigurePage(
    Shell frame,
    Cell cell,
    String formula,
    String numbers,
    String result,
    List<Input> inputs,
    String source,
    List<LathePage.Opening> findings,
    List<Shell.Link> whatIf) {

  /**
   * One input of a figure.
   *
   * @param symbol its letter in the formula
   * @param value its value
   * @param share its part in the doubt of the result
   * @param effect what becomes of the figure if it is raised a little
   * @param places where it stands in the book
   */
  public record Input(
      String symbol, String value, String share, String effect, List<Shell.Link> places) {}
}
