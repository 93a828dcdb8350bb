package fettle.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** An edit changes one value and nothing else, loses nothing, and can be taken back. */
final class SavingTest {

  private static final String SADDLE = "members.saddle.mass";
  private final OpenDesk desk = OpenDesk.demo();

  @AfterEach
  void close() {
    desk.close();
  }

  @Test
  void anEditChangesOneValueAndLeavesCommentsAndOrder() {
    String before = desk.text("machine.yaml");
    assertThat(desk.edit("machine.yaml", SADDLE, "4.4 kg ± 0.2 kg").statusCode()).isEqualTo(303);
    assertThat(desk.text("machine.yaml"))
        .isEqualTo(before.replace("mass: 4.2 kg ± 0.2 kg", "mass: 4.4 kg ± 0.2 kg"))
        .contains("# The Dunlin 85 as it was bought.");
  }

  @Test
  void anEditWithinAFlowMappingOfAChangeKeepsTheLine() {
    String file = "changes/saddle-dial.yaml";
    String before = desk.text(file);
    String path = "differs.trains.saddle drive.elements.handwheel pair.driven";
    assertThat(desk.edit(file, path, "38").statusCode()).isEqualTo(303);
    assertThat(desk.text(file)).isEqualTo(before.replace("driven: 39", "driven: 38"));
  }

  @Test
  void aValueLeftOutIsWrittenIntoItsBlock() {
    String before = desk.text("machine.yaml");
    String path = "members.saddle.wall";
    assertThat(desk.get("/member?name=saddle").body()).contains("does not say here yet");
    assertThat(desk.get(OpenDesk.valueAt("machine.yaml", path)).body())
        .contains("Not written in the book yet");
    assertThat(desk.edit("machine.yaml", path, "12.34 mm").statusCode()).isEqualTo(303);
    String after = desk.text("machine.yaml");
    assertThat(after).contains("wall: 12.34 mm");
    assertThat(after.replaceFirst("[ \\n,]*wall: 12.34 mm", "")).isEqualTo(before);
    assertThat(desk.get(OpenDesk.valueAt("machine.yaml", path)).body())
        .contains("Stands now: 12.34 mm");
    assertThat(desk.edit("machine.yaml", "members.saddle.height", "12 s").statusCode())
        .isEqualTo(400);
    assertThat(desk.text("machine.yaml")).isEqualTo(after);
  }

  @Test
  void aWrongValueIsRefusedWithPlaceAndExpectation() {
    String before = desk.text("machine.yaml");
    HttpResponse<String> answer = desk.edit("machine.yaml", SADDLE, "4.4");
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body()).contains("machine.yaml:55").contains("a mass with its unit");
    assertThat(desk.text("machine.yaml")).isEqualTo(before);
  }

  @Test
  void anEditByATextEditorIsNoticedAndNotOverwritten() {
    String page = desk.get(OpenDesk.valueAt("machine.yaml", SADDLE)).body();
    String theirs = desk.text("machine.yaml").replace("mass: 4.2 kg", "mass: 4.9 kg");
    desk.write("machine.yaml", theirs);
    HttpResponse<String> answer =
        desk.post(
            "/value",
            Map.of(
                "token",
                OpenDesk.hidden(page, "token"),
                "mark",
                OpenDesk.hidden(page, "mark"),
                "file",
                "machine.yaml",
                "path",
                SADDLE,
                "v",
                "4.4 kg",
                "do",
                "write"));
    assertThat(answer.statusCode()).isEqualTo(409);
    assertThat(answer.body()).contains("changed by another program");
    assertThat(desk.text("machine.yaml")).isEqualTo(theirs);
    assertThat(desk.get(OpenDesk.valueAt("machine.yaml", SADDLE)).body()).contains("4.9 kg");
  }

  @Test
  void undoGoesBackStepByStep() {
    String first = desk.text("machine.yaml");
    desk.edit("machine.yaml", SADDLE, "4.4 kg");
    String second = desk.text("machine.yaml");
    desk.edit("machine.yaml", "lathe.centre height", "86 mm");
    assertThat(desk.undo().statusCode()).isEqualTo(303);
    assertThat(desk.text("machine.yaml")).isEqualTo(second);
    assertThat(desk.undo().statusCode()).isEqualTo(303);
    assertThat(desk.text("machine.yaml")).isEqualTo(first);
    assertThat(desk.undo().statusCode()).isEqualTo(404);
    assertThat(desk.text("machine.yaml")).isEqualTo(first);
  }

  @Test
  void undoKeepsWhatATextEditorWroteInTheHistory() {
    desk.edit("machine.yaml", SADDLE, "4.4 kg");
    String theirs = desk.text("machine.yaml") + "# a note of the owner\n";
    desk.write("machine.yaml", theirs);
    assertThat(desk.undo().statusCode()).isEqualTo(303);
    assertThat(desk.text("machine.yaml")).doesNotContain("a note of the owner");
    String history = desk.get("/history").body();
    assertThat(history).contains("found in the folder");
    assertThat(desk.undo().statusCode()).isEqualTo(303);
    assertThat(desk.text("machine.yaml")).contains("mass: 4.2 kg");
  }

  @Test
  void aLockLeftByADeskThatWasKilledStopsNoSaving() throws java.io.IOException {
    desk.edit("machine.yaml", SADDLE, "4.4 kg");
    java.nio.file.Path lock = desk.file(".history/refs/heads/book.lock");
    java.nio.file.Files.createFile(lock);
    java.nio.file.Files.setLastModifiedTime(
        lock, java.nio.file.attribute.FileTime.fromMillis(1_700_000_000_000L));
    assertThat(desk.edit("machine.yaml", SADDLE, "4.5 kg").statusCode()).isEqualTo(303);
    assertThat(desk.text("machine.yaml")).contains("mass: 4.5 kg");
    assertThat(lock).doesNotExist();
  }

  @Test
  void whatAKilledDeskHadBegunIsSweptUp() {
    desk.write(".fettle-123.part", "name: half a la");
    desk.write("changes/.fettle-456.part", "");
    desk.write("changes/.my-own.part", "stays");
    assertThat(desk.edit("machine.yaml", SADDLE, "4.4 kg").statusCode()).isEqualTo(303);
    assertThat(desk.file(".fettle-123.part")).doesNotExist();
    assertThat(desk.file("changes/.fettle-456.part")).doesNotExist();
    assertThat(desk.file("changes/.my-own.part")).exists();
  }

  @Test
  void everyVersionCanBeLookedAtAndBroughtBack() {
    String first = desk.text("machine.yaml");
    desk.edit("machine.yaml", SADDLE, "4.4 kg");
    desk.edit("machine.yaml", SADDLE, "4.5 kg");
    String list = desk.get("/history").body();
    String oldest = list.substring(list.lastIndexOf("/history?version=") + 17).split("\"")[0];
    String page = desk.get("/history?version=" + oldest).body();
    assertThat(page).contains("4.5 kg").contains("4.2 kg ± 0.2 kg").contains("Bring this version");
    HttpResponse<String> answer =
        desk.post(
            "/history",
            Map.of(
                "token", OpenDesk.hidden(page, "token"),
                "mark", OpenDesk.hidden(page, "mark"),
                "version", oldest));
    assertThat(answer.statusCode()).isEqualTo(303);
    assertThat(desk.text("machine.yaml")).isEqualTo(first);
  }

  @Test
  void aWhatIfIsKeptAsANewChangeAndUndone() {
    String page = desk.get("/what-if?in=" + OpenDesk.coded("trains.saddle drive")).body();
    HttpResponse<String> answer =
        desk.post(
            "/what-if",
            Map.of(
                "token", OpenDesk.hidden(page, "token"),
                "mark", OpenDesk.hidden(page, "mark"),
                "state", "as-it-stands",
                "in", "trains.saddle drive",
                "title", "One tooth: less!",
                "w.trains.saddle drive.elements.handwheel pair.driven", "38",
                "do", "keep"));
    assertThat(answer.statusCode()).isEqualTo(303);
    String file = "changes/one-tooth-less.yaml";
    assertThat(desk.text(file))
        .contains("title: \"One tooth: less!\"")
        .contains("needs: [saddle-dial]")
        .contains("driven: 38");
    assertThat(desk.get("/change?key=one-tooth-less").body()).contains("travel per turn");
    assertThat(desk.undo().statusCode()).isEqualTo(303);
    assertThat(desk.file(file)).doesNotExist();
  }

  @Test
  void whatFollowsWhileTypingNeverWrites() {
    String before = desk.text("machine.yaml");
    String page = desk.get(OpenDesk.valueAt("machine.yaml", SADDLE)).body();
    String form =
        OpenDesk.coded(
            Map.of(
                "token",
                OpenDesk.hidden(page, "token"),
                "mark",
                OpenDesk.hidden(page, "mark"),
                "file",
                "machine.yaml",
                "path",
                SADDLE,
                "v",
                "4.4 kg",
                "do",
                "write"));
    HttpResponse<String> answer =
        desk.send(
            java.net.http.HttpRequest.newBuilder(java.net.URI.create(desk.address("/value")))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("HX-Request", "true")
                .POST(java.net.http.HttpRequest.BodyPublishers.ofString(form)));
    assertThat(answer.body()).contains("mass with all it carries");
    assertThat(desk.text("machine.yaml")).isEqualTo(before);
  }

  @Test
  void aBrokenBookIsShownWithTheLineToMend() {
    desk.write(
        "machine.yaml", desk.text("machine.yaml").replace("mass: 4.2 kg ± 0.2 kg", "mass: heavy"));
    HttpResponse<String> page = desk.get("/lathe");
    assertThat(page.statusCode()).isEqualTo(422);
    assertThat(page.body()).contains("machine.yaml:55").contains("Mend this value");
    assertThat(desk.edit("machine.yaml", SADDLE, "4.2 kg").statusCode()).isEqualTo(303);
    assertThat(desk.get("/lathe").statusCode()).isEqualTo(200);
  }

  @Test
  void aTrialIsLaidOutAndItsReadingsAskedFor() {
    String page = desk.get("/new-trial?kind=reversal").body();
    Map<String, String> form = new java.util.LinkedHashMap<>();
    form.put("token", OpenDesk.hidden(page, "token"));
    form.put("mark", OpenDesk.hidden(page, "mark"));
    form.put("kind", "reversal");
    form.put("say.what", "Cross slide: \"again\"");
    form.put("say.instrument", "fine indicator");
    form.put("say.date", "2026-06-01");
    form.put("say.member", "cross slide");
    form.put("at.run", "2");
    form.put("at.target", "0 to ten");
    HttpResponse<String> refused = desk.post("/new-trial", form);
    assertThat(refused.statusCode()).isEqualTo(400);
    assertThat(refused.body()).contains("found '0 to ten'").contains("value=\"0 to ten\"");
    form.put("at.target", "0 to 20 by 10");
    HttpResponse<String> answer = desk.post("/new-trial", form);
    assertThat(answer.statusCode()).isEqualTo(303);
    assertThat(desk.text("trials/cross-slide-again.csv"))
        .startsWith("run,dir,target_mm,position_mm\n1,1,0,\n1,1,10,\n1,1,20,\n1,-1,20,\n")
        .endsWith("2,-1,0,\n");
    assertThat(desk.get("/readings?name=cross-slide-again").body()).contains("0 of 12 taken");
    assertThat(desk.get("/proof").body())
        .contains("0 of 12 readings taken: no reading was taken")
        .contains("saddle-dial");
    String yaml = "trials/cross-slide-again.yaml";
    assertThat(desk.edit(yaml, "member", "no such slide").statusCode()).isEqualTo(400);
    assertThat(desk.edit(yaml, "note", "done on a cold morning").statusCode()).isEqualTo(303);
    assertThat(desk.text(yaml)).contains("kind: reversal").contains("note: done on a cold morning");
  }
}
