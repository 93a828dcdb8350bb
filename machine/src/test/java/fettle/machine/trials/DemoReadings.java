package fettle.machine.trials;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/** Readings of the demo's further trials, from the truth that {@link DemoTrials} states. */
final class DemoReadings {

  /** Half of each instrument's doubt as the shop states it. */
  private static final double INDICATOR = 0.001;

  private static final double RETRACE = 0.002;
  private static final double LEVEL = 4e-6;
  private static final double WATCH = 0.1;
  private static final double THERMOMETER = 0.3;

  private final Random random;
  private final StringBuilder csv = new StringBuilder();

  private DemoReadings(long seed, String header) {
    random = DemoTrials.random(seed);
    csv.append(header).append('\n');
  }

  /** Adds the CSV text of every trial; seeds of neighbours stand a prime apart. */
  static void write(long seed, Map<String, String> texts) {
    long s = seed + 7_919_000_000L;
    texts.put("spindle-float", spindleFloat(s));
    texts.put("bed-level", bedLevel(s + 1));
    texts.put("facing", facing(s + 2));
    texts.put("lead-screw", leadScrew(s + 3));
    texts.put("speeds", speeds(s + 4));
    texts.put("run-in", runIn(s + 5));
    texts.put("cross-preload", preload(s + 6));
    texts.put("stopping", stopping(s + 7));
    texts.put("nose-over-the-years", years(s + 8));
  }

  private double normal(double sigma) {
    return sigma * random.nextGaussian();
  }

  private void line(String form, Object... cells) {
    csv.append(String.format(Locale.ROOT, form, cells).replaceAll("-(0\\.0+)$", "$1")).append('\n');
  }

  private static String spindleFloat(long seed) {
    DemoReadings d = new DemoReadings(seed, "place,turn,spindle_deg,reading_mm");
    String[] places = {"centre", "face"};
    double[] range = {
      DemoTrials.truth("spindle-float", FloatTrial.SLIP),
      DemoTrials.truth("spindle-float", FloatTrial.CAMMING)
    };
    for (int p = 0; p < 2; p++) {
      double seen = range[p] + d.normal(INDICATOR);
      double zero = d.normal(0.01);
      for (int turn = 1; turn <= 4; turn++) {
        for (int a = 0; a < 360; a += 45) {
          double m = zero + seen / 2 * Math.cos(Math.toRadians(a - 90.0 * p)) + d.normal(0.0006);
          d.line("%s,%d,%d,%.3f", places[p], turn, a, m);
        }
      }
    }
    double play =
        DemoTrials.truth("spindle-float", FloatTrial.PLAY)
            + RETRACE * d.random.nextDouble()
            + d.normal(INDICATOR);
    for (int pull = 1; pull <= 5; pull++) {
      double rest = d.normal(0.004);
      d.line("push,%d,0,%.3f", pull, rest);
      d.line("pull,%d,0,%.3f", pull, rest + play + d.normal(0.001));
    }
    return d.csv.toString();
  }

  private static String bedLevel(long seed) {
    DemoReadings d = new DemoReadings(seed, "way,run,z_mm,end,slope_um_per_m");
    double top = DemoTrials.truth("bed-level", BedTrial.ALONG);
    double[] heights = {0, 0.25 * top, 0.55 * top, top, 0.55 * top, 0.25 * top, 0};
    double twist = DemoTrials.truth("bed-level", BedTrial.TWIST) / 1000;
    for (int way = 0; way < 2; way++) {
      double zero = d.normal(20e-6);
      double[] fault = new double[6];
      for (int k = 0; k < 6; k++) {
        fault[k] = d.normal(LEVEL);
      }
      for (int run = 1; run <= 2; run++) {
        for (int k = 0; k < 6; k++) {
          double tilt =
              fault[k]
                  + (way == 0
                      ? 30e-6 + (heights[k + 1] - heights[k]) / 110
                      : -15e-6 + twist * k / 5);
          String word = way == 0 ? "along" : "across";
          int z = 50 + 110 * k;
          d.line("%s,%d,%d,a,%.1f", word, run, z, 1e6 * (zero + tilt + d.normal(4e-6)));
          d.line("%s,%d,%d,b,%.1f", word, run, z, 1e6 * (zero - tilt + d.normal(4e-6)));
        }
      }
    }
    return d.csv.toString();
  }

  private static String facing(long seed) {
    DemoReadings d = new DemoReadings(seed, "cut,side,reading_mm");
    double step = 2 * DemoTrials.truth("facing", FacingTrial.HOLLOW) + d.normal(INDICATOR);
    for (int cut = 1; cut <= 3; cut++) {
      double near = d.normal(0.01);
      d.line("%d,near,%.3f", cut, near);
      d.line("%d,far,%.3f", cut, near + step + d.normal(0.0015));
    }
    return d.csv.toString();
  }

  private static String leadScrew(long seed) {
    DemoReadings d = new DemoReadings(seed, "run,dir,target_mm,position_mm");
    double play = DemoTrials.truth("lead-screw", LeadTrial.PLAY) + RETRACE * d.random.nextDouble();
    double scale = 180e-6 + d.normal(20e-6);
    double[] fault = new double[11];
    for (int i = 0; i < fault.length; i++) {
      fault[i] = d.normal(INDICATOR / Math.sqrt(2)) + (i == 2 ? -0.007 : i == 8 ? 0.007 : 0);
    }
    for (int run = 1; run <= 2; run++) {
      double zero = d.normal(0.02);
      for (int i = 0; i < 22; i++) {
        int at = i < 11 ? i : 21 - i;
        int dir = i < 11 ? 1 : -1;
        double z = 10.0 * at;
        double y = zero + z * (1 + scale) + fault[at] - dir * play / 2 + d.normal(0.002);
        d.line("%d,%d,%.0f,%.3f", run, dir, z, y);
      }
    }
    return d.csv.toString();
  }

  private static String speeds(long seed) {
    DemoReadings d = new DemoReadings(seed, "step,turns,time_s");
    String[] names = {"speed slow back gear in", "speed slow direct", "speed fast direct"};
    int[] turns = {100, 300, 800};
    for (int step = 0; step < 3; step++) {
      double omega = DemoTrials.truth("speeds", names[step]);
      double fault = d.normal(WATCH);
      for (int count = 0; count < 4; count++) {
        double t = 2 * Math.PI * turns[step] / omega + fault + d.normal(0.12);
        d.line("%d,%d,%.2f", step + 1, turns[step], t);
      }
    }
    return d.csv.toString();
  }

  private static String runIn(long seed) {
    DemoReadings d = new DemoReadings(seed, "place,time_min,room_degC,temperature_degC");
    for (String place : new String[] {"front", "rear"}) {
      double last = DemoTrials.truth("run-in", RunInTrial.rise(place)) + d.normal(THERMOMETER);
      double tau = DemoTrials.truth("run-in", RunInTrial.time(place)) / 60;
      for (int t = 0; t <= 120; t += 5) {
        double room = 19.5 + t / 240.0;
        double warm = Math.rint(10 * room) / 10 - last * Math.expm1(-t / tau) + d.normal(0.2);
        d.line("%s,%d,%.1f,%.1f", place, t, room, warm);
      }
    }
    return d.csv.toString();
  }

  private static String preload(long seed) {
    DemoReadings d = new DemoReadings(seed, "loop,dir,force_N,movement_um");
    double shape = 1 + d.normal(0.025);
    double gauge = 1 + d.normal(0.01);
    double knee =
        DemoTrials.truth("cross-preload", PreloadTrial.PRELOAD) * Math.pow(2, 1.5) * shape * gauge;
    for (int loop = 1; loop <= 3; loop++) {
      double set = loop == 1 ? 0.4 : 0;
      for (int i = 0; i <= 30; i++) {
        double force = 20.0 * (i <= 15 ? i : 30 - i);
        int dir = i <= 15 ? 1 : -1;
        double moved = force / 40 + Math.max(0, force - knee) / 40 - dir * 0.15;
        d.line("%d,%d,%.0f,%.1f", loop, dir, force, set + moved + d.normal(0.1));
      }
    }
    return d.csv.toString();
  }

  private static String stopping(long seed) {
    DemoReadings d = new DemoReadings(seed, "run,reading");
    double seen = DemoTrials.truth("stopping", "time to stop") + d.normal(WATCH);
    for (int run = 1; run <= 5; run++) {
      d.line("%d,%.2f", run, seen + d.normal(0.15));
    }
    return d.csv.toString();
  }

  /** Eight settled readings, then a rise that ends at the truth of the newest. */
  private static String years(long seed) {
    DemoReadings d = new DemoReadings(seed, "date,hours,reading");
    double fault = d.normal(INDICATOR);
    double rise = DemoTrials.truth("nose-over-the-years", RecordTrial.DRIFT);
    double last = DemoTrials.truth("nose-over-the-years", "run-out of the collar");
    LocalDate newest = LocalDate.of(2026, 3, 14);
    for (int i = 0; i < 18; i++) {
      LocalDate day = newest.minusMonths(6L * (17 - i));
      LocalDate from = i < 8 ? newest.minusMonths(6L * 9) : day;
      double value = last - rise * (newest.toEpochDay() - from.toEpochDay()) / 365.25;
      d.line("%s,%d,%.1f", day, 120 + 128 * i, 1000 * (value + fault + d.normal(0.001)));
    }
    return d.csv.toString();
  }
}
