package fettle.desk.pack;

import fettle.sheets.page.Sheet;
import java.util.List;

/**
 * A chapter of a pack: text, or drawings.
 *
 * @param title its title
 * @param blocks its text
 * @param drawings its drawings, each on a page of its own
 */
public record Chapter(String title, List<Block> blocks, List<Drawing> drawings) {

  /**
   * A drawing of the pack.
   *
   * @param sheet the sheet
   * @param revision its revision index
   * @param date when that revision was issued
   * @param news whether it differs from the last pack
   */
  public record Drawing(Sheet sheet, String revision, String date, News news) {}

  /** Whether a drawing differs from the last pack. */
  public enum News {
    SAME,
    CHANGED
  }

  /** Keeps its own copies. */
  public Chapter {
    blocks = List.copyOf(blocks);
    drawings = List.copyOf(drawings);
  }

  static Chapter of(String title, List<Block> blocks) {
    return new Chapter(title, blocks, List.of());
  }
}
