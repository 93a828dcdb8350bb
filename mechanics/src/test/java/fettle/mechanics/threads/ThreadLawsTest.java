package fettle.mechanics.threads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fettle.mechanics.base.Rows;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ThreadLawsTest {

  @Test
  void tableOfMetricTolerancesFollowsTheFormulasButForTheKnownCells() {
    List<String> departing = new ArrayList<>();
    for (Map<String, String> row : Rows.read(ThreadLimits.class, "metric.csv")) {
      double p = Double.parseDouble(row.getOrDefault("P", ""));
      departing.addAll(departing(row, "Td6", MetricTolerances.majorByFormula(p)));
      departing.addAll(departing(row, "TD16", MetricTolerances.minorByFormula(p)));
      departing.addAll(departing(row, "Td4", grade(row, "Td6", 0.63)));
      departing.addAll(departing(row, "Td8", grade(row, "Td6", 1.6)));
      departing.addAll(departing(row, "TD14", grade(row, "TD16", 0.63)));
      departing.addAll(departing(row, "TD15", grade(row, "TD16", 0.8)));
      departing.addAll(departing(row, "TD17", grade(row, "TD16", 1.25)));
      departing.addAll(departing(row, "TD18", grade(row, "TD16", 1.6)));
    }
    assertThat(departing)
        .containsExactlyInAnyOrder("Td6 0.2", "TD16 0.5", "TD16 1", "Td6 4", "Td8 8");
  }

  private static List<String> departing(Map<String, String> row, String column, int rule) {
    String cell = row.getOrDefault(column, "");
    boolean same = cell.isEmpty() || rule == 0 || Integer.parseInt(cell) == rule;
    return same ? List.of() : List.of(column + " " + row.get("P"));
  }

  private static int grade(Map<String, String> row, String six, double factor) {
    String cell = row.getOrDefault(six, "");
    return cell.isEmpty() ? 0 : PreferredNumbers.r40(factor * Integer.parseInt(cell));
  }

  @ParameterizedTest
  @CsvSource({"10,1.5,170", "10,1,140", "5,0.8,118", "16,2,200"})
  void gradeSevenIsRoundedAfterGradeSix(double d, double p, int td2) {
    assertThat(MetricTolerances.pitchDiameterOfScrew(d, p, 7)).isEqualTo(td2);
  }

  @ParameterizedTest
  @ValueSource(strings = {"M10x1", "Tr 14x3", "7/16-10 Acme", "1/2-28 UNEF", "1/4 BSW", "Tr16x8P4"})
  void nutAlwaysClearsTheScrewInUsualClasses(String text) {
    ThreadDesignation t = ThreadDesignation.parse(text);
    Limits.Screw s =
        ThreadLimits.screw(t, ThreadLimits.screwClass(t.form(), ""), ThreadLimits.Widening.NONE);
    Limits.Nut n =
        ThreadLimits.nut(t, ThreadLimits.nutClass(t.form(), ""), ThreadLimits.Widening.NONE);
    assertThat(n.d2().low()).isGreaterThanOrEqualTo(s.d2().high() - 2e-3);
    assertThat(n.d1().low()).isGreaterThan(s.d3().high() - 2e-3);
    assertThat(s.d().low()).isGreaterThan(n.d1().high());
    assertThat(s.d().high()).isLessThanOrEqualTo(n.majorMin() + 1e-9);
  }

  @Test
  void startsWidenOnlyWhenAsked() {
    ThreadDesignation t = ThreadDesignation.parse("Tr16x8P4");
    double plain = ThreadLimits.screw(t, "7e", ThreadLimits.Widening.NONE).d2().width();
    double wide = ThreadLimits.screw(t, "7e", ThreadLimits.Widening.BY_STARTS).d2().width();
    assertThat(plain).isCloseTo(0.265, within(1e-9));
    assertThat(wide).isCloseTo(0.3, within(1e-9));
  }

  @Test
  void classOfTheOtherPartIsRefused() {
    ThreadDesignation t = ThreadDesignation.parse("M10");
    assertThatThrownBy(() -> ThreadLimits.screw(t, "6H", ThreadLimits.Widening.NONE))
        .hasMessageContaining("nut's class");
    assertThatThrownBy(() -> ThreadLimits.nut(t, "6g", ThreadLimits.Widening.NONE))
        .hasMessageContaining("screw's class");
    assertThatThrownBy(() -> ThreadLimits.screw(t, "5g", ThreadLimits.Widening.NONE))
        .hasMessageContaining("grade 5");
  }

  @ParameterizedTest
  @CsvSource({"15,4,0,14", "14.5,2.54,0,9.8", "30,1,0,9.35", "27.5,1.27,0,5.5"})
  void withoutLeadTheExactLieIsThePrintedFormula(double alpha, double p, double lead, double d2) {
    OverWires wires = new OverWires(Math.toRadians(alpha), p, lead);
    double wire = 1.03 * wires.bestWireWithoutLead();
    assertThat(wires.lie(d2, wire).over()).isCloseTo(wires.withoutLead(d2, wire), within(1e-9));
    assertThat(wires.bestWire(d2)).isCloseTo(wires.bestWireWithoutLead(), within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"15,4,8,14", "15,3,3,12.5", "14.5,12.7,25.4,120.65", "30,1,1,9.35"})
  void measuringGivesThePitchDiameterBack(double alpha, double p, double lead, double d2) {
    OverWires wires = new OverWires(Math.toRadians(alpha), p, lead);
    double wire = wires.bestWireWithoutLead();
    double over = wires.lie(d2, wire).over();
    assertThat(wires.pitchDiameter(over, wire)).isCloseTo(d2, within(1e-8));
    assertThat(wires.lie(d2, wires.bestWire(d2)).contactDiameter()).isCloseTo(d2, within(1e-6));
  }

  @Test
  void equalAreasAreEqual() {
    InfeedSchedule s = new InfeedSchedule(Math.toRadians(15), 1.33, 2.25);
    List<Double> depths = s.depths(20, InfeedSchedule.Rule.EQUAL_AREA);
    double before = 0;
    for (double depth : depths) {
      assertThat(s.area(depth) - before).isCloseTo(s.area(2.25) / 20, within(1e-12));
      before = s.area(depth);
    }
    assertThat(depths.get(19)).isEqualTo(2.25);
    InfeedSchedule sharp = new InfeedSchedule(Math.toRadians(30), 0, 0.9);
    assertThat(sharp.depths(9, InfeedSchedule.Rule.EQUAL_AREA).get(3))
        .isCloseTo(0.6, within(1e-12));
  }

  @Test
  void preferredNumbersStayThemselves() {
    for (int n : List.of(18, 24, 48, 90, 106, 190, 265, 530, 950, 1060, 1250)) {
      assertThat(PreferredNumbers.r40(n)).isEqualTo(n);
    }
  }
}
