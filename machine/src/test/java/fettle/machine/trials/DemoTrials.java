package fettle.machine.trials;

import fettle.mechanics.metrology.TestBar;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Random;

/**
 * Writes the demo's readings from a stated truth: the truth, errors of the instruments drawn once
 * for a trial within their stated doubt, and scatter drawn for each reading.
 */
final class DemoTrials {

  /** Seed of the readings that stand in the book. */
  static final long SEED = 85_420L;

  /** Truth of every figure that is recovered, by trial and name [coherent]. */
  static final Map<String, Map<String, Double>> TRUTH =
      Map.ofEntries(
          Map.entry(
              "saddle-dial",
              Map.of(
                  DialTrial.TRAVEL,
                  24.9366,
                  DialTrial.REVERSAL,
                  0.262,
                  DialTrial.periodic(1),
                  0.012,
                  DialTrial.periodic(3),
                  0.018)),
          Map.entry("cross-slide", Map.of(DialTrial.REVERSAL, 0.0507)),
          Map.entry(
              "spindle-bar",
              Map.of(
                  BarTrial.NEAR, 0.006,
                  BarTrial.FAR, 0.014,
                  BarTrial.HORIZONTAL, 0.009,
                  BarTrial.VERTICAL, 0.031)),
          Map.entry("two-collars", Map.of(CollarTrial.TAPER, 0.009)),
          Map.entry(
              "tailstock", Map.of(TailstockTrial.SIDEWAYS, 0.034, TailstockTrial.HEIGHT, 0.012)),
          Map.entry(
              "tool-post-push",
              Map.of(
                  PushTrial.STIFFNESS, 11_500.0,
                  PushTrial.LOST, 0.006,
                  PushTrial.HYSTERESIS, 0.004)),
          Map.entry(
              "spindle-float",
              Map.of(FloatTrial.SLIP, 0.008, FloatTrial.CAMMING, 0.012, FloatTrial.PLAY, 0.015)),
          Map.entry("bed-level", Map.of(BedTrial.ALONG, 0.006, BedTrial.TWIST, 0.052)),
          Map.entry("facing", Map.of(FacingTrial.HOLLOW, 0.005, FacingTrial.SQUARE, 0.005 / 36)),
          Map.entry(
              "lead-screw",
              Map.of(
                  LeadTrial.LEAD,
                  180e-6 + 0.42 / 11_000,
                  LeadTrial.PLAY,
                  0.185,
                  LeadTrial.within(60),
                  0.0248)),
          Map.entry(
              "speeds",
              Map.of(
                  "speed slow back gear in", rpm(61),
                  "speed slow direct", rpm(376.5),
                  "speed fast direct", rpm(1162))),
          Map.entry(
              "run-in",
              Map.of(
                  RunInTrial.rise("front"), 23.0,
                  RunInTrial.time("front"), 1500.0,
                  RunInTrial.rise("rear"), 17.0,
                  RunInTrial.time("rear"), 1300.0)),
          Map.entry("cross-preload", Map.of(PreloadTrial.PRELOAD, 57.0)),
          Map.entry("stopping", Map.of("time to stop", 4.6)),
          Map.entry(
              "nose-over-the-years",
              Map.of("run-out of the collar", 0.0152, RecordTrial.DRIFT, 0.0012)));

  private static final double STEP = 0.001;
  private static final double INDICATOR = 0.001;
  private static final double MICROMETER = 0.0015;
  private static final double RETRACE = 0.002;

  private final Random random;

  private DemoTrials(long seed) {
    random = random(seed);
  }

  static Random random(long seed) {
    return new Random(mixed(seed));
  }

  private static double rpm(double speed) {
    return speed * Math.PI / 30;
  }

  /** Neighbouring seeds would give alike first numbers; their bits are mixed beforehand. */
  private static long mixed(long seed) {
    long z = seed * 0x9E3779B97F4A7C15L;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  /** Returns the CSV text of every trial. */
  static Map<String, String> write(long seed) {
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put("saddle-dial", new DemoTrials(seed).saddleDial());
    texts.put("cross-slide", new DemoTrials(seed + 1).crossSlide());
    texts.put("spindle-bar", new DemoTrials(seed + 2).spindleBar());
    texts.put("two-collars", new DemoTrials(seed + 3).twoCollars());
    texts.put("tailstock", new DemoTrials(seed + 4).tailstock());
    texts.put("tool-post-push", new DemoTrials(seed + 5).push());
    DemoReadings.write(seed, texts);
    return texts;
  }

  /** Writes the files into the folder that is named. */
  public static void main(String[] args) throws IOException {
    for (Map.Entry<String, String> file : write(SEED).entrySet()) {
      Files.writeString(Path.of(args[0]).resolve(file.getKey() + ".csv"), file.getValue());
    }
  }

  static double truth(String trial, String name) {
    return Objects.requireNonNull(TRUTH.getOrDefault(trial, Map.of()).get(name), name);
  }

  private double normal(double sigma) {
    return sigma * random.nextGaussian();
  }

  private static String rounded(double value, double step) {
    return String.format(Locale.ROOT, "%.3f", Math.rint(value / step) * step);
  }

  private String saddleDial() {
    double range = 6;
    double scale = 1 + normal(20e-6) + normal(INDICATOR) / (range * 25);
    double reversal = truth("saddle-dial", DialTrial.REVERSAL) + RETRACE * random.nextDouble();
    StringBuilder csv = new StringBuilder("run,dir,turns,position_mm\n");
    for (int run = 1; run <= 3; run++) {
      double zero = normal(0.02);
      for (int i = 0; i < 50; i++) {
        int dir = i < 25 ? 1 : -1;
        double turns = (i < 25 ? i : 49 - i) * 0.25;
        double periodic =
            truth("saddle-dial", DialTrial.periodic(1)) * Math.cos(2 * Math.PI * turns - 0.7)
                + truth("saddle-dial", DialTrial.periodic(3))
                    * Math.cos(2 * Math.PI * turns / 3 - 2.1);
        double y =
            zero
                + (truth("saddle-dial", DialTrial.TRAVEL) * turns + periodic) * scale
                - dir * reversal / 2
                + normal(0.004);
        csv.append(
            String.format(Locale.ROOT, "%d,%d,%.2f,%s\n", run, dir, turns, rounded(y, STEP)));
      }
    }
    return csv.toString();
  }

  private String crossSlide() {
    double reversal = truth("cross-slide", DialTrial.REVERSAL) + RETRACE * random.nextDouble();
    double[] off = new double[9];
    for (int i = 0; i < off.length; i++) {
      off[i] = normal(0.003);
    }
    StringBuilder csv = new StringBuilder("run,dir,target_mm,position_mm\n");
    for (int run = 1; run <= 3; run++) {
      for (int i = 0; i < 18; i++) {
        int dir = i < 9 ? 1 : -1;
        int place = i < 9 ? i : 17 - i;
        double target = 5 + 10 * place + 0.3 * (place % 3);
        double y = target + off[place] - dir * reversal / 2 + normal(0.003);
        csv.append(
            String.format(Locale.ROOT, "%d,%d,%.1f,%s\n", run, dir, target, rounded(y, STEP)));
      }
    }
    return csv.toString();
  }

  private String spindleBar() {
    double rigidity = 206_000 * TestBar.secondMoment(25, 0);
    double weight = TestBar.weight(25, 0, 7.85e-9, 9806.65);
    double force = 1.5 * random.nextDouble();
    double[] places = {50, 250};
    double[] size = {truth("spindle-bar", BarTrial.NEAR), truth("spindle-bar", BarTrial.FAR)};
    double[] high = {0.4, 0.9};
    double[] bar = {0.002, 0.005};
    double[] seen = {size[0] + normal(INDICATOR), size[1] + normal(INDICATOR)};
    StringBuilder csv = new StringBuilder("plane,seat_deg,z_mm,spindle_deg,reading_mm\n");
    for (int plane = 0; plane < 2; plane++) {
      double lean = truth("spindle-bar", plane == 0 ? BarTrial.HORIZONTAL : BarTrial.VERTICAL);
      double fault = normal(INDICATOR);
      for (int seat = 0; seat < 360; seat += 90) {
        double set = normal(0.0015);
        double zero = normal(0.01);
        for (int p = 0; p < 2; p++) {
          double z = places[p];
          double seatX = normal(0.0006);
          double seatY = normal(0.0006);
          double sag = plane == 0 ? 0 : TestBar.sag(z, 260, weight, 0, rigidity);
          double push = TestBar.sag(z, z, 0, force, rigidity);
          double middle = zero - sag - push + (p == 0 ? 0 : lean + fault + set);
          for (int a = 0; a < 360; a += 45) {
            double t = Math.toRadians(a);
            double turn = plane == 0 ? 0 : Math.PI / 2;
            double m =
                middle
                    + seen[p] / 2 * Math.cos(t + high[p] + turn)
                    + bar[p] * Math.cos(t + Math.toRadians(seat) + 1.3 + turn)
                    + seatX * Math.cos(t + turn)
                    - seatY * Math.sin(t + turn)
                    + normal(0.0008);
            csv.append(
                String.format(
                    Locale.ROOT,
                    "%s,%d,%.0f,%d,%s\n",
                    plane == 0 ? "h" : "v",
                    seat,
                    z,
                    a,
                    rounded(m, STEP)));
          }
        }
      }
    }
    return csv.toString();
  }

  private String twoCollars() {
    double fault = normal(MICROMETER);
    StringBuilder csv = new StringBuilder("cut,collar,diameter_mm\n");
    for (int cut = 1; cut <= 5; cut++) {
      double free = 34 - 0.2 * cut + normal(0.01);
      double head = free + truth("two-collars", CollarTrial.TAPER) + fault + normal(0.002);
      csv.append(String.format(Locale.ROOT, "%d,head,%s\n", cut, rounded(head, STEP)));
      csv.append(String.format(Locale.ROOT, "%d,free,%s\n", cut, rounded(free, STEP)));
    }
    return csv.toString();
  }

  private String tailstock() {
    StringBuilder csv = new StringBuilder("seating,plane,end,reading_mm\n");
    double[] fault = {normal(INDICATOR), normal(INDICATOR)};
    for (int seating = 1; seating <= 4; seating++) {
      for (int plane = 0; plane < 2; plane++) {
        String name = plane == 0 ? TailstockTrial.SIDEWAYS : TailstockTrial.HEIGHT;
        double head = normal(0.01);
        double tail = head + truth("tailstock", name) * 260 / 300 + fault[plane] + normal(0.002);
        String word = plane == 0 ? "h" : "v";
        csv.append(
            String.format(Locale.ROOT, "%d,%s,head,%s\n", seating, word, rounded(head, STEP)));
        csv.append(
            String.format(Locale.ROOT, "%d,%s,tail,%s\n", seating, word, rounded(tail, STEP)));
      }
    }
    return csv.toString();
  }

  private String push() {
    double k = truth("tool-post-push", PushTrial.STIFFNESS);
    double gauge = 1 + normal(0.01);
    double span = 600 / k + 0.006;
    double slope = (1 / k) * gauge * (1 + normal(INDICATOR) / span);
    double gap = truth("tool-post-push", PushTrial.LOST) + normal(INDICATOR);
    double lag = truth("tool-post-push", PushTrial.HYSTERESIS) + normal(INDICATOR);
    StringBuilder csv = new StringBuilder("loop,dir,force_N,movement_mm\n");
    for (int loop = 1; loop <= 3; loop++) {
      double set = loop == 1 ? 0.003 : 0;
      for (int i = 0; i < 24; i++) {
        int phase = i / 6;
        int at = i % 6 + 1;
        int dir = phase == 0 || phase == 3 ? 1 : -1;
        double force = 50.0 * (phase == 0 ? at : phase == 1 ? 6 - at : phase == 2 ? -at : at - 6);
        double y =
            set + force * slope + Math.signum(force) * gap / 2 - dir * lag / 2 + normal(0.0012);
        csv.append(
            String.format(Locale.ROOT, "%d,%d,%.0f,%s\n", loop, dir, force, rounded(y, STEP)));
      }
    }
    return csv.toString();
  }
}
