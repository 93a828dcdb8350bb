package fettle.desk.page;

/**
 * One page of the guide.
 *
 * @param frame what frames it
 * @param text its text as HTML, made from our own documents
 * @param first true if it is the guide's first page
 */
public record GuidePage(Shell frame, String text, boolean first) {}
