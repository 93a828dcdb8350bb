package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Element;
import fettle.machine.lathe.Train;
import fettle.machine.text.Quantity;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The formula of a train from its elements, with the tooth counts and pitches put in.
 *
 * @param text the product in symbols
 * @param terms the numbers, in order
 */
record ChainFormula(String text, List<Term> terms) {

  /** Returns the formula of a whole train; a train with steps gives that of the named step. */
  static ChainFormula of(Train train, String step) {
    return of(train.elements(), step);
  }

  /** Returns the formula of some elements in a row. */
  static ChainFormula of(List<Element> elements, String step) {
    List<String> settings = settings(elements, step);
    Writer writer = new Writer();
    for (int i = 0; i < elements.size(); i++) {
      writer.add(elements.get(i), settings.get(i));
    }
    String text = writer.factors.isEmpty() ? "1" : String.join("*", writer.factors);
    return new ChainFormula(text, List.copyOf(writer.terms));
  }

  /** Returns the setting of each element that makes up a step of the train. */
  private static List<String> settings(List<Element> elements, String step) {
    List<String> settings = new ArrayList<>();
    String rest = step;
    for (Element element : elements) {
      String longest = null;
      for (String name : element.factors().keySet()) {
        boolean fits = rest.equals(name) || name.isEmpty() || rest.startsWith(name + ", ");
        if (fits && (longest == null || name.length() > longest.length())) {
          longest = name;
        }
      }
      if (longest == null) {
        throw new IllegalStateException(element.name() + " has no step of '" + step + "'");
      }
      settings.add(longest);
      if (!longest.isEmpty()) {
        rest = rest.substring(Math.min(rest.length(), longest.length() + 2));
      }
    }
    return settings;
  }

  private static final class Writer {
    private final List<String> factors = new ArrayList<>();
    private final List<Term> terms = new ArrayList<>();
    private int teeth;
    private int lengths;
    private int boxes;
    private int belts;

    void add(Element element, String step) {
      if (element instanceof Element.GearPair pair) {
        ratio(pair.driver(), pair.driven());
      } else if (element instanceof Element.Tumbler) {
        ratio(element.values().needCount("driver"), element.values().needCount("driven"));
      } else if (element instanceof Element.ChangeGears gears) {
        for (int i = 0; i + 1 < gears.wheels().size(); i += 2) {
          ratio(gears.wheels().get(i), gears.wheels().get(i + 1));
        }
      } else if (element instanceof Element.Worm) {
        ratio(element.values().needCount("starts"), element.values().needCount("wheel"));
      } else if (element instanceof Element.Box box) {
        boxes++;
        factors.add(number("i" + (boxes > 1 ? boxes : ""), box.set().toDouble()));
      } else if (element instanceof Element.Rack rack) {
        rack(rack);
      } else if (element instanceof Element.Screw screw) {
        lengths++;
        String pitch = "P" + (lengths > 1 ? lengths : "");
        Unit unit = screw.thread().form().isInch() ? Unit.TPI : Unit.MM;
        terms.add(Term.exact(pitch, screw.thread().pitch().toDouble(), unit));
        factors.add(number("n", screw.thread().starts()) + "*" + pitch);
      } else if (element instanceof Element.Belt belt) {
        belt(belt, step);
      } else if (element instanceof Element.BackGear back && !step.equals("direct")) {
        ratio(back.values().needCount("first driver"), back.values().needCount("first driven"));
        ratio(back.values().needCount("second driver"), back.values().needCount("second driven"));
      }
    }

    private void rack(Element.Rack rack) {
      teeth++;
      String pinion = number("z" + teeth, rack.pinion());
      lengths++;
      if (rack.values().has("module")) {
        Quantity module = rack.values().need("module");
        terms.add(Term.exact("m", module.value(), module.unit()));
        factors.add("pi*m*" + pinion);
      } else {
        Quantity pitch = rack.values().need("pitch");
        terms.add(Term.exact("p", pitch.value(), pitch.unit()));
        factors.add("p*" + pinion);
      }
    }

    private void belt(Element.Belt belt, String step) {
      if (belt.exact()) {
        ratio(belt.values().needCount("driver teeth"), belt.values().needCount("driven teeth"));
        return;
      }
      Values pulleys =
          step.isEmpty()
              ? belt.values()
              : Objects.requireNonNull(belt.values().map("steps").get(step));
      belts++;
      String driver = "dp" + (2 * belts - 1);
      String driven = "dp" + 2 * belts;
      String slip = "slip" + (belts > 1 ? belts : "");
      terms.add(pulleys.need("driver").term(driver));
      terms.add(pulleys.need("driven").term(driven));
      terms.add(belt.values().need("slip").term(slip));
      factors.add(driver + "/" + driven + "*(1 - " + slip + ")");
    }

    private void ratio(int driver, int driven) {
      teeth++;
      String a = number("z" + teeth, driver);
      teeth++;
      factors.add(a + "/" + number("z" + teeth, driven));
    }

    private String number(String symbol, double value) {
      terms.add(Term.exact(symbol, value));
      return symbol;
    }
  }
}
