package fettle.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** A lathe is described question by question, and what is not known stays with a wide doubt. */
final class InterviewTest {

  private final OpenDesk desk = OpenDesk.demo();

  @AfterEach
  void close() {
    desk.close();
  }

  private HttpResponse<String> answer(int number, String said, String value) {
    String page = desk.get("/interview?n=" + number).body();
    Map<String, String> form = new LinkedHashMap<>();
    form.put("token", OpenDesk.hidden(page, "token"));
    form.put("mark", OpenDesk.hidden(page, "mark"));
    form.put("n", String.valueOf(number));
    form.put("do", said);
    form.put("v", value);
    return desk.post("/interview", form);
  }

  private int number(String label) {
    String list = desk.get("/interview").body();
    int at = list.lastIndexOf("<dt>" + label);
    assertThat(at).as(label).isPositive();
    String rest = list.substring(list.indexOf("/interview?n=", at) + "/interview?n=".length());
    return Integer.parseInt(rest.substring(0, rest.indexOf('"')));
  }

  @Test
  void anAnswerIsWrittenAndTheNextQuestionAsked() {
    int saddle = number("members · saddle · length");
    assertThat(desk.get("/interview?n=" + saddle).body())
        .contains("118 mm")
        .contains("Along the bed");
    HttpResponse<String> answer = answer(saddle, "say", "121 mm");
    assertThat(answer.statusCode()).isEqualTo(303);
    assertThat(answer.headers().firstValue("Location").orElse(""))
        .endsWith("/interview?n=" + (saddle + 1));
    assertThat(desk.text("machine.yaml")).contains("length: 121 mm");
  }

  @Test
  void whatCannotBeToldStaysWithAWideDoubtAndIsNamedFirst() {
    int mass = number("members · tailstock · mass");
    assertThat(answer(mass, "unsure", "").statusCode()).isEqualTo(303);
    assertThat(desk.text("machine.yaml")).containsPattern("mass: [0-9.]+ kg ± [0-9.]+ kg");
    int slide = number("members · cross slide · mass");
    assertThat(answer(slide, "unsure", "").statusCode()).isEqualTo(303);
    String list = desk.get("/interview").body();
    assertThat(list).contains("Worth finding out first").contains("most of all");
  }

  @Test
  void aWrongAnswerIsRefusedAndKeptInItsField() {
    String before = desk.text("machine.yaml");
    HttpResponse<String> answer = answer(number("members · saddle · length"), "say", "121");
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body()).contains("with its unit").contains("value=\"121\"");
    assertThat(desk.text("machine.yaml")).isEqualTo(before);
    assertThat(answer(9999, "say", "1 mm").statusCode()).isEqualTo(404);
  }
}
