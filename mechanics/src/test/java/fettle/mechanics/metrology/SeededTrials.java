package fettle.mechanics.metrology;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;

/** Trials of an invented machine whose truth is stated, with noise from a seed. */
final class SeededTrials {

  static final double TRAVEL = 2.994;
  static final double BACKLASH = 0.085;
  static final double ONCE = 0.006;
  static final double MESH = 0.002;
  static final double NOISE = 0.0015;
  static final RunOutVector TAPER = RunOutVector.polar(0.003, 0.6);
  static final RunOutVector TILT = RunOutVector.polar(12e-6, 1.1);
  static final double STIFFNESS = 25_000;
  static final double LOST = 0.003;
  static final double HYSTERESIS = 0.002;
  static final double FINAL_RISE = 18.5;
  static final double RATE = 1 / 22.0;

  private SeededTrials() {}

  static RandomGenerator random(long seed) {
    return new Well19937c(7_919L * seed + 11);
  }

  /** Two runs each way over three turns, 16 places a turn, offset anew in each run. */
  static List<DialReading> dial(long seed) {
    RandomGenerator random = random(seed);
    List<DialReading> readings = new ArrayList<>();
    int run = 0;
    for (int pass = 0; pass < 2; pass++) {
      run++;
      double offset = 0.02 * random.nextGaussian();
      for (int direction : new int[] {1, -1}) {
        for (int i = 0; i <= 48; i++) {
          double turns = direction > 0 ? i / 16.0 : (48 - i) / 16.0;
          double y =
              offset
                  + TRAVEL * turns
                  - direction * BACKLASH / 2
                  + ONCE * Math.cos(2 * Math.PI * turns - 0.7)
                  + MESH * Math.cos(2 * Math.PI * 5 * turns + 0.4)
                  + NOISE * random.nextGaussian();
          readings.add(new DialReading(run, direction, turns, Math.rint(y * 1000) / 1000));
        }
      }
    }
    return readings;
  }

  /** Bar at 0 and 180 degrees, planes at 20 and 220 mm, 12 spindle angles. */
  static List<RunOut.Turn> spindleBar(long seed) {
    RandomGenerator random = random(seed);
    List<RunOut.Turn> turns = new ArrayList<>();
    for (double seat : new double[] {0, Math.PI}) {
      for (double z : new double[] {20, 220}) {
        RunOutVector bar = RunOutVector.polar(0.004 + 20e-6 * z, 2.2).turned(seat);
        RunOutVector all = TAPER.plus(TILT.times(z)).plus(bar);
        double[] angles = new double[12];
        double[] readings = new double[12];
        for (int k = 0; k < 12; k++) {
          angles[k] = k * Math.PI / 6;
          readings[k] = all.turned(angles[k]).x() + 0.0005 * random.nextGaussian();
        }
        turns.add(RunOut.turn(angles, readings));
      }
    }
    return turns;
  }

  /** Loop 0, +300, -300, 0 N in steps of 50 N. */
  static PushTest push(long seed) {
    RandomGenerator random = random(seed);
    List<double[]> rows = new ArrayList<>();
    for (int f = 0; f <= 300; f += 50) {
      rows.add(new double[] {f, 1});
    }
    for (int f = 250; f >= -300; f -= 50) {
      rows.add(new double[] {f, -1});
    }
    for (int f = -250; f <= 0; f += 50) {
      rows.add(new double[] {f, 1});
    }
    double[] force = new double[rows.size()];
    double[] way = new double[rows.size()];
    double[] movement = new double[rows.size()];
    for (int i = 0; i < force.length; i++) {
      force[i] = rows.get(i)[0];
      way[i] = rows.get(i)[1];
      movement[i] =
          force[i] / STIFFNESS
              + Math.signum(force[i]) * LOST / 2
              - way[i] * HYSTERESIS / 2
              + 0.0004 * random.nextGaussian();
    }
    return PushTest.of(force, way, movement, 100);
  }

  /** Log of 20 readings over 80 minutes. */
  static WarmUp warmUp(long seed) {
    RandomGenerator random = random(seed);
    double[] time = new double[20];
    double[] rise = new double[20];
    for (int i = 0; i < 20; i++) {
      time[i] = 4.0 * (i + 1);
      rise[i] = FINAL_RISE * -Math.expm1(-RATE * time[i]) + 0.15 * random.nextGaussian();
    }
    return WarmUp.of(time, rise);
  }
}
