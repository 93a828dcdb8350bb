package fettle.machine.topics;

import fettle.machine.lathe.Element;
import fettle.machine.lathe.Train;
import fettle.machine.text.Quantity;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import java.util.ArrayList;
import java.util.List;

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
    Writer writer = new Writer(step);
    elements.forEach(writer::add);
    String text = writer.factors.isEmpty() ? "1" : String.join("*", writer.factors);
    return new ChainFormula(text, List.copyOf(writer.terms));
  }

  private static final class Writer {
    private final List<String> factors = new ArrayList<>();
    private final List<Term> terms = new ArrayList<>();
    private final String step;
    private int teeth;
    private int lengths;

    Writer(String step) {
      this.step = step;
    }

    void add(Element element) {
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
        factors.add(number("i", box.set().toDouble()));
      } else if (element instanceof Element.Rack rack) {
        rack(rack);
      } else if (element instanceof Element.Screw screw) {
        lengths++;
        String pitch = "P" + (lengths > 1 ? lengths : "");
        Unit unit = screw.thread().form().isInch() ? Unit.TPI : Unit.MM;
        terms.add(Term.exact(pitch, screw.thread().pitch().toDouble(), unit));
        factors.add(number("n", screw.thread().starts()) + "*" + pitch);
      } else if (element instanceof Element.Belt belt) {
        belt(belt);
      } else if (element instanceof Element.BackGear back && !step.contains("direct")) {
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

    private void belt(Element.Belt belt) {
      if (belt.exact()) {
        ratio(belt.values().needCount("driver teeth"), belt.values().needCount("driven teeth"));
        return;
      }
      fettle.machine.dictionary.Values pulleys = belt.values();
      for (String name : belt.values().map("steps").keySet()) {
        if (step.equals(name) || step.startsWith(name + ", ") || step.endsWith(", " + name)) {
          pulleys = belt.values().map("steps").get(name);
        }
      }
      if (pulleys == null) {
        throw new IllegalStateException("belt " + belt.name() + " has no step " + step);
      }
      terms.add(pulleys.need("driver").term("d1"));
      terms.add(pulleys.need("driven").term("d2"));
      terms.add(belt.values().need("slip").term("s"));
      factors.add("d1/d2*(1 - s)");
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
