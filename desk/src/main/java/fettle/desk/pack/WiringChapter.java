package fettle.desk.pack;

import fettle.machine.dictionary.Values;
import fettle.machine.topics.Panel;
import fettle.machine.topics.Wiring;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.electrics.ElectricsReckoners;
import fettle.sheets.PanelLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Wires and terminals of the control box, where a change describes them. */
final class WiringChapter {

  private WiringChapter() {}

  static Optional<Chapter> of(PackSource source) {
    boolean own =
        source.change().differs() instanceof fettle.machine.text.Node.Mapping m
            && m.entries().containsKey("control box");
    Optional<Values> box = source.after().values().block("control box");
    if (!own || box.isEmpty()) {
      return Optional.empty();
    }
    Wiring wiring = Wiring.of(box.get());
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Caution(ElectricsReckoners.DEFERENCE));
    blocks.add(new Block.Heading("Wiring list"));
    blocks.add(list(wiring));
    blocks.add(new Block.Caution(ElectricsReckoners.DEFERENCE));
    blocks.add(new Block.Heading("Terminal plan"));
    blocks.add(terminals(wiring));
    PanelLayout.of(source.book(), source.change(), source.parts())
        .ifPresent(
            layout -> {
              blocks.add(new Block.Heading("Devices"));
              blocks.add(devices(layout.panel()));
            });
    List<String> wrong = wiring.wrong();
    if (!wrong.isEmpty()) {
      blocks.add(new Block.Heading("Wrong with the list"));
      wrong.forEach(w -> blocks.add(new Block.Point(w)));
    }
    blocks.add(new Block.Heading("Record of the tests, by the licensed person"));
    blocks.add(tests());
    return Optional.of(Chapter.of("Wiring", blocks));
  }

  private static Block.Grid list(Wiring wiring) {
    List<List<String>> rows = new ArrayList<>();
    for (Wiring.Wire w : wiring.wires()) {
      rows.add(
          List.of(
              w.number(),
              w.from(),
              w.to(),
              w.potential(),
              Numbers.significant(w.section(), 4),
              w.colour(),
              Numbers.significant(w.length() / 1000, 3),
              w.ends()));
    }
    return new Block.Grid(
        List.of(
            Block.Column.left("no.", 8),
            Block.Column.left("from", 22),
            Block.Column.left("to", 34),
            Block.Column.left("potential", 28),
            Block.Column.right("mm²", 10),
            Block.Column.left("colour", 24),
            Block.Column.right("m", 9),
            Block.Column.left("ends", 38)),
        rows);
  }

  private static Block.Grid terminals(Wiring wiring) {
    List<List<String>> rows = new ArrayList<>();
    wiring
        .terminals()
        .forEach(
            (terminal, wires) ->
                rows.add(
                    List.of(
                        terminal,
                        wires.get(0).potential(),
                        String.join(", ", wires.stream().map(Wiring.Wire::number).toList()))));
    return new Block.Grid(
        List.of(
            Block.Column.left("terminal", 60),
            Block.Column.left("potential", 50),
            Block.Column.left("wires", 40)),
        rows);
  }

  private static Block.Grid devices(Panel panel) {
    List<List<String>> rows = new ArrayList<>();
    for (Panel.Device d : panel.devices()) {
      rows.add(List.of(d.designation(), d.what(), d.rated(), d.sits()));
    }
    return new Block.Grid(
        List.of(
            Block.Column.left("device", 18),
            Block.Column.left("what", 62),
            Block.Column.left("ratings", 34),
            Block.Column.left("sits on", 44)),
        rows);
  }

  /** The tests of machine electrics, as a form; what they must give is the licensed person's. */
  private static Block.Form tests() {
    List<List<String>> rows = new ArrayList<>();
    for (String test :
        List.of(
            "built as the papers say",
            "protective bonding carries through",
            "supply switches off by itself on a fault",
            "insulation",
            "voltage left after switching off",
            "emergency stop from every position",
            "no start when the supply returns",
            "guards and interlocks stop the spindle",
            "name, licence, date")) {
      rows.add(List.of(test));
    }
    return new Block.Form(List.of("test", "result                    "), rows);
  }
}
