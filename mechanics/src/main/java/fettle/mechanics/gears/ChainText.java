package fettle.mechanics.gears;

import fettle.mechanics.base.Ratio;
import fettle.mechanics.base.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a chain from text, one element after the other: {@code pair 15 60}, {@code internal 20 60},
 * {@code idler 30}, {@code belt 20 48}, {@code vee 60 120}, {@code worm 1 40 left}, {@code
 * coupling}, {@code screw 3 mm 2 starts left}, {@code screw 10 tpi}, {@code rack 14 module 1.5},
 * {@code rack 15 16 DP}, {@code rack 16 pitch 5}.
 */
public final class ChainText {

  private static final String NUMBER = "(\\d{1,12}(?:\\.\\d{1,12})?(?:/\\d{1,9})?)";
  private static final String LENGTH = NUMBER + "\\s*(mm|in|tpi|DP)?";
  private static final String COUNT = "(\\d{1,9})";
  private static final Pattern TWO =
      Pattern.compile("(pair|internal|belt)\\s+" + COUNT + "\\s*[/ ]\\s*" + COUNT);
  private static final Pattern IDLER = Pattern.compile("idler\\s+" + COUNT);
  private static final Pattern VEE = Pattern.compile("(?:vee|flat)\\s+" + NUMBER + "\\s+" + NUMBER);
  private static final Pattern WORM =
      Pattern.compile("worm\\s+" + COUNT + "\\s+" + COUNT + "(\\s+left|\\s+right)?");
  private static final Pattern SCREW =
      Pattern.compile(
          "screw\\s+" + LENGTH + "(?:\\s+" + COUNT + "\\s+starts?)?(\\s+left|\\s+right)?");
  private static final Pattern RACK =
      Pattern.compile("rack\\s+" + COUNT + "\\s+(module|pitch)?\\s*" + LENGTH);

  private ChainText() {}

  /** Reads the elements; an {@link IllegalArgumentException} tells which cannot be read. */
  public static Chain parse(List<String> texts) {
    List<Element> elements = new ArrayList<>();
    for (String text : texts) {
      elements.add(element(text.trim()));
    }
    return new Chain(elements);
  }

  private static Element element(String text) {
    Matcher two = TWO.matcher(text);
    if (two.matches()) {
      int a = Integer.parseInt(two.group(2));
      int b = Integer.parseInt(two.group(3));
      return switch (two.group(1)) {
        case "pair" -> new Element.SpurPair(a, b);
        case "internal" -> new Element.InternalPair(a, b);
        default -> new Element.ToothedBelt(a, b);
      };
    }
    Matcher idler = IDLER.matcher(text);
    if (idler.matches()) {
      return new Element.Idler(Integer.parseInt(idler.group(1)));
    }
    Matcher vee = VEE.matcher(text);
    if (vee.matches()) {
      return new Element.FrictionBelt(number(vee.group(1)), number(vee.group(2)));
    }
    Matcher worm = WORM.matcher(text);
    if (worm.matches()) {
      return new Element.Worm(
          Integer.parseInt(worm.group(1)), Integer.parseInt(worm.group(2)), hand(worm.group(3)));
    }
    if (text.equals("coupling")) {
      return new Element.Coupling();
    }
    return travel(text);
  }

  private static Element travel(String text) {
    Matcher screw = SCREW.matcher(text);
    if (screw.matches() && !"DP".equals(screw.group(2))) {
      int starts = screw.group(3) == null ? 1 : Integer.parseInt(screw.group(3));
      return new Element.Screw(
          length(screw.group(1), screw.group(2), text), starts, hand(screw.group(4)));
    }
    Matcher rack = RACK.matcher(text);
    if (rack.matches() && !"tpi".equals(rack.group(4))) {
      boolean dp = "DP".equals(rack.group(4));
      Ratio size = length(rack.group(3), rack.group(4), text);
      boolean module = dp || "module".equals(rack.group(2));
      if (module || "pitch".equals(rack.group(2))) {
        return new Element.RackAndPinion(
            Integer.parseInt(rack.group(1)), module ? size.times(Ratio.PI) : size);
      }
    }
    throw new IllegalArgumentException(
        "chain element '"
            + (text.length() > 60 ? text.substring(0, 60) + "…" : text)
            + "' is not understood; expected one of: pair 15 60, internal 20 60, idler 30, belt 20"
            + " 48, vee 60 120, worm 1 40 left, coupling, screw 3 mm 2 starts left, screw 10 tpi,"
            + " rack 14 module 1.5, rack 15 16 DP, rack 16 pitch 5");
  }

  private static Hand hand(@org.jspecify.annotations.Nullable String word) {
    return word != null && word.trim().equals("left") ? Hand.LEFT : Hand.RIGHT;
  }

  private static Ratio length(
      String number, @org.jspecify.annotations.Nullable String symbol, String text) {
    Ratio value = number(number);
    if (value.isZero()) {
      throw new IllegalArgumentException("'" + text + "': a length must be above 0");
    }
    return Unit.parse(symbol == null ? "mm" : symbol).orElse(Unit.MM).toCoherent(value);
  }

  private static Ratio number(String text) {
    int slash = text.indexOf('/');
    if (slash < 0) {
      return Ratio.of(new BigDecimal(text));
    }
    return Ratio.of(new BigDecimal(text.substring(0, slash)))
        .over(Long.parseLong(text.substring(slash + 1)));
  }
}
