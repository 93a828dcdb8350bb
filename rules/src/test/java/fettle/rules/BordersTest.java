package fettle.rules;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Arrows between the rooms point one way, and each room touches only what it may. */
class BordersTest {

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("fettle");

  private static final String[] BELOW_DESK = {
    "fettle.mechanics..", "fettle.parts..", "fettle.machine..", "fettle.planning.."
  };

  /** Reading a table from the class path is all the input that the mechanics may do. */
  private static final Set<String> CLASS_PATH_READING =
      Set.of(
          "java.io.BufferedReader",
          "java.io.Closeable",
          "java.io.IOException",
          "java.io.InputStream",
          "java.io.InputStreamReader",
          "java.io.Reader",
          "java.io.Serializable",
          "java.io.UncheckedIOException");

  /** What reads a date that is written in a book, without a clock. */
  private static final Set<String> WRITTEN_DATES =
      Set.of("java.time.LocalDate", "java.time.format.DateTimeParseException");

  /** Counters and cursors of objects that live within one method call only. */
  private static final Set<String> WORKING_FIELDS =
      Set.of(
          "fettle.machine.trials.Draft.chart",
          "fettle.mechanics.motion.FreeTravel$Advance.hit",
          "fettle.mechanics.motion.FreeTravel$Advance.open",
          "fettle.mechanics.motion.PairSearch.evaluations",
          "fettle.mechanics.motion.PairSearch.onFirst",
          "fettle.mechanics.motion.PairSearch.onSecond",
          "fettle.mechanics.motion.PairSearch.position",
          "fettle.mechanics.motion.PairSearch.settled",
          "fettle.mechanics.motion.PairSearch.upper",
          "fettle.mechanics.motion.Poses.lower",
          "fettle.mechanics.motion.Poses.normal",
          "fettle.mechanics.motion.Poses.placeA",
          "fettle.mechanics.motion.Poses.placeB",
          "fettle.mechanics.motion.Poses.position",
          "fettle.mechanics.motion.Poses.upper",
          "fettle.mechanics.motion.Simplex.bestDistance",
          "fettle.mechanics.motion.Simplex.bestSize",
          "fettle.mechanics.motion.Simplex.nearest",
          "fettle.mechanics.motion.Simplex.size",
          "fettle.mechanics.gears.GainBound.count",
          "fettle.mechanics.gears.GainBound.now",
          "fettle.mechanics.gears.GainBound.steps",
          "fettle.mechanics.gears.ListCores.cut",
          "fettle.mechanics.gears.ListCores.share",
          "fettle.mechanics.gears.ListCores.tried",
          "fettle.mechanics.gears.TwoLists.coreSteps",
          "fettle.mechanics.gears.TwoLists.sets",
          "fettle.mechanics.gears.TwoLists.wheels",
          "fettle.machine.text.YamlReader.nodes",
          "fettle.mechanics.drawing.DimensionTree.components",
          "fettle.mechanics.drawing.DimensionTree.redundant",
          "fettle.parts.exchange.StepFile.last",
          "fettle.parts.solid.Boundary$Segment.dead",
          "fettle.parts.solid.Boundary$Segment.end",
          "fettle.parts.solid.Boundary$Segment.from",
          "fettle.parts.solid.Boundary$Segment.start",
          "fettle.parts.solid.Boundary$Segment.to",
          "fettle.parts.solid.PrismaticBody.body",
          "fettle.parts.solid.Profile$Draft.x",
          "fettle.parts.solid.Profile$Draft.y",
          "fettle.parts.solid.TurnedBody.body",
          "fettle.machine.topics.CutTopic$OneWork.best",
          "fettle.machine.topics.CutTopic$OneWork.most",
          "fettle.mechanics.bearings.BallContacts$State.rounding",
          "fettle.mechanics.gears.GearboxSearch.best",
          "fettle.mechanics.gears.GearboxSearch.cut",
          "fettle.mechanics.gears.GearboxSearch.sets",
          "fettle.mechanics.gears.GearboxSearch.settled",
          "fettle.mechanics.gears.GearboxSearch.steps",
          "fettle.mechanics.gears.LeastCover.mostSteps",
          "fettle.mechanics.gears.LeastCover.steps",
          "fettle.mechanics.gears.LeastCover.best",
          "fettle.mechanics.gears.LeastCover.bestSize",
          "fettle.mechanics.gears.LeastCover.covers",
          "fettle.machine.topics.ChainFormula$Writer.belts",
          "fettle.machine.topics.ChainFormula$Writer.boxes",
          "fettle.machine.topics.ChainFormula$Writer.lengths",
          "fettle.machine.topics.ChainFormula$Writer.teeth",
          "fettle.mechanics.base.Formula$Reader.at",
          "fettle.mechanics.base.Reckoner$Draft.source",
          "fettle.mechanics.bearings.BallContacts$State.energy",
          "fettle.mechanics.bearings.BallContacts$State.sum",
          "fettle.mechanics.gears.BestTrains.bound",
          "fettle.mechanics.gears.ChangeGearSearch.examined",
          "fettle.mechanics.gears.ChangeGearSearch.twice",
          "fettle.mechanics.gears.ChangeGearSearch.unfit",
          "fettle.mechanics.solids.ConjugateGradients.iterations",
          "fettle.mechanics.solids.ConjugateGradients.residual",
          "fettle.mechanics.solids.FirstCoarse.coarseCells",
          "fettle.mechanics.solids.FirstCoarse.coarseNodes",
          "fettle.mechanics.solids.FirstCoarse.coordinates",
          "fettle.mechanics.solids.FirstCoarse.corner",
          "fettle.mechanics.solids.FirstCoarse.parent",
          "fettle.mechanics.solids.FirstCoarse.weight",
          "fettle.mechanics.solids.Multigrid$Level.prolongation",
          "fettle.mechanics.threads.DesignationReader.hand",
          "fettle.mechanics.threads.DesignationReader.rest",
          "fettle.mechanics.threads.DesignationReader.starts");

  @Test
  void classesWereFound() {
    assertThat(CLASSES.size()).isGreaterThan(200);
    assertThat(CLASSES.contain("fettle.desk.cli.Main")).isTrue();
    assertThat(CLASSES.contain("fettle.mechanics.base.Ratio")).isTrue();
  }

  @Test
  void layersPointDownwards() {
    noClasses()
        .that()
        .resideInAPackage("fettle.mechanics..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "fettle.parts..",
            "fettle.machine..",
            "fettle.sheets..",
            "fettle.planning..",
            "fettle.desk..")
        .check(CLASSES);
    noClasses()
        .that()
        .resideInAPackage("fettle.parts..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "fettle.machine..", "fettle.sheets..", "fettle.planning..", "fettle.desk..")
        .allowEmptyShould(true)
        .check(CLASSES);
    noClasses()
        .that()
        .resideInAPackage("fettle.machine..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("fettle.sheets..", "fettle.planning..", "fettle.desk..")
        .check(CLASSES);
    noClasses()
        .that()
        .resideInAPackage("fettle.planning..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("fettle.desk..")
        .check(CLASSES);
    noClasses()
        .that()
        .resideOutsideOfPackage("fettle.proof..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("fettle.proof..")
        .check(CLASSES);
  }

  @Test
  void packagesFormNoCircles() {
    slices().matching("fettle.(**)").should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void mechanicsKnowsTheLanguageAndNumericLibrariesOnly() {
    noClasses()
        .that()
        .resideInAPackage("fettle.mechanics..")
        .should()
        .dependOnClassesThat()
        .resideOutsideOfPackages(
            "fettle.mechanics..",
            "java.lang..",
            "java.io",
            "java.math",
            "java.nio.charset",
            "java.util",
            "java.util.function",
            "java.util.stream",
            "java.util.regex",
            "java.util.concurrent..",
            "org.hipparchus..",
            "org.ejml..",
            "org.apache.commons.numbers..",
            "org.jspecify..")
        .check(CLASSES);
    noClasses()
        .that()
        .resideInAPackage("fettle.mechanics..")
        .should()
        .dependOnClassesThat(
            new DescribedPredicate<JavaClass>("read or write anything but the class path") {
              @Override
              public boolean test(JavaClass used) {
                return used.getPackageName().equals("java.io")
                    && !CLASS_PATH_READING.contains(used.getFullName());
              }
            })
        .check(CLASSES);
  }

  @Test
  void onlyTheDeskPrintsListensAndReadsTheClock() {
    noClasses()
        .that()
        .resideInAnyPackage(BELOW_DESK)
        .should(
            useOf(
                Set.of(
                    "java.lang.System.out",
                    "java.lang.System.err",
                    "java.lang.System.in",
                    "java.lang.System.currentTimeMillis",
                    "java.lang.System.nanoTime",
                    "java.time.LocalDate.now",
                    "java.lang.System.getenv",
                    "java.lang.System.getProperty",
                    "java.lang.System.exit",
                    "java.lang.Throwable.printStackTrace",
                    "java.util.Locale.getDefault",
                    "java.lang.Math.random")))
        .check(CLASSES);
    noClasses()
        .that()
        .resideInAnyPackage(BELOW_DESK)
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "java.net..", "java.util.logging..", "javax..", "java.awt..", "java.sql..")
        .check(CLASSES);
    noClasses()
        .that()
        .resideInAnyPackage(BELOW_DESK)
        .should()
        .dependOnClassesThat(
            new DescribedPredicate<JavaClass>("tell the time; a written date may be read") {
              @Override
              public boolean test(JavaClass used) {
                return used.getPackageName().startsWith("java.time")
                    && !WRITTEN_DATES.contains(used.getFullName());
              }
            })
        .check(CLASSES);
  }

  @Test
  void onlyTextAndDeskReadFiles() {
    noClasses()
        .that()
        .resideInAnyPackage(BELOW_DESK)
        .and()
        .resideOutsideOfPackage("fettle.machine.text..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.nio.file..", "java.nio.channels..")
        .orShould()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.io.File")
        .orShould()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.io.FileInputStream")
        .orShould()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.io.FileOutputStream")
        .check(CLASSES);
  }

  @Test
  void whatIsDescribedNeverChanges() {
    fields()
        .that()
        .areDeclaredInClassesThat()
        .resideInAnyPackage(BELOW_DESK)
        .and(
            DescribedPredicate.<JavaField>describe(
                "are no working fields", f -> !WORKING_FIELDS.contains(f.getFullName())))
        .should()
        .beFinal()
        .check(CLASSES);
  }

  @Test
  void everyExceptionIsStillNeeded() {
    for (String field : WORKING_FIELDS) {
      int dot = field.lastIndexOf('.');
      JavaField found = CLASSES.get(field.substring(0, dot)).getField(field.substring(dot + 1));
      assertThat(found.getModifiers().toString()).as(field).doesNotContain("FINAL");
    }
  }

  @Test
  void templatesSeePageRecordsOnly() {
    noClasses()
        .that()
        .resideInAPackage("fettle.desk.template..")
        .should()
        .dependOnClassesThat()
        .resideOutsideOfPackages(
            "fettle.desk.template..", "fettle.desk.page..", "gg.jte..", "java..")
        .check(CLASSES);
    noClasses()
        .that()
        .resideInAPackage("fettle.desk.page..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("fettle.desk.cli..", "gg.jte..")
        .check(CLASSES);
  }

  private static ArchCondition<JavaClass> useOf(Set<String> members) {
    return new ArchCondition<>("use one of " + members) {
      @Override
      public void check(JavaClass item, ConditionEvents events) {
        for (JavaAccess<?> access : item.getAccessesFromSelf()) {
          String used = access.getTargetOwner().getFullName() + "." + access.getName();
          events.add(
              new SimpleConditionEvent(item, members.contains(used), access.getDescription()));
        }
      }
    };
  }
}
