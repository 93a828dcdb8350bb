package fettle.desk.pack;

import fettle.sheets.marks.Box;
import fettle.sheets.marks.Lettering;
import fettle.sheets.marks.Mark;
import fettle.sheets.marks.Pen;
import fettle.sheets.marks.Point;
import fettle.sheets.page.Format;
import fettle.sheets.page.Scale;
import fettle.sheets.page.Sheet;
import fettle.sheets.page.TitleBlock;
import fettle.sheets.pdf.Bookmark;
import fettle.sheets.pdf.PdfSheets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A pack, ready to be written.
 *
 * @param source what it is made from
 * @param issue its issue
 * @param issues all its issues, oldest first
 * @param chapters its chapters
 * @param text its text, by which the next issue is held against this one
 */
public record Pack(
    PackSource source, Issue issue, List<Issue> issues, List<Chapter> chapters, String text) {

  private static final double PAGE_NUMBER = 12;

  /** Keeps its own copies. */
  public Pack {
    issues = List.copyOf(issues);
    chapters = List.copyOf(chapters);
  }

  /**
   * Makes the pack of a change.
   *
   * @param source what it is made from
   * @param drawings its drawings
   * @param issues the issues before, oldest first
   * @param last the text of the last issue
   */
  public static Pack of(
      PackSource source,
      List<Chapter.Drawing> drawings,
      List<Issue> issues,
      Optional<String> last) {
    List<Chapter> chapters = chapters(source, drawings);
    String text = PackText.of(chapters);
    boolean same = !issues.isEmpty() && last.isPresent() && last.get().equals(text);
    List<Issue> all = new ArrayList<>(issues);
    if (!same) {
      String note =
          issues.isEmpty()
              ? "First issue"
              : last.map(l -> PackText.difference(l, text)).orElse("The last issue is lost");
      all.add(new Issue(Issue.next(issues), source.heads().date(), note));
    }
    return new Pack(source, all.get(all.size() - 1), all, chapters, text);
  }

  private static List<Chapter> chapters(PackSource source, List<Chapter.Drawing> drawings) {
    List<Chapter> chapters = new ArrayList<>();
    chapters.add(EffectChapter.of(source));
    chapters.add(ListChapters.parts(source));
    chapters.add(ListChapters.buying(source));
    if (!drawings.isEmpty()) {
      chapters.add(new Chapter("Drawings", List.of(), drawings));
    }
    if (!source.parts().isEmpty()) {
      chapters.add(MakingChapter.of(source));
    }
    chapters.add(WorkChapter.of(source));
    chapters.add(SettingsChapter.of(source));
    WiringChapter.of(source).ifPresent(chapters::add);
    chapters.add(CautionChapter.of(source));
    chapters.add(ProofChapter.of(source));
    chapters.add(licence(source));
    return chapters;
  }

  private static Chapter licence(PackSource source) {
    String licence = source.heads().licence();
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Prose("Legal owner: " + source.heads().owner() + "."));
    blocks.add(
        new Block.Prose(
            licence.isEmpty()
                ? "The owner states no licence: all rights stay with the owner. Ask before the pack"
                    + " is passed on or things made by it are sold."
                : "Licence: " + licence));
    return Chapter.of("Licence", blocks);
  }

  /** Tells whether this issue differs from the one before. */
  public boolean fresh(List<Issue> before) {
    return issues.size() > before.size();
  }

  /** Returns the pack as PDF; the same pack gives the same bytes. */
  public byte[] pdf() {
    return new Binding(this).pdf();
  }

  /** Binds the pages: cover, contents, chapters, record of revisions. */
  private static final class Binding {

    private final Pack pack;
    private final List<Sheet> pages = new ArrayList<>();
    private final List<Bookmark> outline = new ArrayList<>();

    Binding(Pack pack) {
      this.pack = pack;
    }

    byte[] pdf() {
      String title = Lines.plain(pack.source.change().title());
      return PdfSheets.of(title, sheets(), outline);
    }

    List<Sheet> sheets() {
      int last = pack.chapters.size() - 1;
      List<Chapter> all = new ArrayList<>(pack.chapters.subList(0, last));
      all.add(record(pack.chapters.get(last).blocks()));
      int contents = Setter.pages(contents(all, List.of())).size();
      List<Integer> starts = new ArrayList<>();
      int next = 1 + contents;
      for (Chapter chapter : all) {
        starts.add(next);
        next += length(chapter);
      }
      bind(all, starts, next);
      return pages;
    }

    private static int length(Chapter chapter) {
      return chapter.drawings().isEmpty()
          ? Setter.pages(chapter).size()
          : chapter.drawings().size();
    }

    private void bind(List<Chapter> all, List<Integer> starts, int count) {
      int drawings = all.stream().mapToInt(c -> c.drawings().size()).sum();
      outline.add(new Bookmark("Cover", 0, Bookmark.Rank.CHAPTER));
      pages.add(sheet(Cover.marks(pack.source, pack.issue, drawings, count)));
      outline.add(new Bookmark("Contents", 1, Bookmark.Rank.CHAPTER));
      text(contents(all, starts), count);
      for (int i = 0; i < all.size(); i++) {
        Chapter chapter = all.get(i);
        outline.add(new Bookmark(chapter.title(), starts.get(i), Bookmark.Rank.CHAPTER));
        if (chapter.drawings().isEmpty()) {
          text(chapter, count);
        }
        for (Chapter.Drawing drawing : chapter.drawings()) {
          String name = drawing.sheet().number() + "  " + drawing.sheet().title();
          outline.add(new Bookmark(Lines.plain(name), pages.size(), Bookmark.Rank.WITHIN));
          pages.add(numbered(drawing, count));
        }
      }
    }

    private void text(Chapter chapter, int count) {
      for (List<Mark> marks : Setter.pages(chapter)) {
        List<Mark> all = new ArrayList<>(marks);
        all.addAll(furniture(pages.size() + 1, count));
        pages.add(sheet(all));
      }
    }

    private Sheet sheet(List<Mark> marks) {
      String key = pack.source.change().key();
      return new Sheet(Format.A4, key, pack.source.change().title(), new Scale(1, 1), marks);
    }

    private List<Mark> furniture(int page, int count) {
      List<Mark> marks = new ArrayList<>();
      double left = Setter.LEFT;
      double right = Setter.RIGHT;
      marks.add(text(Lines.of(pack.source.change().title(), 2.5, 110).get(0), left, 279));
      String lathe = Lines.of(pack.source.after().name(), 2.5, 50).get(0);
      marks.add(text(lathe, right - Lettering.width(lathe, 2.5), 279));
      marks.add(Mark.Stroke.line("pack", Pen.SYMBOL, left, 276.5, right, 276.5));
      marks.add(Mark.Stroke.line("pack", Pen.NARROW, left, 17.5, right, 17.5));
      String issue =
          pack.source.change().key()
              + "  revision "
              + pack.issue.index()
              + "  "
              + pack.issue.date();
      marks.add(text(Lines.of(issue, 2.5, 120).get(0), left, 13));
      String number = page + " of " + count;
      marks.add(text(number, right - Lettering.width(number, 2.5), 13));
      return marks;
    }

    private static Mark text(String words, double x, double y) {
      return new Mark.Text("pack", words, x, y, 2.5, Mark.Reading.FROM_BELOW);
    }

    /** A drawing keeps its sheet; the number of its page stands in the filing margin. */
    private Sheet numbered(Chapter.Drawing drawing, int count) {
      Sheet sheet = drawing.sheet();
      List<Mark> marks = new ArrayList<>(sheet.marks());
      String words =
          pack.source.change().key()
              + "  revision "
              + pack.issue.index()
              + "  page "
              + (pages.size() + 1)
              + " of "
              + count;
      marks.add(
          new Mark.Text("frame", words, PAGE_NUMBER, PAGE_NUMBER, 2.5, Mark.Reading.FROM_RIGHT));
      if (drawing.news() == Chapter.News.CHANGED) {
        marks.addAll(triangle(sheet.format(), drawing.revision()));
      }
      return new Sheet(sheet.format(), sheet.number(), sheet.title(), sheet.scale(), marks);
    }

    /** The mark of a changed drawing: its revision in a triangle, beside the title block. */
    private static List<Mark> triangle(Format format, String revision) {
      Box block = TitleBlock.place(format);
      boolean beside = block.x0() - format.space().x0() > 14;
      double x = beside ? block.x0() - 8 : format.space().x0() - 9;
      double y = block.y0() + (beside ? 3 : 60);
      double side = 10;
      double high = side * Math.sqrt(3) / 2;
      return List.of(
          new Mark.Stroke(
              "frame",
              Pen.SYMBOL,
              List.of(
                  new Point(x - side / 2, y),
                  new Point(x + side / 2, y),
                  new Point(x, y + high),
                  new Point(x - side / 2, y))),
          new Mark.Text(
              "frame",
              revision,
              x - Lettering.width(revision, 3.5) / 2,
              y + 1.6,
              3.5,
              Mark.Reading.FROM_BELOW));
    }

    /** Contents; without pages while they are not known, which takes the same room. */
    private static Chapter contents(List<Chapter> all, List<Integer> starts) {
      List<List<String>> rows = new ArrayList<>();
      for (int i = 0; i < all.size(); i++) {
        int start = starts.isEmpty() ? 0 : starts.get(i);
        rows.add(List.of(all.get(i).title(), "", "", String.valueOf(start + 1)));
        for (int d = 0; d < all.get(i).drawings().size(); d++) {
          Chapter.Drawing drawing = all.get(i).drawings().get(d);
          String changed = drawing.news() == Chapter.News.CHANGED ? ", changed" : "";
          rows.add(
              List.of(
                  "· " + drawing.sheet().title(),
                  drawing.sheet().number(),
                  drawing.sheet().format() + "  rev " + drawing.revision() + changed,
                  String.valueOf(start + d + 1)));
        }
      }
      return Chapter.of(
          "Contents",
          List.of(
              new Block.Grid(
                  List.of(
                      Block.Column.left("", 76),
                      Block.Column.left("drawing", 38),
                      Block.Column.left("sheet", 40),
                      Block.Column.right("page", 16)),
                  rows)));
    }

    private Chapter record(List<Block> licence) {
      List<List<String>> rows = new ArrayList<>();
      pack.issues.forEach(i -> rows.add(List.of(i.index(), i.date(), i.note())));
      List<Block> blocks = new ArrayList<>();
      blocks.add(
          new Block.Grid(
              List.of(
                  Block.Column.left("revision", 20),
                  Block.Column.left("date", 28),
                  Block.Column.left("what changed", 122)),
              rows));
      blocks.add(
          new Block.Prose(
              "A drawing that changed carries its revision in a triangle beside its title block. A"
                  + " pack of an older revision is out of use."));
      blocks.add(new Block.Heading("Licence"));
      blocks.addAll(licence);
      return Chapter.of("Record of revisions, licence", blocks);
    }
  }

  /** Returns the pages, to be looked over. */
  List<Sheet> sheets() {
    return new Binding(this).sheets();
  }
}
