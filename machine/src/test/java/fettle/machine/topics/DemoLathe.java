package fettle.machine.topics;

import fettle.machine.lathe.Machine;
import fettle.machine.state.Book;
import fettle.machine.state.State;
import fettle.machine.text.BookFiles;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The demo book, with and without changes, and books altered by a word. */
final class DemoLathe {

  private DemoLathe() {}

  static Machine with(String... changes) {
    return with(text -> text, changes);
  }

  static Machine with(java.util.function.UnaryOperator<String> edit, String... changes) {
    BookFiles files =
        BookFiles.read(Path.of("..", "examples", "dunlin-85"))
            .orThrow(() -> new IllegalStateException("the demo cannot be read"));
    java.util.Map<String, String> texts = new java.util.LinkedHashMap<>(files.texts());
    texts.computeIfPresent("machine.yaml", (name, text) -> edit.apply(text));
    Book book =
        Book.checked(new BookFiles(texts))
            .orThrow(() -> new IllegalStateException("no book: " + texts));
    State state = State.of(book, "", List.of(changes));
    return state.machine().orElseThrow(() -> new AssertionError("no lathe: " + state.problems()));
  }

  static Study study(Topic topic, Machine machine) {
    return topic.study(machine, Optional.empty());
  }

  static fettle.mechanics.base.Working figure(Topic topic, Machine machine, String id) {
    return study(topic, machine).figures().stream()
        .filter(f -> f.id().equals(topic.name() + "/" + id))
        .findFirst()
        .flatMap(Figure::working)
        .orElseThrow(() -> new AssertionError("no figure " + id));
  }
}
