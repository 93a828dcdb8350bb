package fettle.sheets.dimension;

import java.util.List;

/**
 * Tolerance frames and a datum that go with a dimension, a note or a face.
 *
 * @param frames frames, one under the other
 * @param datum letter of the datum; empty for none
 */
public record Attached(List<ToleranceFrame> frames, String datum) {

  /** Nothing attached. */
  public static final Attached NOTHING = new Attached(List.of(), "");

  /** Keeps its own copy. */
  public Attached {
    frames = List.copyOf(frames);
  }

  /** Tells whether there is nothing to draw. */
  public boolean isEmpty() {
    return frames.isEmpty() && datum.isEmpty();
  }

  /** Returns the same for a leader that ends on a round surface but means its axis. */
  public Attached median() {
    return new Attached(frames.stream().map(ToleranceFrame::median).toList(), datum);
  }

  /**
   * Returns how long it is, frames and datum in a row.
   *
   * @return length [mm]
   */
  double length() {
    double frame = frames.stream().mapToDouble(ToleranceFrame::width).max().orElse(0);
    return frame + (datum.isEmpty() ? 0 : FrameMarks.DATUM);
  }

  /**
   * Returns how high the stack of frames is.
   *
   * @return height [mm]
   */
  double height() {
    return frames.size() * ToleranceFrame.HEIGHT;
  }
}
