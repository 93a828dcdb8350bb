package fettle.mechanics.materials;

import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Given;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import fettle.mechanics.base.WorkshopRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The table of materials, and the few sums that follow from it. */
public final class MaterialReckoners {

  private static final String GROUP = "materials";
  private static final Source TABLE =
      Source.practice("table of materials; every property names its own source");

  private MaterialReckoners() {}

  /** Returns the reckoners of this room. */
  public static List<Reckoner> all() {
    return WorkshopRange.kept(List.of(material(), list(), shearModulus(), growth(), mass()));
  }

  private static Reckoner material() {
    Reckoner.Draft draft =
        Reckoner.of(GROUP, "material", "Properties of a material, with scatter and source")
            .text("material", "designation, such as C45, EN-GJL-250, CW614N, POM")
            .result("designation", Unit.ONE, "designation in the table")
            .result("family", Unit.ONE, "group it belongs to");
    for (Property p : Property.values()) {
      draft
          .result(p.symbol(), p.unit(), p.words())
          .result(p.symbol() + "_low", p.unit(), p.words() + ", low end of the range")
          .result(p.symbol() + "_high", p.unit(), p.words() + ", high end of the range");
    }
    return draft
        .result("sources", Unit.ONE, "where each property comes from")
        .source(TABLE)
        .rule(g -> properties(Materials.of(g.text("material"))));
  }

  private static Answer properties(Material m) {
    Answer answer =
        Answer.start().with("designation", m.designation()).with("family", m.family().words());
    List<String> sources = new ArrayList<>();
    for (Property p : Property.values()) {
      if (m.knows(p)) {
        Quantity q = m.quantity(p);
        answer =
            answer
                .with(p.symbol(), q.value())
                .with(p.symbol() + "_low", q.scatter().low())
                .with(p.symbol() + "_high", q.scatter().high());
        sources.add(p.symbol() + ": " + q.source().text());
      }
    }
    return cautions(answer.with("sources", sources), m);
  }

  private static Answer cautions(Answer answer, Material m) {
    Answer said = answer;
    String names = m.designation() + " " + String.join(" ", m.otherNames());
    if (m.family() == Material.Family.GREY_IRON) {
      said =
          said.caution(
              "grey iron does not yield: it breaks; its modulus falls as the stress rises and its"
                  + " strength as the wall thickens");
    }
    if (names.toUpperCase(Locale.ROOT).contains("PB")
        || m.designation().equals("CW614N")
        || m.designation().equals("CC491K")) {
      said =
          said.caution(
              "contains lead: keep dust and chips off food and skin, wash hands, sort the scrap;"
                  + " local rules apply");
    }
    if (m.designation().equals("PTFE")) {
      said = said.caution("heated above about 260 °C it gives off poisonous fumes: no smoking");
    }
    return said;
  }

  private static Reckoner list() {
    return Reckoner.of(GROUP, "materials", "Materials that the table lists")
        .choice(
            "family",
            "group of materials",
            "all",
            "steel",
            "grey_iron",
            "ductile_iron",
            "brass",
            "bronze",
            "aluminium",
            "zinc",
            "plastic")
        .result("materials", Unit.ONE, "designations, with other names in brackets")
        .source(TABLE)
        .rule(
            g -> {
              String family = g.choice("family").toUpperCase(Locale.ROOT);
              return Answer.start()
                  .with(
                      "materials",
                      Materials.all().stream()
                          .filter(m -> family.equals("ALL") || m.family().name().equals(family))
                          .map(MaterialReckoners::line)
                          .toList());
            });
  }

  private static String line(Material m) {
    return m.otherNames().isEmpty()
        ? m.designation()
        : m.designation() + " (" + String.join(", ", m.otherNames()) + ")";
  }

  private static Reckoner shearModulus() {
    return Reckoner.of(GROUP, "shear-modulus", "Shear modulus from E and Poisson's ratio")
        .number("E", Unit.GPA, "modulus of elasticity")
        .number("nu", Unit.ONE, "Poisson's ratio")
        .result("G", Unit.GPA, "shear modulus")
        .source(Source.derived("isotropic elasticity"))
        .rule(
            g -> {
              double nu = g.number("nu");
              if (!(g.number("E") > 0) || !(nu > -1) || !(nu < 0.5)) {
                throw new IllegalArgumentException(
                    "E: expected more than 0; nu: expected above -1 and below 0.5");
              }
              return Answer.start()
                  .with(
                      "G", Working.of("G", Unit.GPA, "E/(2*(1 + nu))", g.term("E"), g.term("nu")));
            });
  }

  private static Reckoner growth() {
    return Reckoner.of(GROUP, "length-growth", "Growth of a length by warming")
        .input(
            "material",
            fettle.mechanics.base.Input.Kind.TEXT,
            Unit.ONE,
            "material; or give its expansion",
            null,
            false)
        .optional("alpha", Unit.PPM_PER_K, "thermal expansion")
        .number("L", Unit.MM, "length")
        .number("dT", Unit.K, "warming, negative for cooling")
        .result("dL", Unit.MICRON, "growth")
        .source(Source.derived("definition of the expansion"))
        .rule(MaterialReckoners::growthOf);
  }

  private static Answer growthOf(Given g) {
    double alpha =
        g.has("alpha") ? g.number("alpha") : Materials.of(g.text("material")).expansion();
    if (!(g.number("L") >= 0)) {
      throw new IllegalArgumentException("L: expected 0 mm or more");
    }
    return Answer.start()
        .with(
            "dL",
            Working.of(
                "dL",
                Unit.MICRON,
                "alpha*L*dT",
                fettle.mechanics.base.Term.exact("alpha", alpha, Unit.PPM_PER_K),
                g.term("L"),
                g.term("dT")));
  }

  private static Reckoner mass() {
    return Reckoner.of(GROUP, "bar-mass", "Mass of a round bar or tube")
        .text("material", "material")
        .number("D", Unit.MM, "outer diameter")
        .number("bore", Unit.MM, "bore", "0")
        .number("L", Unit.MM, "length")
        .result("m", Unit.KG, "mass")
        .source(Source.derived("density times volume"))
        .rule(
            g -> {
              double outer = g.number("D");
              double bore = g.number("bore");
              if (!(outer > 0) || !(bore >= 0) || !(bore < outer) || !(g.number("L") > 0)) {
                throw new IllegalArgumentException(
                    "D, bore, L: expected a bore below the outer diameter and a length above 0");
              }
              double density = Materials.of(g.text("material")).density();
              return Answer.start()
                  .with(
                      "m",
                      Working.of(
                          "m",
                          Unit.KG,
                          "rho*pi/4*(D^2 - bore^2)*L",
                          fettle.mechanics.base.Term.exact("rho", density, Unit.KG_PER_M3),
                          g.term("D"),
                          g.term("bore"),
                          g.term("L")));
            });
  }
}
