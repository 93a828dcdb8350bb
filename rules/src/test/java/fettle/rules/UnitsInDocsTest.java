package fettle.rules;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.javaparser.ParserConfiguration;
import com.github.javaparser.StaticJavaParser;
import com.github.javaparser.ast.body.MethodDeclaration;
import com.github.javaparser.ast.body.Parameter;
import com.github.javaparser.ast.body.TypeDeclaration;
import com.github.javaparser.ast.type.Type;
import com.github.javaparser.javadoc.Javadoc;
import com.github.javaparser.javadoc.JavadocBlockTag;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every double that a public method of the mechanics takes or gives names its unit in the docs. */
class UnitsInDocsTest {

  private static final Path SOURCES = Path.of("../mechanics/src/main/java");

  /** Methods that do not follow the rule yet. */
  private static final Set<String> NOT_YET =
      Set.of(
          "Banjo.of(axes)",
          "Banjo.of(gap)",
          "Banjo.of(headShaft)",
          "Banjo.of(margin)",
          "Banjo.of(screwShaft)",
          "Banjo.of(slotHigh)",
          "Banjo.of(slotLow)",
          "ChangeGearSearch.census(module)",
          "Compliance.entries returns",
          "Flat.addSpots(f)",
          "MeasurementModel.contributions(freedom)",
          "MeasurementModel.contributions(u)",
          "MeasurementModel.contributions(values)",
          "MeasurementModel.of(values)",
          "MonteCarlo.of(confidence)",
          "Shape.side(high)",
          "Shape.side(low)",
          "Shape.varies(high)",
          "Shape.varies(low)",
          "Straightness.of(heights)",
          "Straightness.of(places)");

  @BeforeAll
  static void language() {
    StaticJavaParser.getParserConfiguration()
        .setLanguageLevel(ParserConfiguration.LanguageLevel.JAVA_17);
  }

  @Test
  void everyDoubleCarriesItsUnit() throws IOException {
    Set<String> wrong = new TreeSet<>();
    int[] seen = {0};
    try (Stream<Path> files = Files.walk(SOURCES)) {
      files.filter(f -> f.toString().endsWith(".java")).forEach(f -> wrong.addAll(file(f, seen)));
    }
    assertThat(seen[0]).as("doubles looked at").isGreaterThan(500);
    Set<String> fresh = new TreeSet<>(wrong);
    fresh.removeAll(NOT_YET);
    assertThat(fresh).isEmpty();
    assertThat(NOT_YET).as("exceptions no longer needed").isSubsetOf(wrong);
  }

  private static List<String> file(Path file, int[] seen) {
    List<String> wrong = new ArrayList<>();
    try {
      for (TypeDeclaration<?> type :
          StaticJavaParser.parse(file).findAll(TypeDeclaration.class).stream()
              .map(t -> (TypeDeclaration<?>) t)
              .toList()) {
        if (open(type)) {
          type.getMethods().stream()
              .filter(m -> m.isPublic() || inInterface(type))
              .filter(m -> m.getAnnotationByName("Override").isEmpty())
              .forEach(m -> method(type, m, wrong, seen));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return wrong;
  }

  private static boolean inInterface(TypeDeclaration<?> type) {
    return type.isClassOrInterfaceDeclaration()
        && type.asClassOrInterfaceDeclaration().isInterface();
  }

  /** Tells whether a type and all types around it are public. */
  private static boolean open(TypeDeclaration<?> type) {
    Optional<TypeDeclaration<?>> around =
        type.getParentNode()
            .filter(p -> p instanceof TypeDeclaration)
            .map(p -> (TypeDeclaration<?>) p);
    boolean implicitly = around.isPresent() && inInterface(around.get());
    return (type.isPublic() || implicitly) && (around.isEmpty() || open(around.get()));
  }

  private static void method(
      TypeDeclaration<?> type, MethodDeclaration method, List<String> wrong, int[] seen) {
    Optional<Javadoc> doc = method.getJavadoc();
    String name = type.getNameAsString() + "." + method.getNameAsString();
    for (Parameter parameter : method.getParameters()) {
      if (number(parameter.getType())) {
        seen[0]++;
        if (!said(doc, JavadocBlockTag.Type.PARAM, parameter.getNameAsString())) {
          wrong.add(name + "(" + parameter.getNameAsString() + ")");
        }
      }
    }
    if (number(method.getType())) {
      seen[0]++;
      if (!said(doc, JavadocBlockTag.Type.RETURN, "")) {
        wrong.add(name + " returns");
      }
    }
  }

  private static boolean number(Type type) {
    return type.getElementType().asString().equals("double");
  }

  private static boolean said(Optional<Javadoc> doc, JavadocBlockTag.Type kind, String name) {
    return doc.isPresent()
        && doc.get().getBlockTags().stream()
            .filter(t -> t.getType() == kind)
            .filter(t -> name.isEmpty() || t.getName().orElse("").equals(name))
            .anyMatch(t -> t.getContent().toText().matches("(?s).*\\[[^\\]]+\\].*"));
  }
}
