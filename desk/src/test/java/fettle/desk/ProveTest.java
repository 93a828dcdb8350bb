package fettle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import fettle.desk.cli.Main;
import fettle.desk.cli.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code fettle prove} from end to end. */
class ProveTest {

  private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
  private static final String BOOK = ROOT.resolve("examples/dunlin-85").toString();

  /** What a command wrote and how it ended. */
  private record Run(int status, String text) {}

  @Test
  void aFigureThatIsNotGoodEndsWithOne() {
    Run all = run("prove", BOOK);
    assertThat(all.status).isEqualTo(1);
    assertThat(all.text).contains("NOT GOOD", "CANNOT TELL", "GOOD", "shim", "En = ");
    assertThat(run("prove", BOOK, "saddle-dial").status).isZero();
    assertThat(run("prove", BOOK, "sadle-dial").status).isEqualTo(2);
  }

  @Test
  void theJsonKeepsItsSchema() throws IOException {
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Files.readString(ROOT.resolve("docs/prove.schema.json")), InputFormat.JSON);
    String json = run("prove", BOOK, "--json").text;
    assertThat(schema.validate(json, InputFormat.JSON)).isEmpty();
    assertThat(schema.validate(json.replace("cannot tell", "maybe"), InputFormat.JSON))
        .isNotEmpty();
  }

  @Test
  void aWrongReadingIsSaidWithFileAndLine(@TempDir Path book) throws IOException {
    for (String file : new String[] {"machine.yaml", "shop.yaml", "trials/tailstock.yaml"}) {
      Path to = book.resolve(file);
      Files.createDirectories(to.resolveSibling("."));
      Files.copy(Path.of(BOOK, file), to);
    }
    String csv = Files.readString(Path.of(BOOK, "trials/tailstock.csv"));
    Files.writeString(book.resolve("trials/tailstock.csv"), csv + "5,h,head,nan\n");
    Run run = run("prove", book.toString());
    assertThat(run.status).isEqualTo(2);
    assertThat(run.text).contains("trials/tailstock.csv:18:1: reading: found 'nan'");
    assertThat(run("check", book.toString()).status).isEqualTo(2);
    Files.writeString(book.resolve("trials/tailstock.csv"), csv);
    assertThat(run("check", book.toString()).status).isZero();
  }

  private static Run run(String... args) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8);
    int status = Main.run(args, new Terminal(out, out, 100, Terminal.Inks.PLAIN));
    return new Run(status, bytes.toString(StandardCharsets.UTF_8));
  }
}
