package fettle.desk.web;

import io.javalin.http.Context;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Lets in only requests from our own pages on this machine: the host must be the loopback address
 * that was printed, another site's page may neither read nor write, and a form must carry the token
 * of this run.
 */
final class Guard {

  private static final Map<String, String> HEADERS =
      Map.of(
          "Content-Security-Policy",
          "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src"
              + " 'self'; connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors"
              + " 'none'",
          "X-Content-Type-Options",
          "nosniff",
          "X-Frame-Options",
          "DENY",
          "Referrer-Policy",
          "same-origin",
          "Cross-Origin-Opener-Policy",
          "same-origin",
          "Cross-Origin-Resource-Policy",
          "same-origin",
          "Permissions-Policy",
          "camera=(), microphone=(), geolocation=()");

  private static final Set<String> METHODS = Set.of("GET", "HEAD", "POST");
  private static final int LONGEST_ADDRESS = 16_000;

  private final String token;

  Guard() {
    byte[] random = new byte[24];
    new SecureRandom().nextBytes(random);
    token = Base64.getUrlEncoder().withoutPadding().encodeToString(random);
  }

  String token() {
    return token;
  }

  /** Refuses what does not come from our own pages. */
  void check(Context context) {
    HEADERS.forEach(context::header);
    context.header("Cache-Control", "no-store");
    int port = context.req().getLocalPort();
    Set<String> ours = Set.of("127.0.0.1:" + port, "localhost:" + port, "[::1]:" + port);
    String host = String.valueOf(context.header("Host")).toLowerCase(Locale.ROOT);
    if (!ours.contains(host)) {
      throw Refused.foreign("The desk answers to its own address on this machine only.");
    }
    if (!METHODS.contains(context.req().getMethod())) {
      throw Refused.wrong("The desk knows reading and sending forms only.", "Open a page.");
    }
    String query = context.queryString();
    if (query != null && query.length() > LONGEST_ADDRESS) {
      throw Refused.wrong("The address is too long.", "Use a shorter one.");
    }
    String origin = context.header("Origin");
    if (origin != null && !origin.equals("http://" + host)) {
      throw Refused.foreign("The request comes from another site.");
    }
    boolean post = context.req().getMethod().equals("POST");
    site(context.header("Sec-Fetch-Site"), post);
    if (post) {
      form(context);
    }
  }

  private static void site(@org.jspecify.annotations.Nullable String site, boolean post) {
    boolean own = site == null || site.equals("same-origin") || (!post && site.equals("none"));
    if (!own) {
      throw Refused.foreign("The request comes from another site.");
    }
  }

  private void form(Context context) {
    String type = String.valueOf(context.header("Content-Type")).toLowerCase(Locale.ROOT);
    if (!type.matches("application/x-www-form-urlencoded(; ?charset=utf-8)?")) {
      throw Refused.wrong("The desk takes ordinary forms only.", "Use the form of a page.");
    }
    String sent = context.formParam("token");
    byte[] given = String.valueOf(sent).getBytes(java.nio.charset.StandardCharsets.UTF_8);
    byte[] wanted = token.getBytes(java.nio.charset.StandardCharsets.UTF_8);
    if (!java.security.MessageDigest.isEqual(given, wanted)) {
      throw Refused.foreign(
          "The form is not from a page of this run of the desk; load the page again.");
    }
  }
}
