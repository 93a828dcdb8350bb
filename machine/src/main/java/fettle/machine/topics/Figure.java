package fettle.machine.topics;

import fettle.mechanics.base.Source;
import fettle.mechanics.base.Working;
import java.util.Optional;

/**
 * One computed value of the lathe.
 *
 * @param topic the question it answers, e.g. {@code travel}
 * @param subject what it is about, e.g. {@code saddle drive}
 * @param name what it is, e.g. {@code travel per turn}
 * @param working its value with formula and doubt; empty if the figure is said in words
 * @param words the exact value or the statement in words; may be empty
 * @param better which way is better
 * @param source where its formula comes from
 */
public record Figure(
    String topic,
    String subject,
    String name,
    Optional<Working> working,
    String words,
    Better better,
    Source source) {

  /** Returns a figure with a number. */
  public static Figure of(
      String topic, String subject, String name, Working working, Better better, Source source) {
    if (Double.isNaN(working.value())) {
      throw new IllegalStateException(topic + ", " + subject + ": " + name + " is not a number");
    }
    return new Figure(topic, subject, name, Optional.of(working), "", better, source);
  }

  /** Returns a figure said in words. */
  public static Figure said(
      String topic, String subject, String name, String words, Source source) {
    return new Figure(topic, subject, name, Optional.empty(), words, Better.NEITHER, source);
  }

  /** Returns this figure with its exact value as text. */
  public Figure exactly(String text) {
    return new Figure(topic, subject, name, working, text, better, source);
  }

  /** Returns what tells it apart from all other figures. */
  public String id() {
    return topic + "/" + subject + "/" + name;
  }
}
