package fettle.desk.cli;

import gg.jte.TemplateOutput;
import gg.jte.html.HtmlTemplateOutput;
import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;
import java.util.function.Consumer;

/** Writes files whole or not at all. */
final class Pages {

  private Pages() {}

  /** Returns a file within a folder; a name that leads out of it is refused. */
  static Path within(Path folder, String name) {
    Path root = folder.toAbsolutePath().normalize();
    Path file = root.resolve(name).normalize();
    if (!file.startsWith(root) || file.equals(root)) {
      throw Failure.input("'" + name + "' leads out of the folder " + folder);
    }
    return file;
  }

  static void write(Path file, Consumer<HtmlTemplateOutput> template) {
    TemplateOutput text = new StringOutput();
    template.accept(new OwaspHtmlTemplateOutput(text));
    write(file, text.toString());
  }

  static void write(Path file, String text) {
    write(file, text.getBytes(StandardCharsets.UTF_8));
  }

  static void write(Path file, byte[] bytes) {
    try {
      Path folder = file.toAbsolutePath().getParent();
      if (folder != null) {
        Files.createDirectories(folder);
      }
      Path fresh = file.resolveSibling(".fettle-" + UUID.randomUUID() + ".part");
      try {
        Files.write(fresh, bytes, StandardOpenOption.CREATE_NEW);
        move(fresh, file);
      } finally {
        Files.deleteIfExists(fresh);
      }
    } catch (IOException e) {
      throw Failure.notComputed("cannot write " + file + ": " + e.getMessage());
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
