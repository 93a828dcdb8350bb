package fettle.machine.text;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The texts of a book's folder: {@code machine.yaml}, {@code shop.yaml}, {@code changes/*.yaml},
 * {@code parts/*.yaml}, {@code trials/*.yaml} and {@code trials/*.csv}.
 *
 * @param texts text of each file, by its path within the book with forward slashes
 */
public record BookFiles(Map<String, String> texts) {

  private static final long LARGEST = 4_000_000;
  private static final int LONGEST_NAME = 255;
  private static final int MOST_FILES = 400;

  /** Keeps its own copy, in the order of the paths. */
  public BookFiles {
    texts = java.util.Collections.unmodifiableMap(new TreeMap<>(texts));
  }

  /** Reads the texts of a folder. */
  public static Parsed<BookFiles> read(Path folder) {
    List<Problem> problems = new ArrayList<>();
    Map<String, String> texts = new TreeMap<>();
    if (!Files.isDirectory(folder)) {
      return Parsed.bad(
          List.of(
              new Problem(
                  Place.file(shown(folder)),
                  "",
                  "no such folder",
                  "the folder of a book, with a file machine.yaml in it",
                  "Start one with 'fettle new FOLDER'.")));
    }
    take(folder, "machine.yaml", texts, problems);
    if (!texts.containsKey("machine.yaml") && problems.isEmpty()) {
      problems.add(
          new Problem(
              Place.file("machine.yaml"),
              "",
              "no such file in " + shown(folder),
              "the description of the lathe",
              "Start a book with 'fettle new FOLDER'."));
    }
    take(folder, "shop.yaml", texts, problems);
    takeAll(folder, "changes", "*.yaml", texts, problems);
    takeAll(folder, "parts", "*.yaml", texts, problems);
    takeAll(folder, "trials", "*.{yaml,csv}", texts, problems);
    return problems.isEmpty() ? Parsed.good(new BookFiles(texts)) : new Parsed<>(null, problems);
  }

  private static void takeAll(
      Path folder, String sub, String glob, Map<String, String> texts, List<Problem> problems) {
    Path inner = folder.resolve(sub);
    if (Files.isDirectory(inner, LinkOption.NOFOLLOW_LINKS)) {
      for (String name : names(inner, sub, glob, problems)) {
        take(folder, sub + "/" + name, texts, problems);
      }
    }
  }

  private static List<String> names(Path inner, String sub, String glob, List<Problem> problems) {
    List<String> names = new ArrayList<>();
    try (DirectoryStream<Path> files = Files.newDirectoryStream(inner, glob)) {
      for (Path file : files) {
        if (names.size() < MOST_FILES) {
          names.add(shown(file));
        } else {
          problems.add(
              new Problem(
                  Place.file(sub),
                  "",
                  "more than " + MOST_FILES + " files",
                  "at most " + MOST_FILES,
                  ""));
          break;
        }
      }
    } catch (IOException e) {
      problems.add(unreadable(sub, e));
    }
    names.sort(null);
    return names;
  }

  private static void take(
      Path folder, String name, Map<String, String> texts, List<Problem> problems) {
    Path file = folder.resolve(name);
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    try {
      if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
        problems.add(
            new Problem(Place.file(name), "", "a link or a folder", "an ordinary file", ""));
      } else if (Files.size(file) > LARGEST) {
        problems.add(
            new Problem(
                Place.file(name), "", Files.size(file) + " bytes", "at most " + LARGEST, ""));
      } else {
        decode(name, Files.readAllBytes(file), texts, problems);
      }
    } catch (IOException e) {
      problems.add(unreadable(name, e));
    }
  }

  private static void decode(
      String name, byte[] bytes, Map<String, String> texts, List<Problem> problems) {
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = StandardCharsets.UTF_8.newDecoder().decode(in, out, true);
    if (result.isError()) {
      problems.add(
          new Problem(
              place(name, out.flip().toString()),
              "",
              "bytes that are no UTF-8 text",
              "plain UTF-8 text",
              "Save the file as UTF-8."));
    } else {
      texts.put(name, out.flip().toString());
    }
  }

  /** Returns the place behind a text. */
  private static Place place(String name, String before) {
    int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
    return new Place(name, line, before.length() - before.lastIndexOf('\n'));
  }

  private static Problem unreadable(String name, IOException e) {
    return new Problem(
        Place.file(name),
        "",
        "a file that cannot be read (" + e.getClass().getSimpleName() + ")",
        "a readable file",
        "Look at its permissions.");
  }

  private static String shown(Path path) {
    Path name = path.getFileName();
    String text = name == null ? path.toString() : name.toString();
    return text.length() > LONGEST_NAME ? text.substring(0, LONGEST_NAME) + "…" : text;
  }
}
