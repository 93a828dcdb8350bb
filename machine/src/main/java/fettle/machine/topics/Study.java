package fettle.machine.topics;

import fettle.mechanics.base.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * What a topic has to say of a lathe.
 *
 * @param figures computed values
 * @param findings what wants attention
 */
public record Study(List<Figure> figures, List<Finding> findings) {

  private static final Source SIZES = Source.derived("the sizes of the book taken together");

  /** Keeps its own copies. */
  public Study {
    figures = List.copyOf(figures);
    findings = List.copyOf(findings);
  }

  /**
   * Answers a question, or says why it has no answer for sizes that do not fit together.
   *
   * @param topic the question
   * @param subject what it is asked of
   * @param question gives the answer
   */
  static Study orReason(String topic, String subject, Supplier<Study> question) {
    try {
      return question.get();
    } catch (IllegalArgumentException e) {
      String reason = "The " + subject + " cannot be reckoned: " + e.getMessage() + ".";
      return new Study(
          List.of(),
          List.of(new Finding(Finding.Rank.CAUTION, topic + "/" + subject, reason, "", SIZES)));
    }
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
