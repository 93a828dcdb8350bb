package fettle.mechanics.gears;

import fettle.mechanics.base.Ratio;
import java.util.List;

/**
 * A kinematic chain from a turning input to a turning output or to a travel, exact throughout: the
 * factors of its elements multiplied, π and the inch kept as symbols.
 *
 * @param elements elements from the input on; only the last may end in a travel
 */
public record Chain(List<Element> elements) {

  /** Refuses an empty chain and a travel that is not at its end. */
  public Chain {
    elements = List.copyOf(elements);
    if (elements.isEmpty()) {
      throw new IllegalArgumentException("a chain needs at least one element");
    }
    if (elements.size() > 100) {
      throw new IllegalArgumentException(
          "a chain takes at most 100 elements, found " + elements.size());
    }
    for (Element element : elements.subList(0, elements.size() - 1)) {
      if (element.linear()) {
        throw new IllegalArgumentException(
            "a screw or a rack must be the last element of a chain; found one before the end");
      }
    }
  }

  /** Returns a chain of these elements. */
  public static Chain of(Element... elements) {
    return new Chain(List.of(elements));
  }

  /** Returns turns out per turn in, or travel per turn [mm], without sign. */
  public Ratio factor() {
    Ratio product = Ratio.ONE;
    for (Element element : elements) {
      product = product.times(element.factor());
    }
    return product;
  }

  /** Returns +1 if output and input have the same sense, -1 if it is reversed. */
  public int sense() {
    int sense = 1;
    for (Element element : elements) {
      sense *= element.sense();
    }
    return sense;
  }

  /** Tells whether the chain ends in a travel. */
  public boolean linear() {
    return elements.get(elements.size() - 1).linear();
  }

  /** Tells whether no element slips. */
  public boolean positive() {
    return elements.stream().allMatch(Element::positive);
  }

  /** Tells whether the factor is exactly metric or inch: no slip, and free of π. */
  public boolean exact() {
    return positive() && factor().isRational();
  }

  /** Returns the factor as a formula with the numbers of every element. */
  public String formula() {
    return String.join("*", elements.stream().map(Element::formula).toList());
  }
}
