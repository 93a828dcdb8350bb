package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Machine;
import java.util.List;
import java.util.Optional;

/** All questions, in the order they are shown. */
public final class Topics {

  private static final List<Topic> ALL =
      List.of(
          new CapacityTopic(),
          new TravelTopic(),
          new DialTopic(),
          new PlayTopic(),
          new HandTopic(),
          new ScrewTopic(),
          new SpeedTopic(),
          new DriveTopic(),
          new SpindleTopic(),
          new CutTopic(),
          new RigidityTopic(Flexes.none()),
          new ClampTopic(),
          new GearTopic(),
          new ThreadTopic(),
          new ChainTopic(),
          new ControlTopic(),
          new ControlBoxTopic(),
          new ClearanceTopic());

  private Topics() {}

  /** Returns the names of the topics, in order. */
  public static List<String> names() {
    return ALL.stream().map(Topic::name).toList();
  }

  /** Asks every question of a lathe. */
  public static Study study(Machine machine, Optional<Values> shop) {
    Study all = new Study(List.of(), List.of());
    for (Topic topic : ALL) {
      all =
          all.and(
              Study.orReason(
                  topic.name(), topic.name() + " of the lathe", () -> topic.study(machine, shop)));
    }
    return all;
  }
}
