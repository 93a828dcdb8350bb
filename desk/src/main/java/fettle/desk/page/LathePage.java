package fettle.desk.page;

import fettle.mechanics.base.Numbers;
import java.util.List;

/**
 * The lathe in one state.
 *
 * @param frame what frames it
 * @param states the states to choose from
 * @param picture the side elevation
 * @param sliders the seats that can be moved
 * @param keys key figures
 * @param findings what wants attention, worst first
 * @param verdict one line: how many findings of each rank
 * @param sections every figure, by topic
 * @param members the members, for those who do not touch the picture
 * @param closer pages that look closely at one thing
 */
public record LathePage(
    Shell frame,
    List<Choice> states,
    ElevationPage picture,
    List<Slider> sliders,
    List<Cell> keys,
    List<Opening> findings,
    String verdict,
    List<Section> sections,
    List<Shell.Link> members,
    List<Shell.Link> closer) {

  /** A state to choose. */
  public record Choice(String words, String key, String note, boolean chosen) {}

  /**
   * A seat that can be moved: its name in forms, its member, the axis it slides along, its range
   * and where it is.
   */
  public record Slider(
      String name, String member, String words, long most, long at, double per, String unit) {
    /** Returns where it stands, in the unit shown. */
    public String shown() {
      return per == 1 ? Long.toString(at) : Numbers.fixed(at / per, 2);
    }
  }

  /** A finding with where its figure opens. */
  public record Opening(ForecastPage.FindingLine finding, String href) {}

  /** Figures of one topic. */
  public record Section(String title, List<Cell> cells) {}
}
