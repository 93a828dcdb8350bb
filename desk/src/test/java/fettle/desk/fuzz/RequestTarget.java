package fettle.desk.fuzz;

import fettle.desk.web.Desk;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Bytes sent to a desk. The words {@code HERE}, {@code TOKEN} and {@code MARK} in them become the
 * desk's own host, token and mark, so that the bytes get past the first door, too.
 */
final class RequestTarget {

  private static final int PATIENCE = 60_000;
  private static final Desk DESK = desk();
  private static final URI HOME = URI.create(DESK.address());
  private static final String TOKEN = hidden("token");
  private static final String MARK = hidden("mark");

  private RequestTarget() {}

  /** Sends the bytes; the answer may be a refusal, but no fault of the program. */
  public static void fuzzerTestOneInput(byte[] input) throws IOException {
    String text =
        new String(input, StandardCharsets.ISO_8859_1)
            .replace("HERE", HOME.getAuthority())
            .replace("TOKEN", TOKEN)
            .replace("MARK", MARK);
    String answer = answer(text);
    if (answer.startsWith("HTTP/1.1 500") || answer.contains("is at fault")) {
      throw new IllegalStateException("the desk answers " + answer);
    }
    if (answer.contains("<script>alert")) {
      throw new IllegalStateException("a script comes back " + answer);
    }
  }

  private static String answer(String request) throws IOException {
    try (Socket socket = new Socket()) {
      socket.connect(new InetSocketAddress(HOME.getHost(), HOME.getPort()), PATIENCE);
      socket.setSoTimeout(PATIENCE);
      OutputStream out = socket.getOutputStream();
      out.write(request.getBytes(StandardCharsets.ISO_8859_1));
      out.flush();
      socket.shutdownOutput();
      InputStream in = socket.getInputStream();
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (SocketException e) {
      return ""; // the desk hung up on what was no request
    }
  }

  private static Desk desk() {
    try {
      return Desk.start(SmallBook.write(Files.createTempDirectory("fettle-fuzz-")), 0);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String hidden(String name) {
    try {
      String page =
          answer(
              "GET /value?file=machine.yaml&path=name HTTP/1.1\r\nHost: "
                  + HOME.getAuthority()
                  + "\r\nConnection: close\r\n\r\n");
      Matcher field = Pattern.compile("name=\"" + name + "\" value=\"([^\"]*)\"").matcher(page);
      return field.find() ? field.group(1) : "";
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
