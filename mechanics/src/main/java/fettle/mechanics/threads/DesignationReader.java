package fettle.mechanics.threads;

import fettle.mechanics.base.Ratio;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads one thread designation; what it takes off the text is put into the reading. */
final class DesignationReader {

  private static final String EXPECTED =
      "a thread such as M10x1.25-6g, Tr 14x3 LH, Tr16x8P4, 7/16-10 Acme LH, 1/2-28 UNEF-2A,"
          + " 1/4 W 20 or 3/8 BSF";
  private static final int LONGEST = 60;
  private static final String NUMBER = "(\\d{1,6}(?:[.,]\\d{1,6})?|[.,]\\d{1,6})";
  private static final String METRIC_CLASS =
      "(?:[\\s-]+(\\d[A-Za-z](?:\\d[A-Za-z])?(?:/\\d[A-Za-z](?:\\d[A-Za-z])?)?))?"
          + "(?:-(?:[SNL]|\\d{1,4}))?";
  private static final Pattern HAND =
      Pattern.compile(
          "[\\s-]*\\(?(LH|RH|L\\.H\\.|R\\.H\\.|LEFT[ -]?HAND|RIGHT[ -]?HAND)\\)?(?![A-Z0-9])");
  private static final Pattern STARTS = Pattern.compile("[\\s,-]*(\\d{1,2})[ -]?STARTS?");
  private static final Pattern METRIC =
      Pattern.compile(
          "[Mm]\\s*"
              + NUMBER
              + "(?:\\s*[xX]\\s*(?:[Pp][Hh]\\s*"
              + NUMBER
              + "\\s*[Pp]\\s*"
              + NUMBER
              + "|"
              + NUMBER
              + "(?:\\s*\\(?\\s*[Pp]\\s*"
              + NUMBER
              + "\\s*\\)?)?))?"
              + METRIC_CLASS);
  private static final Pattern TRAPEZOIDAL =
      Pattern.compile(
          "[Tt][Rr]\\s*"
              + NUMBER
              + "(?:\\s*[xX]\\s*(?:[Pp][Hh]\\s*)?"
              + NUMBER
              + "(?:\\s*\\(?\\s*[Pp]\\s*"
              + NUMBER
              + "\\s*\\)?)?)?"
              + METRIC_CLASS);
  private static final String SIZE =
      "(#\\s?\\d{1,2}|NO\\.?\\s*\\d{1,2}|\\d{1,3}[ -]+\\d{1,3}/\\d{1,3}|\\d{1,3}/\\d{1,3}"
          + "|\\d{0,3}\\.\\d{1,6}|\\d{1,3})";
  private static final String PER_INCH =
      "(\\d{0,2}\\.\\d{1,5}P-\\d{0,2}\\.\\d{1,5}L|\\d{1,3}(?:\\.\\d{1,4}|[ -]1/2)?)(?:\\s*TPI)?";
  private static final String FORM =
      "(UNEF|UNC|UNF|UNS|UNR|UN|ACME|BSW|BSF|B\\.S\\.W\\.?|B\\.S\\.F\\.?|WHITWORTH|WHIT\\.?|ME|W)";
  private static final Pattern INCH =
      Pattern.compile(
          "(?:(W|BSW|BSF)\\s*)?"
              + SIZE
              + "\\s*(?:\"|INCH|IN\\.?)?"
              + "(?:(?:\\s*-\\s*|\\s*X\\s*|\\s+)"
              + PER_INCH
              + ")?"
              + "(?:[\\s-]*"
              + FORM
              + ")?"
              + "(?:(?:\\s*-\\s*|\\s*X\\s*|\\s+)"
              + PER_INCH
              + ")?"
              + "(?:[\\s-]+([1-3][AB](?:/[1-3][AB])?|[2-5][GC]|CLOSE|MEDIUM|FREE|NORMAL))?");

  private final String found;
  private String rest;
  private Hand hand = Hand.RIGHT;
  private int starts;

  DesignationReader(String text) {
    this.found = text.length() > LONGEST ? text.substring(0, LONGEST) + "…" : text.trim();
    if (text.length() > LONGEST || text.isBlank()) {
      throw wrong(EXPECTED);
    }
    this.rest = text.trim().replace('×', 'x').replace('*', 'x').replace('″', '"').replace('”', '"');
  }

  ThreadDesignation read() {
    takeHand();
    takeStarts();
    Matcher metric = METRIC.matcher(rest);
    if (metric.matches()) {
      return metric(metric);
    }
    Matcher trapezoidal = TRAPEZOIDAL.matcher(rest);
    if (trapezoidal.matches()) {
      return trapezoidal(trapezoidal);
    }
    Matcher inch = INCH.matcher(rest.toUpperCase(Locale.ROOT));
    if (inch.matches()) {
      return inch(inch);
    }
    throw wrong(EXPECTED);
  }

  private void takeHand() {
    Matcher m = HAND.matcher(rest.toUpperCase(Locale.ROOT));
    if (m.find()) {
      hand = m.group(1).startsWith("L") ? Hand.LEFT : Hand.RIGHT;
      rest = cut(m);
    }
  }

  private void takeStarts() {
    Matcher m = STARTS.matcher(rest.toUpperCase(Locale.ROOT));
    if (m.find()) {
      starts = Integer.parseInt(m.group(1));
      rest = cut(m);
    }
  }

  private String cut(Matcher m) {
    return (rest.substring(0, m.start()) + rest.substring(m.end())).trim();
  }

  private ThreadDesignation metric(Matcher m) {
    Ratio d = number(m.group(1));
    boolean ph = m.group(2) != null;
    String lead = ph ? m.group(2) : m.group(4);
    String pitch = ph ? m.group(3) : m.group(5);
    if (lead == null) {
      Ratio coarse =
          ThreadSeries.pitch("M", "coarse", d)
              .orElseThrow(
                  () -> wrong("the pitch too, for there is no coarse pitch for this diameter"));
      return made(ThreadForm.METRIC, "", d, coarse, coarse, m.group(6));
    }
    return made(
        ThreadForm.METRIC, "", d, number(lead), number(pitch == null ? lead : pitch), m.group(6));
  }

  private ThreadDesignation trapezoidal(Matcher m) {
    Ratio d = number(m.group(1));
    if (m.group(2) == null) {
      throw wrong("the pitch as well, such as Tr 16x4");
    }
    String pitch = m.group(3) == null ? m.group(2) : m.group(3);
    return made(ThreadForm.TRAPEZOIDAL, "", d, number(m.group(2)), number(pitch), m.group(4));
  }

  private ThreadDesignation inch(Matcher m) {
    String word = m.group(1) != null ? m.group(1) : m.group(4);
    String perInch = m.group(3) != null ? m.group(3) : m.group(5);
    if (m.group(3) != null && m.group(5) != null) {
      throw wrong(EXPECTED);
    }
    String name = series(word);
    Ratio[] leadAndPitch = perInch == null ? null : perInch(perInch);
    Ratio d = size(m.group(2), leadAndPitch == null ? null : leadAndPitch[1], name);
    if (leadAndPitch == null) {
      Ratio listed = listed(name, d);
      leadAndPitch = new Ratio[] {listed, listed};
    }
    Ratio pitch = leadAndPitch[1];
    if (name.isEmpty()) {
      name = ThreadSeries.unifiedSeries(d, pitch).orElse("");
    }
    if (name.isEmpty()) {
      throw wrong("the form as well: UNC, UNF, UNEF, UN, Acme, BSW, BSF, W or ME");
    }
    String fit = m.group(6) == null ? "" : m.group(6);
    if (fit.length() > 3 && !fit.contains("/")) {
      fit = fit.toLowerCase(Locale.ROOT);
    }
    return made(form(name), name.equals("Acme") ? "" : name, d, leadAndPitch[0], pitch, fit);
  }

  private static String series(@Nullable String word) {
    if (word == null) {
      return "";
    }
    String plain = word.replace(".", "");
    return switch (plain) {
      case "ACME" -> "Acme";
      case "WHITWORTH", "WHIT" -> "W";
      case "UNR" -> "UN";
      default -> plain;
    };
  }

  private static ThreadForm form(String series) {
    return switch (series) {
      case "Acme" -> ThreadForm.ACME;
      case "W", "BSW", "BSF", "ME" -> ThreadForm.WHITWORTH;
      default -> ThreadForm.UNIFIED;
    };
  }

  private Ratio listed(String name, Ratio d) {
    String in =
        switch (name) {
          case "Acme" -> "general purpose";
          case "W" -> "BSW";
          default -> name;
        };
    String form = name.isEmpty() ? "UN" : form(name).symbol();
    Optional<Ratio> pitch = ThreadSeries.pitch(form, in, d);
    return pitch.orElseThrow(
        () -> wrong("the threads per inch too, such as 7/16-10 Acme or 1/4-20 UNC"));
  }

  private Ratio size(String text, @Nullable Ratio pitch, String name) {
    String plain = text.replace("NO.", "#").replace("NO", "#").replace(" #", "#");
    if (plain.startsWith("#")) {
      return ThreadSeries.inches("#" + plain.substring(1).trim());
    }
    boolean unified = name.isEmpty() || name.startsWith("UN");
    boolean numbered =
        unified
            && plain.matches("\\d{1,2}")
            && pitch != null
            && ThreadSeries.isNumberedSize(plain, pitch);
    if (plain.matches(".*/0+")) {
      throw wrong("a fraction with a denominator that is not 0");
    }
    return ThreadSeries.inches(numbered ? "#" + plain : plain);
  }

  /** Lead and pitch. */
  private Ratio[] perInch(String text) {
    if (text.endsWith("L")) {
      String[] parts = text.split("P-", -1);
      Ratio pitch = Ratio.of(new BigDecimal(parts[0]));
      Ratio lead = Ratio.of(new BigDecimal(parts[1].substring(0, parts[1].length() - 1)));
      return new Ratio[] {lead.times(Ratio.INCH), pitch.times(Ratio.INCH)};
    }
    String[] parts = text.split("[ -]", -1);
    BigDecimal count = new BigDecimal(parts[0]);
    if (parts.length == 2) {
      count = count.add(new BigDecimal("0.5"));
    }
    if (count.signum() == 0) {
      throw wrong("threads per inch that are not 0");
    }
    Ratio pitch = Ratio.INCH.over(Ratio.of(count));
    return new Ratio[] {pitch, pitch};
  }

  private ThreadDesignation made(
      ThreadForm form, String series, Ratio d, Ratio lead, Ratio pitch, @Nullable String fit) {
    if (d.isZero() || pitch.isZero() || lead.isZero()) {
      throw wrong("sizes greater than 0");
    }
    Ratio ratio = lead.over(pitch).folded();
    if (!ratio.isWhole()) {
      throw wrong("a lead that is a whole multiple of the pitch");
    }
    int fromLead = ratio.numerator().min(java.math.BigInteger.valueOf(99)).intValueExact();
    if (starts > 0 && fromLead > 1 && starts != fromLead) {
      throw wrong("the same number of starts in words and by lead over pitch");
    }
    int many = starts > 0 ? starts : fromLead;
    return new ThreadDesignation(form, series, d, pitch, many, hand, fit == null ? "" : fit);
  }

  private static Ratio number(String text) {
    return Ratio.of(new BigDecimal(text.replace(',', '.')));
  }

  private IllegalArgumentException wrong(String expected) {
    return new IllegalArgumentException("thread: found '" + found + "', expected " + expected);
  }
}
