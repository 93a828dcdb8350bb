package fettle.mechanics.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LoopModelTest {

  private static final double[] SADDLE = {2e5, 4e5, 2e4, 3e9, 4e9, 2e9};
  private static final double[] SLIDE = {3e4, 2e5, 2e5, 1e9, 1e9, 1e9};
  private static final double[] SPINDLE = {4e4, 4e4, 9e4, 5e8, 5e8, 1e8};

  private static LoopModel chain() {
    Compliance post =
        Compliance.of(BarMember.rectangular(40, 30, 30, 210_000, 0.29))
            .turned(new double[][] {{0, 0, 1}, {1, 0, 0}, {0, 1, 0}});
    return new LoopModel(
        List.of(
            Link.springs("saddle on bed", "bed", "saddle", new double[] {60, -60, 200}, SADDLE, 1.6)
                .riding("Z", 0, 0, 1),
            Link.springs("cross slide", "saddle", "slide", new double[] {50, -30, 200}, SLIDE, 1.6)
                .riding("Z", 0, 0, 1)
                .riding("X", 1, 0, 0),
            Link.of("post", "slide", "tool", new double[] {20, -10, 200}, post, 1.1)
                .riding("Z", 0, 0, 1)
                .riding("X", 1, 0, 0),
            Link.springs("spindle", "bed", "work", new double[] {0, 0, 80}, SPINDLE, 1.3)),
        "tool",
        "work",
        List.of(12.0, 0.0, 200.0),
        Map.of("Z", List.of(0.0, 0.0, 1.0), "X", List.of(1.0, 0.0, 0.0)));
  }

  @Test
  void theAssemblyOfAChainIsTheSumOfItsMovedCompliances() {
    LoopModel m = chain();
    Compliance sum = Compliance.none();
    for (Link l : m.links()) {
      double[][] k = new double[6][6];
      for (int i = 0; i < 36; i++) {
        k[i / 6][i % 6] = l.stiffness().get(i);
      }
      double[][] c = new double[6][6];
      double[] inverse = Compliance.of(k).stiffness();
      for (int i = 0; i < 36; i++) {
        c[i / 6][i % 6] = inverse[i];
      }
      sum =
          sum.plus(
              Compliance.of(c).movedBy(12 - l.at().get(0), 0 - l.at().get(1), 200 - l.at().get(2)));
    }
    Compliance all = m.compliance();
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        double size = Math.sqrt(sum.entry(i, i) * sum.entry(j, j));
        assertThat(all.entry(i, j)).isCloseTo(sum.entry(i, j), within(1e-9 * size));
      }
    }
  }

  @Test
  void sharesAddUpAndAreWhatStiffeningGains() {
    LoopModel m = chain();
    List<LoopModel.Share> shares = m.shares(1, 0.3, 0);
    assertThat(shares.stream().mapToDouble(LoopModel.Share::share).sum())
        .isCloseTo(1, within(1e-12));
    double c = m.compliance().along(new double[] {1, 0.3, 0, 0, 0, 0}) / 1.09;
    assertThat(shares.stream().mapToDouble(LoopModel.Share::compliance).sum())
        .isCloseTo(c, within(1e-12 * c));
    LoopModel.Share top = shares.get(0);
    Link link =
        m.links().stream().filter(l -> l.name().equals(top.name())).findFirst().orElseThrow();
    double stiffer =
        m.with(link.stiffer(4)).compliance().along(new double[] {1, 0.3, 0, 0, 0, 0}) / 1.09;
    assertThat(1 - stiffer / c).isCloseTo(top.share() * 0.75, within(1e-9));
  }

  @Test
  void splittingARigidBodyChangesNothing() {
    LoopModel m = chain();
    List<Link> split = new ArrayList<>(m.links());
    split.add(
        Link.springs(
            "bolted",
            "slide",
            "block",
            new double[] {0, 0, 0},
            new double[] {1e13, 1e13, 1e13, 1e17, 1e17, 1e17},
            1));
    split.set(
        2,
        new Link(
            "post",
            "block",
            "tool",
            m.links().get(2).at(),
            m.links().get(2).stiffness(),
            1.1,
            m.links().get(2).rides()));
    double a = m.compliance().entry(0, 0);
    double b = new LoopModel(split, "tool", "work", m.point(), m.rides()).compliance().entry(0, 0);
    assertThat(b).isCloseTo(a, within(1e-6 * a));
  }

  @Test
  void twoPathsShareTheLoad() {
    double[] k = {1e4, 1e4, 1e4, 1e8, 1e8, 1e8};
    LoopModel twice =
        new LoopModel(
            List.of(
                Link.springs("one", "work", "tool", new double[] {0, 0, -50}, k, 1),
                Link.springs("other", "work", "tool", new double[] {0, 0, 50}, k, 1)),
            "tool",
            "work",
            List.of(0.0, 0.0, 0.0),
            Map.of());
    assertThat(twice.compliance().entry(0, 0)).isCloseTo(1 / 2e4, within(1e-12));
    assertThat(twice.shares(1, 0, 0).get(0).share()).isCloseTo(0.5, within(1e-9));
  }

  @Test
  void aLongerReachIsSofterAndAFreeSlideIsRefused() {
    LoopModel m = chain();
    double near = m.compliance().entry(0, 0);
    double far = m.at(Map.of("Z", 150.0)).compliance().entry(0, 0);
    assertThat(far).isGreaterThan(near);
    Link loose =
        Link.springs(
            "cross slide",
            "saddle",
            "slide",
            new double[] {50, -30, 200},
            new double[] {0, 2e5, 2e5, 1e9, 1e9, 1e9},
            1.6);
    assertThatThrownBy(() -> m.with(loose).compliance()).hasMessageContaining("move freely");
  }

  @Test
  void rankingCarriesTheDoubtsAndRepeats() {
    LoopModel.Ranking r = chain().ranked(300, 1, 0, 0);
    assertThat(r.low()).isLessThan(r.compliance());
    assertThat(r.high()).isGreaterThan(r.compliance());
    assertThat(r.elements().stream().mapToDouble(LoopModel.Ranked::first).sum())
        .isCloseTo(1, within(1e-12));
    assertThat(chain().ranked(300, 1, 0, 0)).isEqualTo(r);
    double[] change = chain().change("cross slide", 0.71, 300, 1, 0, 0);
    assertThat(change[0]).isBetween(-0.29, 0.0);
    assertThat(change[1]).isLessThanOrEqualTo(change[0]);
    assertThat(change[2]).isGreaterThanOrEqualTo(change[0]);
  }

  @Test
  void pushTestsBringTheModelToTheTruth() {
    LoopModel assumed = chain();
    LoopModel truth = assumed.scaled(new double[] {0.6, 1.7, 1, 1.2});
    List<Calibration.Push> pushes = new ArrayList<>();
    pushes.add(Calibration.Push.atCut(assumed, "radial at the tool", 1, 0, 0));
    for (String[] joint :
        new String[][] {{"slide", "saddle"}, {"saddle", "bed"}, {"bed", "work"}}) {
      List<Double> line = List.of(1.0, 0.0, 0.0, 12.0, 0.0, 200.0);
      pushes.add(new Calibration.Push(joint[0], "tool", "work", line, joint[0], joint[1], line));
    }
    Calibration before = Calibration.of(assumed);
    double[] read = new double[pushes.size()];
    double[] sd = new double[pushes.size()];
    Random random = new Random(9);
    for (int i = 0; i < read.length; i++) {
      double[] exact = exact(truth, pushes.get(i));
      sd[i] = 0.01 * Math.abs(exact[0]);
      read[i] = exact[0] + sd[i] * random.nextGaussian();
    }
    Calibration after = before.with(pushes, read, sd);
    double c = truth.compliance().entry(0, 0);
    assertThat(after.corrected().compliance().entry(0, 0)).isCloseTo(c, within(0.03 * c));
    assertThat(after.corrected().links().get(1).stiffness().get(0))
        .isCloseTo(truth.links().get(1).stiffness().get(0), within(0.05 * 1.7 * 3e4));
    assertThat(after.corrected().links().get(0).doubt()).isLessThan(1.1);
    Calibration.Lesson first = before.best(pushes, 1e-6, 1, 0, 0);
    assertThat(first.push().name()).isEqualTo("radial at the tool");
    assertThat(first.gain()).isBetween(0.5, 1.0);
  }

  private static double[] exact(LoopModel truth, Calibration.Push push) {
    Calibration c = Calibration.of(truth).with(List.of(push), new double[] {0}, new double[] {1e9});
    return new double[] {Math.sqrt(c.misfit()) * 1e9};
  }
}
