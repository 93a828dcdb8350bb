package fettle.desk.web;

import fettle.desk.page.ReckonerPage;
import fettle.desk.page.Shell;
import fettle.machine.text.Nearest;
import fettle.mechanics.Reckoners;
import fettle.mechanics.base.Answer;
import fettle.mechanics.base.Input;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Reckoner;
import fettle.mechanics.base.Result;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The reckoners as pages: inputs, live result, working, and a link that brings both back. */
final class ReckonersRoom {

  private static final int DIGITS = 8;
  private static final int MOST_LINES = 400;
  private static final int LONGEST = 4_000;

  private ReckonersRoom() {}

  static ReckonerPage.Index index(Visit visit) {
    Map<String, List<Shell.Link>> groups = new LinkedHashMap<>();
    for (Reckoner reckoner : Reckoners.all()) {
      groups
          .computeIfAbsent(reckoner.group(), g -> new ArrayList<>())
          .add(new Shell.Link("/reckon/" + Visit.coded(reckoner.topic()), reckoner.title()));
    }
    return new ReckonerPage.Index(
        visit.plain("reckoners", "reckoners"),
        groups.entrySet().stream()
            .map(e -> new ReckonerPage.Group(e.getKey(), e.getValue()))
            .toList());
  }

  static ReckonerPage page(Visit visit, String topic) {
    Reckoner reckoner =
        Reckoners.of(topic)
            .orElseThrow(
                () ->
                    Refused.missing(
                        "There is no such reckoner.",
                        Nearest.hint(topic, Reckoners.all().stream().map(Reckoner::topic).toList())
                            + " Choose one from the list."));
    Map<String, String> typed = typed(visit, reckoner);
    StringBuilder link = new StringBuilder("/reckon/" + Visit.coded(topic));
    StringBuilder command = new StringBuilder("fettle reckon " + topic);
    char sign = '?';
    for (Map.Entry<String, String> e : typed.entrySet()) {
      link.append(sign).append(name(e.getKey())).append('=').append(Visit.coded(e.getValue()));
      sign = '&';
      boolean plain = e.getValue().matches("[A-Za-z0-9.+-]+");
      String quoted = plain ? e.getValue() : "'" + e.getValue().replace("'", "'\\''") + "'";
      command.append(' ').append(e.getKey()).append('=').append(quoted);
    }
    return new ReckonerPage(
        visit.plain(reckoner.title(), "reckoners"),
        topic,
        reckoner.title(),
        picture(reckoner),
        reckoner.inputs().stream().map(i -> field(i, typed)).toList(),
        result(reckoner, typed),
        link.toString(),
        command.toString(),
        reckoner.source().text());
  }

  /** Inputs stand in addresses with a sign in front, so that none is taken for one of ours. */
  private static String name(String input) {
    return "in." + Visit.coded(input);
  }

  private static Map<String, String> typed(Visit visit, Reckoner reckoner) {
    Map<String, String> typed = new LinkedHashMap<>();
    for (Input input : reckoner.inputs()) {
      String text = visit.asked("in." + input.name()).strip();
      if (text.length() > LONGEST) {
        throw Refused.wrong(input.name() + " is too long.", "Use the command line for long lists.");
      }
      if (!text.isEmpty()) {
        typed.put(input.name(), text);
      }
    }
    return typed;
  }

  private static ReckonerPage.Field field(Input input, Map<String, String> typed) {
    boolean wide =
        switch (input.kind()) {
          case ROWS, NUMBERS, EXACTS, WORDS -> true;
          default -> false;
        };
    return new ReckonerPage.Field(
        input.name(),
        input.unit().symbol(),
        input.meaning(),
        typed.getOrDefault(input.name(), ""),
        Optional.ofNullable(input.standard()).orElse(""),
        input.required() && input.standard() == null,
        wide,
        input.choices());
  }

  private static ReckonerPage.Result result(Reckoner reckoner, Map<String, String> typed) {
    List<String> open =
        reckoner.inputs().stream()
            .filter(i -> i.required() && i.standard() == null && !typed.containsKey(i.name()))
            .map(Input::name)
            .toList();
    if (!open.isEmpty()) {
      return said("", "Waiting for " + String.join(", ", open) + ".");
    }
    try {
      Answer answer = reckoner.answer(typed);
      if (answer.none() != null) {
        return said(answer.none(), "");
      }
      List<ReckonerPage.Line> lines = new ArrayList<>();
      answer.values().forEach((name, value) -> lines.add(line(reckoner, name, value)));
      return new ReckonerPage.Result(
          lines, answer.workings().stream().map(Working::text).toList(), answer.cautions(), "", "");
    } catch (IllegalArgumentException | ArithmeticException e) {
      return said(
          Objects.requireNonNullElse(e.getMessage(), "These inputs cannot be reckoned."), "");
    }
  }

  private static ReckonerPage.Result said(String wrong, String waits) {
    return new ReckonerPage.Result(List.of(), List.of(), List.of(), wrong, waits);
  }

  private static ReckonerPage.Line line(Reckoner reckoner, String name, Answer.Value value) {
    Result result = Objects.requireNonNull(reckoner.result(name));
    return new ReckonerPage.Line(
        name, result.meaning(), shown(value, result.unit()), unit(value, result.unit()));
  }

  private static String unit(Answer.Value value, Unit unit) {
    boolean words = value instanceof Answer.Value.Words || value instanceof Answer.Value.Lines;
    return words ? "" : unit.symbol().equals("deg") ? "°" : unit.symbol();
  }

  private static List<String> shown(Answer.Value value, Unit unit) {
    if (value instanceof Answer.Value.Real real) {
      return List.of(number(unit.fromCoherent(real.coherent())));
    } else if (value instanceof Answer.Value.Exact exact) {
      String number = number(unit.fromCoherent(exact.ratio().toDouble()));
      String text = exact.ratio().text();
      return List.of(text.equals(number) ? number : number + " (exactly " + text + ")");
    } else if (value instanceof Answer.Value.Several several) {
      return several.coherent().stream()
          .limit(MOST_LINES)
          .map(v -> number(unit.fromCoherent(v)))
          .toList();
    } else if (value instanceof Answer.Value.Words words) {
      return List.of(words.text());
    }
    return ((Answer.Value.Lines) value).lines().stream().limit(MOST_LINES).toList();
  }

  private static String number(double number) {
    String digits = Numbers.significant(number, DIGITS);
    return digits.startsWith("-") ? "−" + digits.substring(1) : digits;
  }

  /** Chooses the picture that explains a topic by what it asks for. */
  private static String picture(Reckoner reckoner) {
    String about = reckoner.topic() + " " + reckoner.title().toLowerCase(java.util.Locale.ROOT);
    Map<String, String> pictures = new LinkedHashMap<>();
    pictures.put("rack", "rack");
    pictures.put("dial", "dial");
    pictures.put("wire", "wires");
    pictures.put("screw|lead|thread|nut|infeed|tap", "thread");
    pictures.put("banjo|change gear|train|chain", "train");
    pictures.put("gear|teeth|tooth|mesh|centre distance", "gears");
    pictures.put("bearing|preload", "bearing");
    pictures.put("fit|hole|limit|press|shrink", "fit");
    pictures.put("belt|pulley", "belt");
    pictures.put("shaft|beam|deflection|bending|spindle", "beam");
    pictures.put("weld|bolt|clamp|joint", "clamp");
    return pictures.entrySet().stream()
        .filter(
            e -> java.util.regex.Pattern.compile("\\b(" + e.getKey() + ")").matcher(about).find())
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse("");
  }
}
