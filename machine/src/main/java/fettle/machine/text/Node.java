package fettle.machine.text;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A piece of a YAML text, with its place. */
public sealed interface Node {

  /** Returns where it stands. */
  Place at();

  /** Returns what it is, in a few words, for a message. */
  String words();

  /**
   * A single value.
   *
   * @param text the value as written, without quotes
   * @param quoted true if it was written in quotes or as a block
   * @param at where it stands
   */
  record Scalar(String text, boolean quoted, Place at) implements Node {
    @Override
    public String words() {
      return "'" + text + "'";
    }
  }

  /**
   * Values by name, in the order written.
   *
   * @param entries entry of each name
   * @param at where it starts
   */
  record Mapping(Map<String, Entry> entries, Place at) implements Node {
    /** Keeps its own copy. */
    public Mapping {
      entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
    }

    @Override
    public String words() {
      return "a block of " + entries.size() + (entries.size() == 1 ? " key" : " keys");
    }
  }

  /**
   * A value and the place of its name.
   *
   * @param keyAt where the name stands
   * @param value the value
   */
  record Entry(Place keyAt, Node value) {}

  /**
   * Values in a row.
   *
   * @param items the values
   * @param at where it starts
   */
  record Listing(List<Node> items, Place at) implements Node {
    /** Keeps its own copy. */
    public Listing {
      items = List.copyOf(items);
    }

    @Override
    public String words() {
      return "a list of " + items.size();
    }
  }

  /**
   * No value: {@code null}, {@code ~}, or nothing written.
   *
   * @param written true if the word null or ~ was written
   * @param at where it stands
   */
  record Nothing(boolean written, Place at) implements Node {
    @Override
    public String words() {
      return written ? "null" : "nothing";
    }
  }
}
