package fettle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.desk.cli.Main;
import fettle.desk.cli.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The outputs printed in the README are what the program prints; {@code -Dfettle.write} renews
 * them.
 */
class ReadmeTest {

  private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
  private static final Pattern BLOCK =
      Pattern.compile("(<!-- output: (.*?) -->\n```\n)(.*?)(```\n<!-- end -->)", Pattern.DOTALL);

  @Test
  void theOutputInTheReadmeIsReal() throws IOException {
    Path readme = ROOT.resolve("README.md");
    String text = Files.readString(readme);
    Matcher block = BLOCK.matcher(text);
    StringBuilder renewed = new StringBuilder();
    int blocks = 0;
    while (block.find()) {
      blocks++;
      String output = output(block.group(2).split(" "));
      block.appendReplacement(
          renewed, Matcher.quoteReplacement(block.group(1) + output + block.group(4)));
    }
    block.appendTail(renewed);
    if (System.getProperty("fettle.write") != null) {
      Files.writeString(readme, renewed.toString());
    }
    assertThat(blocks).isPositive();
    assertThat(Files.readString(readme)).isEqualTo(renewed.toString());
  }

  private static String output(String[] args) {
    for (int i = 0; i < args.length; i++) {
      if (args[i].startsWith("examples/")) {
        args[i] = ROOT.resolve(args[i]).toString();
      }
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8);
    Main.run(args, new Terminal(out, out, 100, Terminal.Inks.PLAIN));
    return bytes.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
  }
}
