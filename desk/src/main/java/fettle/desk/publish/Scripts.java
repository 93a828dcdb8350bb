package fettle.desk.publish;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The scripts and style of the pages. A browser loads no module from disk, so the modules of the
 * picture in three dimensions are joined to plain scripts.
 */
final class Scripts {

  private static final String OWN = "/fettle/desk/web/";
  private static final String THREE = "/META-INF/resources/webjars/three/0.181.1/build/";
  private static final Pattern IMPORT =
      Pattern.compile("import\\{([^}]*)\\}from\"\\./three\\.core\\.min\\.js\";");
  private static final Pattern AGAIN =
      Pattern.compile("export\\{[^}]*\\}from\"\\./three\\.core\\.min\\.js\";");
  private static final Pattern EXPORT = Pattern.compile("export\\{([^}]*)\\};\\s*$");

  private Scripts() {}

  static String own(String name) {
    return read(OWN + name);
  }

  private static String read(String place) {
    try (InputStream in = Scripts.class.getResourceAsStream(place)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks " + place);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String style() {
    return own("desk.css") + own("site.css");
  }

  /** Returns the picture in three dimensions as a script that needs THREE. */
  static String solid() {
    String text = own("solid.js");
    int start = text.indexOf("export async function show(");
    int end = text.indexOf("async function showScene(");
    if (start < 0 || end < start) {
      throw new IllegalStateException("solid.js does not read as it should");
    }
    String plain = text.substring(0, start) + text.substring(end);
    return "var fettleShow = (function () {\n\"use strict\";\n"
        + plain.replaceFirst("import \\* as THREE from \"[^\"]*\";\n", "")
        + "return showScene;\n})();\n";
  }

  /** Returns the library for it as one script that sets THREE. */
  static String three() {
    String core = read(THREE + "three.core.min.js");
    String module = read(THREE + "three.module.min.js");
    return "var THREE = (function () {\n\"use strict\";\nvar core = (function () {\n"
        + returned(core)
        + "\n})();\nvar own = (function () {\n"
        + returned(AGAIN.matcher(imported(module)).replaceAll(""))
        + "\n})();\nreturn Object.assign({}, core, own);\n})();\n";
  }

  private static String imported(String text) {
    Matcher found = IMPORT.matcher(text);
    if (!found.find()) {
      throw new IllegalStateException("three.module.min.js does not read as it should");
    }
    List<String> names = new ArrayList<>();
    for (String one : found.group(1).split(",", -1)) {
      names.add(one.strip().replaceFirst("^(\\S+) as (\\S+)$", "$1:$2"));
    }
    return found.replaceFirst(
        Matcher.quoteReplacement("const {" + String.join(",", names) + "}=core;"));
  }

  private static String returned(String text) {
    Matcher found = EXPORT.matcher(text);
    if (!found.find()) {
      throw new IllegalStateException("three does not read as it should");
    }
    List<String> names = new ArrayList<>();
    for (String one : found.group(1).split(",", -1)) {
      names.add(one.strip().replaceFirst("^(\\S+) as (\\S+)$", "$2:$1"));
    }
    return found.replaceFirst(
        Matcher.quoteReplacement("return {" + String.join(",", names) + "};"));
  }
}
