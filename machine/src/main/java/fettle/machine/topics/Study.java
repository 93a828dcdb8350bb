package fettle.machine.topics;

import java.util.ArrayList;
import java.util.List;

/**
 * What a topic has to say of a lathe.
 *
 * @param figures computed values
 * @param findings what wants attention
 */
public record Study(List<Figure> figures, List<Finding> findings) {

  /** Keeps its own copies. */
  public Study {
    figures = List.copyOf(figures);
    findings = List.copyOf(findings);
  }

  /** Returns both studies as one. */
  public Study and(Study other) {
    List<Figure> moreFigures = new ArrayList<>(figures);
    moreFigures.addAll(other.figures);
    List<Finding> moreFindings = new ArrayList<>(findings);
    moreFindings.addAll(other.findings);
    return new Study(moreFigures, moreFindings);
  }
}
