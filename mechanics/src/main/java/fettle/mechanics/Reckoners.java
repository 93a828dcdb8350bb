package fettle.mechanics;

import fettle.mechanics.base.Reckoner;
import fettle.mechanics.bearings.BearingReckoners;
import fettle.mechanics.belts.BeltReckoners;
import fettle.mechanics.clamps.ClampsReckoners;
import fettle.mechanics.cutting.CuttingReckoners;
import fettle.mechanics.drawing.DrawingReckoners;
import fettle.mechanics.drives.DriveReckoners;
import fettle.mechanics.electrics.ElectricsReckoners;
import fettle.mechanics.fits.FitsReckoners;
import fettle.mechanics.gears.TrainReckoners;
import fettle.mechanics.joints.JointsReckoners;
import fettle.mechanics.loop.LoopReckoners;
import fettle.mechanics.materials.MaterialReckoners;
import fettle.mechanics.metrology.MetrologyReckoners;
import fettle.mechanics.motion.MotionReckoners;
import fettle.mechanics.screws.ScrewReckoners;
import fettle.mechanics.shafts.ShaftReckoners;
import fettle.mechanics.solids.SolidReckoners;
import fettle.mechanics.stock.StockReckoners;
import fettle.mechanics.threads.ThreadReckoners;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Every single calculation Fettle can make, by topic. */
public final class Reckoners {

  private static final List<Supplier<List<Reckoner>>> ROOMS =
      List.of(
          TrainReckoners::all,
          ThreadReckoners::all,
          ScrewReckoners::all,
          FitsReckoners::all,
          JointsReckoners::all,
          ClampsReckoners::all,
          BearingReckoners::all,
          MetrologyReckoners::all,
          SolidReckoners::all,
          LoopReckoners::all,
          MaterialReckoners::all,
          ShaftReckoners::all,
          BeltReckoners::all,
          DriveReckoners::all,
          CuttingReckoners::all,
          StockReckoners::all,
          DrawingReckoners::all,
          ElectricsReckoners::all,
          MotionReckoners::all);

  private Reckoners() {}

  /** Returns all reckoners in the order of the handbook. */
  public static List<Reckoner> all() {
    List<Reckoner> all = new ArrayList<>();
    for (Supplier<List<Reckoner>> room : ROOMS) {
      all.addAll(room.get());
    }
    return List.copyOf(all);
  }

  /** Returns the reckoner of that topic, if there is one. */
  public static Optional<Reckoner> of(String topic) {
    return all().stream().filter(r -> r.topic().equals(topic)).findFirst();
  }
}
