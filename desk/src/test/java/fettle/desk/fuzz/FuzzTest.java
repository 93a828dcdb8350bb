package fettle.desk.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Inputs that once were faults, and sound ones, are taken in; new ones are made for as many seconds
 * as {@code fettle.fuzz.seconds} says, none if it says nothing.
 */
final class FuzzTest {

  private static final int SECONDS = Integer.getInteger("fettle.fuzz.seconds", 0);
  private static final List<String> TARGETS =
      List.of(System.getProperty("fettle.fuzz.targets", "").split(",", -1));

  @ParameterizedTest
  @EnumSource(Target.class)
  void keptInputsAreTakenIn(Target target) throws Exception {
    for (Path kept : FuzzRun.kept(target)) {
      target.take(Files.readAllBytes(kept));
    }
    List<byte[]> seeds = Seeds.of(target);
    assertThat(seeds).isNotEmpty();
    for (int i = 0; i < seeds.size(); i += 1 + seeds.size() / 20) {
      target.take(seeds.get(i));
    }
  }

  @ParameterizedTest
  @EnumSource(Target.class)
  void newInputsAreTakenIn(Target target) throws IOException, InterruptedException {
    boolean wanted = TARGETS.contains("") || TARGETS.contains(target.word());
    assumeTrue(SECONDS > 0 && wanted, "-Dfettle.fuzz.seconds=N fuzzes every target for N seconds");
    FuzzRun run = FuzzRun.of(target, SECONDS, Path.of("..", "out", "fuzz"));
    System.out.println("fuzzed " + target.word() + ": " + run.inputs() + " inputs");
    assertThat(run.fault()).as(target.word()).isEmpty();
    assertThat(run.inputs()).as(target.word()).isPositive();
  }
}
