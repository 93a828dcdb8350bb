package fettle.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;

/** The commands that plan work: order, route and wiring on the demo book. */
class PlanningCommandsTest {

  private static void follows(String schema, String json) throws IOException {
    assertThat(
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(Told.DOCS.resolve(schema)))
                .validate(json, InputFormat.JSON))
        .isEmpty();
  }

  @Test
  void wiringSaysItsCautionFirstAndFindsNothingWrong() throws IOException {
    Told told = Told.of("wiring", Told.DEMO);
    assertThat(told.status()).isZero();
    assertThat(told.lines().get(0)).contains("a person licensed where you live");
    assertThat(told.out())
        .contains("WIRING LIST", "TERMINAL PLAN", "Nothing is wrong with the list as such.");
    follows("wiring.schema.json", Told.of("wiring", Told.DEMO, "--json").out());
    Told none = Told.of("wiring", Told.DEMO, "saddle-dial");
    assertThat(none.status()).isEqualTo(2);
    assertThat(none.err()).contains("no control box is described");
  }

  @Test
  void aRouteSaysHowEachPartIsMade() throws IOException {
    Told told = Told.of("route", Told.DEMO, "cross-screw");
    assertThat(told.status()).isZero();
    assertThat(told.out())
        .contains("CROSS SCREW  from bar 20 mm", "cut thread Tr 14x3 LH", "BEARING BLOCK")
        .contains("tap M4, ring screws, 4 off");
    Told sheet = Told.of("route", Told.DEMO, "apron-start", "--part", "box panel", "--json");
    assertThat(sheet.out()).contains("bend behind left flange by 90 degrees up");
    follows("route.schema.json", sheet.out());
    assertThat(Told.of("route", Told.DEMO, "cross-screw", "--part", "scrw").err())
        .contains("Did you mean 'screw'?");
    assertThat(Told.of("route", Told.DEMO, "cross").status()).isEqualTo(2);
  }

  @Test
  void theOrderFollowsItsSchemaAndSaysItsProof() throws IOException {
    Told told = Told.of("order", Told.DEMO);
    assertThat(told.status()).isZero();
    assertThat(told.out()).contains("No order is better", "FOR THE WALL", "BESIDE OTHER ORDERS");
    follows("order.schema.json", Told.of("order", Told.DEMO, "--json").out());
    assertThat(Told.of("order", Told.DEMO, "--buying").out()).contains("COST BY CHANGE");
    assertThat(Told.of("order", Told.DEMO, "--hours", "none").status()).isEqualTo(2);
    assertThat(Told.of("order", Told.DEMO, "--start", "soon").err()).contains("--start");
  }
}
