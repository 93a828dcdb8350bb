package fettle.machine.state;

import fettle.machine.dictionary.Values;
import fettle.machine.text.Node;
import java.util.List;

/**
 * A planned or finished alteration of the lathe.
 *
 * @param key its file name without ending
 * @param title what is changed
 * @param stage how far it has come
 * @param needs changes that must come first
 * @param differs what differs in the lathe's text, a merge patch
 * @param values everything its file says
 */
public record Change(
    String key, String title, Stage stage, List<String> needs, Node differs, Values values) {

  static Change of(String key, Values values) {
    return new Change(
        key,
        values.needText("title"),
        Stage.valueOf(values.needText("stage").toUpperCase(java.util.Locale.ROOT)),
        values.texts("needs"),
        values.tree("differs").orElseThrow(),
        values);
  }
}
