package fettle.desk.fuzz;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Makes inputs for a target for a while, guided by which lines of the program they reach, in a
 * process of its own.
 *
 * @param target where the inputs go
 * @param inputs how many there were
 * @param fault what the fuzzer said of a fault; empty if it found none
 */
record FuzzRun(Target target, long inputs, String fault) {

  private static final Pattern COUNT = Pattern.compile("stat::number_of_executed_units: (\\d+)");
  private static final Pattern STEP = Pattern.compile("#(\\d+)\\s.*");
  private static final Path KEPT = Path.of("src/test/resources/fettle/desk/fuzz");
  private static final int LONGEST_INPUT = 20_000;
  private static final int MOST_SECONDS_AN_INPUT = 60;

  /** Fuzzes the targets named after the seconds for each; all if none is named. */
  public static void main(String[] args) throws IOException, InterruptedException {
    List<Target> targets = new ArrayList<>(List.of(Target.values()));
    if (args.length > 1) {
      targets.removeIf(t -> !List.of(args).contains(t.word()));
    }
    for (Target target : targets) {
      FuzzRun run = of(target, Integer.parseInt(args[0]), Path.of("..", "out", "fuzz"));
      System.out.println(
          target.word() + ": " + run.inputs + " inputs in " + args[0] + " s" + run.fault);
    }
  }

  /** Fuzzes one target; what reached new lines is kept in a folder for the next time. */
  static FuzzRun of(Target target, int seconds, Path out) throws IOException, InterruptedException {
    Path grown = Files.createDirectories(out.resolve(target.word()).resolve("grown"));
    Path seeds = Files.createDirectories(out.resolve(target.word()).resolve("seeds"));
    int number = 0;
    for (byte[] seed : Seeds.of(target)) {
      Files.write(seeds.resolve("seed-" + number++), seed);
    }
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Xmx700m", "-Djava.awt.headless=true", "-XX:+UseSerialGC"));
    command.addAll(List.of("-cp", OwnClasses.path()));
    command.add("com.code_intelligence.jazzer.Jazzer");
    command.add("--target_class=" + target.entry().getName());
    command.add("--instrumentation_includes=fettle.**");
    command.add("--custom_hook_includes=fettle.**");
    command.add(
        "--disabled_hooks=com.code_intelligence.jazzer.sanitizers.ServerSideRequestForgery");
    command.add("--reproducer_path=" + out.resolve(target.word()));
    command.add("-artifact_prefix=" + out.resolve(target.word()) + "/");
    command.add("-max_total_time=" + seconds);
    command.add("-timeout=" + MOST_SECONDS_AN_INPUT);
    command.add("-rss_limit_mb=2500");
    command.add("-max_len=" + LONGEST_INPUT);
    command.add("-print_final_stats=1");
    command.add(grown.toString());
    command.add(seeds.toString());
    if (!kept(target).isEmpty()) {
      command.add(KEPT.resolve(target.word()).toString());
    }
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    return heard(target, process);
  }

  private static FuzzRun heard(Target target, Process process)
      throws IOException, InterruptedException {
    long inputs = 0;
    StringBuilder fault = new StringBuilder();
    try (BufferedReader lines =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        for (Pattern pattern : List.of(COUNT, STEP)) {
          Matcher counted = pattern.matcher(line);
          if (counted.matches()) {
            inputs = Math.max(inputs, Long.parseLong(counted.group(1)));
          }
        }
        boolean told = line.startsWith("==") || !fault.isEmpty();
        if (told && fault.length() < 6_000) {
          fault.append('\n').append(line);
        }
      }
    }
    int status = process.waitFor();
    return new FuzzRun(target, inputs, status == 0 ? "" : "\nends with " + status + fault);
  }

  /** Returns the inputs that are kept for a target. */
  static List<Path> kept(Target target) throws IOException {
    Path folder = KEPT.resolve(target.word());
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    }
  }
}
