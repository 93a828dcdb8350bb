package fettle.desk.web;

import fettle.desk.page.HistoryPage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.eclipse.jgit.diff.Edit;
import org.eclipse.jgit.diff.EditList;
import org.eclipse.jgit.diff.HistogramDiff;
import org.eclipse.jgit.diff.RawText;
import org.eclipse.jgit.diff.RawTextComparator;

/** The saved versions, and what each differs in from the book as it is. */
final class HistoryRoom {

  private HistoryRoom() {}

  static HistoryPage page(Visit visit, History history) {
    List<History.Version> versions = history.versions();
    String wanted = visit.asked("version");
    List<HistoryPage.Difference> differences =
        wanted.isEmpty()
            ? List.of()
            : differences(visit.opened().files().texts(), history.texts(wanted));
    return new HistoryPage(
        visit.plain("history", ""),
        versions.stream()
            .map(
                v ->
                    new HistoryPage.Line(
                        v.id(),
                        v.when(),
                        v.what(),
                        "/history?version=" + v.id(),
                        v.id().equals(wanted)))
            .toList(),
        wanted,
        differences);
  }

  /** Returns what the second texts differ in from the first, file by file. */
  static List<HistoryPage.Difference> differences(
      Map<String, String> now, Map<String, String> then) {
    TreeSet<String> names = new TreeSet<>(now.keySet());
    names.addAll(then.keySet());
    List<HistoryPage.Difference> differences = new ArrayList<>();
    for (String name : names) {
      String a = now.getOrDefault(name, "");
      String b = then.getOrDefault(name, "");
      if (!a.equals(b)) {
        differences.add(new HistoryPage.Difference(name, rows(a, b)));
      }
    }
    return differences;
  }

  private static List<HistoryPage.Row> rows(String now, String then) {
    RawText a = new RawText(now.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    RawText b = new RawText(then.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    EditList edits = new HistogramDiff().diff(RawTextComparator.DEFAULT, a, b);
    List<HistoryPage.Row> rows = new ArrayList<>();
    for (Edit edit : edits) {
      rows.add(new HistoryPage.Row("@", "line " + (edit.getBeginA() + 1)));
      for (int i = edit.getBeginA(); i < edit.getEndA(); i++) {
        rows.add(new HistoryPage.Row("−", a.getString(i)));
      }
      for (int i = edit.getBeginB(); i < edit.getEndB(); i++) {
        rows.add(new HistoryPage.Row("+", b.getString(i)));
      }
    }
    return rows;
  }
}
