package fettle.desk.pack;

import fettle.machine.made.MadePart;
import fettle.mechanics.base.Numbers;
import fettle.planning.route.Route;
import fettle.planning.route.Workshop;
import java.util.ArrayList;
import java.util.List;

/** How each part is made on the lathe as it is before the change. */
final class MakingChapter {

  private static final double MINUTE = 60;
  private static final double RPM = Math.PI / 30;

  private MakingChapter() {}

  static Chapter of(PackSource source) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Prose(
            "Speeds and feeds to start from, for tools of high-speed steel; minutes to set up and"
                + " measure are common practice. Never above the speed marked on the chuck."));
    for (MadePart part : source.parts()) {
      Route route =
          Workshop.of(source.before(), source.book().shop(), part.recipe()).route(part.recipe());
      blocks.add(new Block.Heading(part.recipe().heading().title()));
      String time =
          source.shows(Held.HOURS)
              ? " About "
                  + minutes(route.time())
                  + ", from "
                  + minutes(route.shortest())
                  + " to "
                  + minutes(route.longest())
                  + " for each."
              : "";
      blocks.add(
          new Block.Prose(
              "From "
                  + route.stock()
                  + ", cut off "
                  + Numbers.fixed(route.cut(), 0)
                  + " mm."
                  + time));
      blocks.add(lines(route));
      route.lacks().forEach(l -> blocks.add(new Block.Point("The lathe lacks: " + l)));
    }
    return Chapter.of("How the parts are made", blocks);
  }

  private static Block.Grid lines(Route route) {
    List<List<String>> rows = new ArrayList<>();
    int setUp = 0;
    for (Route.Line line : route.lines()) {
      if (line.setUp() != setUp) {
        setUp = line.setUp();
        rows.add(List.of("Set-up " + setUp + ": " + line.holding()));
      }
      boolean turns = line.speed() > 0;
      rows.add(
          List.of(
              line.what(),
              line.cutter(),
              turns ? Numbers.fixed(line.speed() / RPM, 0) : "",
              turns ? Numbers.significant(line.feed(), 3) : "",
              turns ? String.valueOf(line.passes()) : ""));
    }
    return new Block.Grid(
        List.of(
            Block.Column.left("operation", 86),
            Block.Column.left("tool", 42),
            Block.Column.right("rpm", 14),
            Block.Column.right("mm a turn", 18),
            Block.Column.right("passes", 14)),
        rows);
  }

  private static String minutes(double seconds) {
    double all = seconds / MINUTE;
    return all < 90 ? Math.round(Math.max(1, all)) + " min" : Numbers.fixed(all / MINUTE, 1) + " h";
  }
}
