package fettle.desk.web;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The few files a page loads: style, scripts and lettering, all from within the program. */
final class Assets {

  private static final long START = System.nanoTime();
  private static final Map<String, byte[]> KNOWN = new ConcurrentHashMap<>();
  private static final String LIBRARIES = "/META-INF/resources/webjars/";
  private static final Map<String, String> PLACES =
      Map.of(
          "desk.css", "/fettle/desk/web/desk.css",
          "desk.js", "/fettle/desk/web/desk.js",
          "solid.js", "/fettle/desk/web/solid.js",
          "icon.svg", "/fettle/desk/web/icon.svg",
          "htmx.min.js", LIBRARIES + "htmx.org/2.0.4/dist/htmx.min.js",
          "three.module.min.js", LIBRARIES + "three/0.181.1/build/three.module.min.js",
          "three.core.min.js", LIBRARIES + "three/0.181.1/build/three.core.min.js");
  private static final Map<String, String> TYPES =
      Map.of(
          "css", "text/css; charset=utf-8",
          "js", "text/javascript; charset=utf-8",
          "svg", "image/svg+xml",
          "woff2", "font/woff2");

  private Assets() {}

  /** Sends a file, or says that there is none. */
  static void send(Context context) {
    String name = context.pathParam("name");
    String place = PLACES.get(name);
    if (place == null) {
      throw Refused.missing("There is no such file.", "Go back to the lathe.");
    }
    context.contentType(
        TYPES.getOrDefault(name.substring(name.lastIndexOf('.') + 1), "text/plain"));
    context.header("Cache-Control", "no-cache");
    String mark = "\"" + Marks.of(place + START) + "\"";
    context.header("ETag", mark);
    if (mark.equals(context.header("If-None-Match"))) {
      context.status(304);
      return;
    }
    context.result(KNOWN.computeIfAbsent(place, Assets::bytes));
  }

  /** Returns the text of a file that lies beside this class. */
  static String text(String name) {
    return new String(bytes("/fettle/desk/web/" + name), StandardCharsets.UTF_8);
  }

  private static byte[] bytes(String place) {
    try (InputStream in = Assets.class.getResourceAsStream(place)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks " + place);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
