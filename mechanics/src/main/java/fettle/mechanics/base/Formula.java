package fettle.mechanics.base;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A formula in plain infix notation: numbers, names, {@code + - * / ^}, brackets, {@code pi} and
 * {@code sin cos tan asin acos atan sqrt exp ln abs min max}. It evaluates itself and writes itself
 * with the numbers put in, so the text of a working and its value come from one place.
 */
public final class Formula {

  private sealed interface Node {
    double value(Function<String, Double> values);

    String text(Function<String, String> put);

    int rank();
  }

  private record Literal(String text) implements Node {
    @Override
    public double value(Function<String, Double> values) {
      return Double.parseDouble(text);
    }

    @Override
    public String text(Function<String, String> put) {
      return text;
    }

    @Override
    public int rank() {
      return 5;
    }
  }

  private record Name(String name) implements Node {
    @Override
    public double value(Function<String, Double> values) {
      return name.equals("pi") ? Math.PI : values.apply(name);
    }

    @Override
    public String text(Function<String, String> put) {
      return name.equals("pi") ? "pi" : put.apply(name);
    }

    @Override
    public int rank() {
      return 5;
    }
  }

  private record Negative(Node of) implements Node {
    @Override
    public double value(Function<String, Double> values) {
      return -of.value(values);
    }

    @Override
    public String text(Function<String, String> put) {
      return "-" + bracketed(of, 3, put);
    }

    @Override
    public int rank() {
      return 2;
    }
  }

  private record Binary(char operator, Node left, Node right) implements Node {
    @Override
    public double value(Function<String, Double> values) {
      double a = left.value(values);
      double b = right.value(values);
      return switch (operator) {
        case '+' -> a + b;
        case '-' -> a - b;
        case '*' -> a * b;
        case '/' -> a / b;
        default -> Math.pow(a, b);
      };
    }

    @Override
    public String text(Function<String, String> put) {
      boolean power = operator == '^';
      String sign = rank() == 1 ? " " + operator + " " : String.valueOf(operator);
      int needRight = operator == '+' ? rank() : rank() + 1;
      return bracketed(left, power ? 5 : rank(), put)
          + sign
          + bracketed(right, power ? 5 : needRight, put);
    }

    @Override
    public int rank() {
      return switch (operator) {
        case '+', '-' -> 1;
        case '*', '/' -> 2;
        default -> 4;
      };
    }
  }

  private record Call(String function, List<Node> arguments) implements Node {
    @Override
    public double value(Function<String, Double> values) {
      double a = arguments.get(0).value(values);
      return switch (function) {
        case "sin" -> Math.sin(a);
        case "cos" -> Math.cos(a);
        case "tan" -> Math.tan(a);
        case "asin" -> Math.asin(a);
        case "acos" -> Math.acos(a);
        case "atan" -> Math.atan(a);
        case "sqrt" -> Math.sqrt(a);
        case "exp" -> Math.exp(a);
        case "ln" -> Math.log(a);
        case "abs" -> Math.abs(a);
        case "min" -> Math.min(a, arguments.get(1).value(values));
        default -> Math.max(a, arguments.get(1).value(values));
      };
    }

    @Override
    public String text(Function<String, String> put) {
      List<String> texts = new ArrayList<>();
      for (Node argument : arguments) {
        texts.add(argument.text(put));
      }
      return function + "(" + String.join(", ", texts) + ")";
    }

    @Override
    public int rank() {
      return 5;
    }
  }

  private static final List<String> ONE_ARGUMENT =
      List.of("sin", "cos", "tan", "asin", "acos", "atan", "sqrt", "exp", "ln", "abs");
  private static final List<String> TWO_ARGUMENTS = List.of("min", "max");

  private final Node root;

  private Formula(Node root) {
    this.root = root;
  }

  /** Reads a formula; an {@link IllegalArgumentException} tells where it cannot be read. */
  public static Formula parse(String text) {
    Reader reader = new Reader(text);
    Node node = reader.sum();
    reader.end();
    return new Formula(node);
  }

  /**
   * Evaluates the formula.
   *
   * @param values the number of each name [coherent]
   * @return the result [coherent]
   */
  public double value(Function<String, Double> values) {
    return root.value(values);
  }

  /** Writes the formula with each name replaced by what {@code put} gives for it. */
  public String text(Function<String, String> put) {
    return root.text(put);
  }

  private static String bracketed(Node node, int rank, Function<String, String> put) {
    String text = node.text(put);
    boolean negative = node instanceof Name && text.startsWith("-");
    return node.rank() < rank || negative ? "(" + text + ")" : text;
  }

  private static final class Reader {
    private final String text;
    private int at;

    Reader(String text) {
      this.text = text;
    }

    Node sum() {
      Node left = product();
      while (true) {
        if (take('+')) {
          left = new Binary('+', left, product());
        } else if (take('-')) {
          left = new Binary('-', left, product());
        } else {
          return left;
        }
      }
    }

    Node product() {
      Node left = factor();
      while (true) {
        if (take('*')) {
          left = new Binary('*', left, factor());
        } else if (take('/')) {
          left = new Binary('/', left, factor());
        } else {
          return left;
        }
      }
    }

    Node factor() {
      if (take('-')) {
        return new Negative(factor());
      }
      Node base = atom();
      return take('^') ? new Binary('^', base, factor()) : base;
    }

    Node atom() {
      skip();
      if (take('(')) {
        Node inner = sum();
        need(')');
        return inner;
      }
      int start = at;
      if (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
        return new Literal(number(start));
      }
      while (at < text.length() && isNamePart(text.charAt(at))) {
        at++;
      }
      if (at == start) {
        throw wrong("a number, a name or a bracket");
      }
      String name = text.substring(start, at);
      return take('(') ? call(name) : new Name(name);
    }

    private String number(int start) {
      while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
        at++;
      }
      if (at < text.length() && text.charAt(at) == 'e') {
        at++;
        if (at < text.length() && "+-".indexOf(text.charAt(at)) >= 0) {
          at++;
        }
        while (at < text.length() && Character.isDigit(text.charAt(at))) {
          at++;
        }
      }
      return text.substring(start, at);
    }

    private Node call(String name) {
      List<Node> arguments = new ArrayList<>(List.of(sum()));
      while (take(',')) {
        arguments.add(sum());
      }
      need(')');
      boolean fits =
          (ONE_ARGUMENT.contains(name) && arguments.size() == 1)
              || (TWO_ARGUMENTS.contains(name) && arguments.size() == 2);
      if (!fits) {
        throw wrong("a known function with its arguments instead of " + name);
      }
      return new Call(name, List.copyOf(arguments));
    }

    void end() {
      skip();
      if (at < text.length()) {
        throw wrong("the end");
      }
    }

    private static boolean isNamePart(char c) {
      return Character.isLetterOrDigit(c) || c == '_' || c == '\'';
    }

    private boolean take(char c) {
      skip();
      if (at < text.length() && text.charAt(at) == c) {
        at++;
        return true;
      }
      return false;
    }

    private void need(char c) {
      if (!take(c)) {
        throw wrong("'" + c + "'");
      }
    }

    private void skip() {
      while (at < text.length() && text.charAt(at) == ' ') {
        at++;
      }
    }

    private IllegalArgumentException wrong(String expected) {
      return new IllegalArgumentException(
          "formula '" + text + "': expected " + expected + " at position " + (at + 1));
    }
  }
}
