package fettle.parts.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fettle.parts.Samples;
import fettle.parts.recipe.Bore;
import fettle.parts.recipe.Heading;
import fettle.parts.recipe.Recipe;
import fettle.parts.recipe.Step;
import fettle.parts.recipe.Turned;
import fettle.parts.solid.Bodies;
import fettle.parts.solid.Brep;
import fettle.parts.solid.Mesh;
import fettle.parts.solid.Moments;
import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Files are read back: by a plain reader here, and by a geometry kernel where there is one. */
class ExchangeTest {

  private static final StepFile.Label LABEL =
      new StepFile.Label("DL-001", "Stößel 'A'", "B", "2026-01-01T00:00:00");

  private static String step(Recipe recipe) {
    return StepFile.of(Brep.of(Bodies.of(recipe)), LABEL, StepFile.Protocol.AP214);
  }

  @Test
  void semiAngleOfASixtyDegreeCentre() {
    double length = 20 / Math.tan(Math.PI / 6);
    Recipe centre =
        new Turned(
            Heading.of("centre", "Centre", "C45", 7.85e-9),
            List.of(Step.taper("point", 0, 40, length), Step.cylinder("shank", 40, 30)),
            Bore.NONE,
            Bore.NONE,
            List.of());
    Matcher cone =
        Pattern.compile("CONICAL_SURFACE\\('[^']*',#[0-9]+,[^,]+,([^)]+)\\)").matcher(step(centre));
    assertThat(cone.find()).isTrue();
    // DP-ST-09
    assertThat(Double.parseDouble(cone.group(1))).isCloseTo(0.523598776, within(1e-8));
  }

  @TestFactory
  Stream<DynamicTest> everyReferenceExistsAndEveryEdgeIsUsedTwiceOppositely() {
    return Samples.all().entrySet().stream()
        .map(e -> DynamicTest.dynamicTest(e.getKey(), () -> wellFormed(step(e.getValue()))));
  }

  private static void wellFormed(String file) {
    assertThat(file).startsWith("ISO-10303-21;").endsWith("END-ISO-10303-21;\n");
    assertThat(file).contains("SI_UNIT(.MILLI.,.METRE.)").contains("St\\X2\\00F6\\X0\\");
    Matcher entities = Pattern.compile("(?m)^#(\\d+)=(.*);$").matcher(file);
    TreeSet<Integer> defined = new TreeSet<>();
    List<Integer> asked = new ArrayList<>();
    List<String> uses = new ArrayList<>();
    while (entities.find()) {
      defined.add(Integer.parseInt(entities.group(1)));
      String text = entities.group(2).replaceAll("'[^']*'", "''");
      Matcher references = Pattern.compile("#(\\d+)").matcher(text);
      while (references.find()) {
        asked.add(Integer.parseInt(references.group(1)));
      }
      Matcher use =
          Pattern.compile("ORIENTED_EDGE\\(''(?:,\\*){2},(#\\d+),(\\.[TF]\\.)\\)").matcher(text);
      if (use.matches()) {
        uses.add(use.group(1) + use.group(2));
      }
      assertThat(text).doesNotContain("NaN").doesNotContain("Infinity");
    }
    assertThat(defined).containsAll(asked);
    assertThat(uses).doesNotHaveDuplicates().isNotEmpty();
    for (String use : uses) {
      String other = use.endsWith(".T.") ? use.replace(".T.", ".F.") : use.replace(".F.", ".T.");
      assertThat(uses).contains(other);
    }
  }

  @Test
  void aConeOfSixtyDegreesIsWrittenWithHalfItsAngleInRadians() {
    String file = step(Samples.of("centre"));
    Matcher cone = Pattern.compile("CONICAL_SURFACE\\('',#\\d+,[^,]+,([^)]+)\\)").matcher(file);
    assertThat(cone.find()).isTrue();
    assertThat(Double.parseDouble(cone.group(1))).isCloseTo(0.523598776, within(1e-8));
  }

  @Test
  void bothFilesHaveTheSameBytesEachTime() {
    Recipe recipe = Samples.of("bearing block");
    assertThat(step(recipe)).isEqualTo(step(recipe));
    Mesh mesh = Mesh.of(Brep.of(Bodies.of(recipe)), 0.05);
    assertThat(ThreeMfFile.of(mesh, "block")).isEqualTo(ThreeMfFile.of(mesh, "block"));
  }

  @Test
  void threeMfHoldsTheModelAndItsRelations() throws IOException {
    Mesh mesh = Mesh.of(Brep.of(Bodies.of(Samples.of("bush"))), 0.1);
    List<String> names = new ArrayList<>();
    String model = "";
    try (ZipInputStream zip =
        new ZipInputStream(new ByteArrayInputStream(ThreeMfFile.of(mesh, "a < b & c")))) {
      for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
        names.add(e.getName());
        model = new String(zip.readAllBytes(), StandardCharsets.UTF_8);
      }
    }
    assertThat(names).containsExactly("[Content_Types].xml", "_rels/.rels", "3D/3dmodel.model");
    assertThat(model).contains("unit=\"millimeter\"").contains("a &lt; b &amp; c");
    assertThat(model.split("<triangle ", -1)).hasSize(mesh.triangles().size() + 1);
  }

  @TempDir static Path folder;

  /** Returns the kernel's command interpreter if it is on the search path. */
  private static @Nullable Path kernel() {
    for (String place : System.getenv("PATH").split(File.pathSeparator, -1)) {
      Path found = Path.of(place).resolve("occt-draw-7.6");
      if (Files.isExecutable(found)) {
        return found;
      }
    }
    return null;
  }

  private static String run(String... command) throws IOException {
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    try (InputStream output = process.getInputStream()) {
      return new String(output.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** Runs where the system has a general-purpose geometry kernel that reads such files. */
  @Test
  void anIndependentKernelFindsValidSolidsOfTheSameVolume() throws Exception {
    Path kernel = kernel();
    Assumptions.assumeTrue(kernel != null, "no geometry kernel installed");
    Path libraries = Files.createDirectories(Path.of("target", "kernel")).toAbsolutePath();
    Matcher m = Pattern.compile("(libTK\\w+\\.so)\\.7 .*=> (\\S+)").matcher(run("ldconfig", "-p"));
    while (m.find()) {
      if (!Files.exists(libraries.resolve(m.group(1)))) {
        Files.createSymbolicLink(libraries.resolve(m.group(1)), Path.of(m.group(2)));
      }
    }
    StringBuilder script = new StringBuilder("pload MODELING XSDRAW\n");
    List<Map.Entry<String, Recipe>> samples = List.copyOf(Samples.all().entrySet());
    for (int i = 0; i < samples.size(); i++) {
      Files.writeString(folder.resolve("p" + i + ".step"), step(samples.get(i).getValue()));
      script.append("stepread p" + i + ".step s" + i + " *\n");
      script.append("puts \"== " + i + "\"\nputs [checkshape s" + i + "_1]\n");
      script.append("puts [vprops s" + i + "_1 1.e-10 -full]\n");
    }
    Files.writeString(folder.resolve("all.tcl"), script + "exit\n");
    ProcessBuilder builder =
        new ProcessBuilder(Objects.requireNonNull(kernel).toString(), "-b", "-f", "all.tcl")
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("log").toFile());
    builder.environment().put("LD_LIBRARY_PATH", libraries.toString());
    Process process = builder.start();
    assertThat(process.waitFor(240, TimeUnit.SECONDS)).isTrue();
    String[] answers =
        Files.readString(folder.resolve("log"), StandardCharsets.ISO_8859_1).split("== ");
    assertThat(answers).hasSize(samples.size() + 1);
    for (int i = 0; i < samples.size(); i++) {
      String answer = answers[i + 1];
      String name = samples.get(i).getKey();
      assertThat(answer).as(name).contains("seems to be valid");
      Matcher mass = Pattern.compile("Mass\\s*:\\s*([-+0-9.eE]+)").matcher(answer);
      assertThat(mass.find()).as(name).isTrue();
      double volume = Moments.of(Brep.of(Bodies.of(samples.get(i).getValue()))).volume();
      assertThat(Double.parseDouble(mass.group(1)) / volume).as(name).isCloseTo(1, within(1e-6));
    }
  }
}
