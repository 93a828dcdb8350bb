package fettle.desk.web;

import fettle.desk.fuzz.OwnClasses;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;

/** A desk in a process of its own, so that it can be killed or kept from writing. */
final class DeskProcess implements AutoCloseable {

  private final Process process;
  private final String address;

  private DeskProcess(Process process) throws IOException {
    this.process = process;
    this.address = address(process);
  }

  /**
   * How desks are started: quickly, from one archive of their classes that all share.
   *
   * @param options what stands between the name of the program and the name of its class
   */
  record Starter(List<String> options) {

    /** Returns a starter without a shared archive, for a test that opens one or two desks. */
    static Starter plain() {
      return new Starter(options(OwnClasses.path()));
    }

    /** Returns a starter whose desks share one archive, made in a folder by opening a book once. */
    static Starter shared(Path folder, Path book) throws IOException, InterruptedException {
      List<String> options = new ArrayList<>(options(packed(folder)));
      Path names = folder.resolve("desk.classes");
      Path archive = folder.resolve("desk.jsa");
      List<String> listing = new ArrayList<>(options);
      listing.add("-XX:DumpLoadedClassList=" + names);
      try (DeskProcess first = new Starter(listing).open(book)) {
        Load load = new Load(first.address(), new Load.Account());
        load.get("/history");
        load.get(OpenDesk.valueAt("machine.yaml", "members.saddle.mass"));
      }
      // A Java 17 that is to keep the classes of lambdas of signed archives, too, dies of it.
      Files.write(
          names, Files.readAllLines(names).stream().filter(l -> !l.startsWith("@")).toList());
      options.add("-XX:SharedArchiveFile=" + archive);
      List<String> dump = new ArrayList<>(List.of(java(), "-Xshare:dump"));
      dump.add("-XX:SharedClassListFile=" + names);
      dump.addAll(options);
      new ProcessBuilder(dump)
          .redirectErrorStream(true)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .start()
          .waitFor();
      return new Starter(List.copyOf(options));
    }

    /** Opens a book. */
    DeskProcess open(Path book) throws IOException {
      return open(book, List.of());
    }

    /** Opens a book by way of another command, such as one that sets a limit first. */
    DeskProcess open(Path book, List<String> before) throws IOException {
      List<String> command = new ArrayList<>(before);
      command.add(java());
      command.addAll(options);
      command.addAll(
          List.of("fettle.desk.cli.Main", "desk", book.toString(), "--port", "0", "--no-browser"));
      return new DeskProcess(
          new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start());
    }

    private static String java() {
      return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    private static List<String> options(String classes) {
      return List.of(
          "-XX:TieredStopAtLevel=1",
          "-XX:+UseSerialGC",
          "-XX:-UsePerfData",
          "-Xlog:disable",
          "-Xmx256m",
          "-cp",
          classes);
    }

    /** Packs folders of classes into archives, because only those can be shared. */
    private static String packed(Path folder) throws IOException {
      List<String> packed = new ArrayList<>();
      for (String entry : OwnClasses.path().split(File.pathSeparator)) {
        Path path = Path.of(entry);
        if (Files.isDirectory(path)) {
          Path jar = folder.resolve("classes-" + packed.size() + ".jar");
          pack(path, jar);
          packed.add(jar.toString());
        } else if (Files.exists(path)) {
          packed.add(entry);
        }
      }
      return String.join(File.pathSeparator, packed);
    }

    private static void pack(Path from, Path to) throws IOException {
      try (OutputStream out = Files.newOutputStream(to);
          JarOutputStream jar = new JarOutputStream(out);
          Stream<Path> files = Files.walk(from)) {
        for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
          jar.putNextEntry(new JarEntry(from.relativize(file).toString().replace('\\', '/')));
          Files.copy(file, jar);
          jar.closeEntry();
        }
      }
    }
  }

  String address() {
    return address;
  }

  /** Kills the desk at once; it can neither finish nor tidy up. */
  void kill() {
    process.destroyForcibly();
    try {
      process.waitFor();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  public void close() {
    kill();
  }

  private static String address(Process desk) throws IOException {
    BufferedReader out =
        new BufferedReader(new InputStreamReader(desk.getInputStream(), StandardCharsets.UTF_8));
    for (String line = out.readLine(); line != null; line = out.readLine()) {
      if (line.startsWith("http://")) {
        return line.strip();
      }
    }
    throw new UncheckedIOException(new IOException("the desk did not open"));
  }
}
