package fettle.desk.page;

/**
 * A figure with its working, both on the page.
 *
 * @param id where it stands on the page
 * @param cell the figure
 * @param formula the formula in symbols; empty if it is held back or there is none
 * @param numbers the formula with the numbers put in
 * @param source where the formula comes from
 */
public record Worked(String id, Cell cell, String formula, String numbers, String source) {}
