package fettle.desk.publish;

import fettle.desk.pack.Held;
import fettle.desk.pack.PackFiles;
import fettle.desk.pack.PackSource;
import fettle.desk.page.Measure;
import fettle.desk.picture.Scene;
import fettle.desk.picture.Stand;
import fettle.desk.template.site.JtechangeGenerated;
import fettle.desk.template.site.JtechangesGenerated;
import fettle.desk.template.site.JtelatheGenerated;
import fettle.desk.template.site.JtelistGenerated;
import fettle.machine.forecast.Forecast;
import fettle.machine.lathe.Machine;
import fettle.machine.state.Stage;
import fettle.machine.state.State;
import fettle.sheets.page.Heads;
import gg.jte.html.HtmlTemplateOutput;
import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * A published book.
 *
 * @param files bytes of each file by its path
 * @param faults what is wrong with its drawings; empty if nothing is
 */
public record Site(Map<String, byte[]> files, List<String> faults) {

  /** The list of what was published, by which the next publishing takes away what is no more. */
  public static final String LIST = "published.txt";

  /** Keeps its own copies. */
  public Site {
    files = java.util.Collections.unmodifiableMap(new TreeMap<>(files));
    faults = List.copyOf(faults);
  }

  /**
   * Makes the pages and files of a book.
   *
   * @param open what of it may be seen
   * @param date date of issue of packs and drawings, ISO 8601
   * @param standing text of a file that was published before
   * @param done hears of each change when it is done
   * @throws IllegalArgumentException if the lathe cannot be described or a part cannot be drawn
   */
  public static Site of(
      PublicBook open,
      String date,
      Function<String, Optional<String>> standing,
      Consumer<String> done) {
    return new Making(open, date, standing, done).site();
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** The pages while they are made. */
  private static final class Making {

    private final PublicBook open;
    private final Function<String, Optional<String>> standing;
    private final Consumer<String> done;
    private final Heads heads;
    private final Map<String, byte[]> files = new TreeMap<>();
    private final List<String> faults = new ArrayList<>();
    private final Map<String, PackFiles> packs = new LinkedHashMap<>();

    Making(
        PublicBook open,
        String date,
        Function<String, Optional<String>> standing,
        Consumer<String> done) {
      this.open = open;
      this.standing = standing;
      this.done = done;
      heads = Heads.of(open.book(), date);
    }

    Site site() {
      State now = State.of(open.book(), "as it stands", open.book().keys(Stage::done));
      Machine machine =
          now.machine()
              .orElseThrow(
                  () -> new IllegalArgumentException("the lathe as it stands cannot be described"));
      open.book().changes().keySet().forEach(this::pack);
      Pages pages =
          new Pages(open, heads, machine, Measure.of(machine.values().needText("units")), packs);
      Forecast forecast = Forecast.of(open.book(), now, now);
      page("index.html", out -> JtelatheGenerated.render(out, null, pages.lathe(now, forecast)));
      page("changes.html", out -> JtechangesGenerated.render(out, null, pages.changes()));
      page("figures.html", out -> JtelistGenerated.render(out, null, pages.figures(forecast)));
      if (pages.drawn()) {
        page("drawings.html", out -> JtelistGenerated.render(out, null, pages.drawings()));
      }
      if (pages.packed()) {
        page("packs.html", out -> JtelistGenerated.render(out, null, pages.packs()));
      }
      if (pages.proved()) {
        page("proof.html", out -> JtelistGenerated.render(out, null, pages.proof()));
      }
      packs.forEach(
          (key, pack) ->
              page(
                  Pages.change(key),
                  out -> JtechangeGenerated.render(out, null, pages.change(pack))));
      scripts(machine);
      files.put(LIST, bytes(String.join("\n", files.keySet()) + "\n" + LIST + "\n"));
      return new Site(files, faults);
    }

    private void page(String name, Consumer<HtmlTemplateOutput> template) {
      StringOutput text = new StringOutput();
      template.accept(new OwaspHtmlTemplateOutput(text));
      files.put(name, bytes(text.toString()));
    }

    private void scripts(Machine machine) {
      files.put("style.css", bytes(Scripts.style()));
      files.put("icon.svg", bytes(Scripts.own("icon.svg")));
      files.put("lathe.js", bytes(Scripts.own("lathe.js")));
      files.put("solid.js", bytes(Scripts.solid()));
      files.put("three.js", bytes(Scripts.three()));
      Stand stand = Stand.of(machine, Map.of());
      List<String> names = List.copyOf(machine.members().keySet());
      String scene =
          Scene.json(machine, stand, Set.of(), m -> "#" + Pages.member(names.indexOf(m)));
      files.put("scene.js", bytes("var fettleScene = " + scene + ";\n"));
    }

    private void pack(String key) {
      PackSource source =
          PackSource.of(
              open.files(), open.book(), key, open.parts(), open.trials(), heads, open.held());
      String folder = Pages.folder(key);
      PackFiles made = PackFiles.of(source, name -> standing.apply(folder + name), name -> {});
      made.files()
          .forEach(
              (name, bytes) -> {
                if (shown(name)) {
                  files.put(folder + name, bytes);
                }
              });
      made.faults().forEach(f -> faults.add(key + "/" + f));
      packs.put(key, made);
      done.accept(key);
    }

    private boolean shown(String name) {
      boolean drawing = name.startsWith("sheets/") || name.startsWith("assembly.");
      return drawing || name.equals("revisions.csv") || !open.held().contains(Held.PACKS);
    }
  }
}
