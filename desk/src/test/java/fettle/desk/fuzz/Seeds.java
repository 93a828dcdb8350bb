package fettle.desk.fuzz;

import fettle.mechanics.Reckoners;
import fettle.mechanics.base.Dimension;
import fettle.mechanics.base.Reckoner;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Sound inputs to start from, taken from the demo book and the tables of published values. */
final class Seeds {

  private static final Path DEMO = Path.of("..", "examples", "dunlin-85");
  private static final Path PUBLISHED = Path.of("..", "mechanics", "src/test/resources/published");

  private Seeds() {}

  /** Returns the inputs to start a target with, besides those that are kept. */
  static List<byte[]> of(Target target) throws IOException {
    return switch (target) {
      case BOOK -> books();
      case QUANTITY -> quantities();
      case DESIGNATION -> designations();
      case RECIPE -> files("parts", ".yaml");
      case READINGS -> readings();
      case RECKON -> reckoned();
      case REQUEST -> requests();
    };
  }

  private static List<byte[]> books() throws IOException {
    List<byte[]> books = new ArrayList<>();
    String change = SmallBook.texts().getOrDefault("changes/heavier-bed.yaml", "");
    books.add(bytes(SmallBook.LATHE + BookTarget.BETWEEN + change));
    books.add(Files.readAllBytes(DEMO.resolve("machine.yaml")));
    for (byte[] one : files("changes", ".yaml")) {
      books.add(bytes(SmallBook.LATHE + BookTarget.BETWEEN + text(one)));
    }
    String lathe = SmallBook.LATHE + BookTarget.BETWEEN.repeat(3);
    for (byte[] one : files("trials", ".yaml")) {
      books.add(bytes(lathe + text(one)));
    }
    return books;
  }

  private static List<byte[]> quantities() {
    List<byte[]> all = new ArrayList<>();
    List<Dimension> kinds = List.of(Dimension.values());
    for (Dimension dimension : kinds) {
      String unit = dimension.coherent();
      for (String form : List.of("2 U", "0.25 U ± 0.05 U", "0.2 to 0.3 U", "1e3 U")) {
        all.add(first(kinds.indexOf(dimension), form.replace("U", unit)));
      }
    }
    for (String length : List.of("1 3/4 in", "8 tpi", "-.5 mm +/- 1/16 in", "127/120 mm")) {
      all.add(first(kinds.indexOf(Dimension.LENGTH), length));
    }
    return all;
  }

  private static List<byte[]> designations() {
    String all =
        "M10x1.5|M8|Tr 20x4 LH|Tr 14x6 P3|1/4-20 UNC|G 1/4|3/8 BSW|2"
            + " BA|7210B|6204-2RS|30205|H7/g6|js6|IT7|P5|16MnCr5|EN-GJL-200|S235JR|CuSn8|40 to"
            + " 20;idler 30|screw Tr 20x4|rack 15 1.5|worm 1 60|vee 100"
            + " 50|F*l^3/(48*E*I)|(a+b)/2-sqrt(c)|N mm/rad|m/min";
    return Stream.of(all.split("\\|")).map(Seeds::bytes).toList();
  }

  private static List<byte[]> readings() throws IOException {
    List<byte[]> all = new ArrayList<>();
    for (byte[] one : files("trials", ".csv")) {
      for (int kind = 0; kind < fettle.machine.trials.Kind.values().length; kind++) {
        if (all.size() < 60) {
          all.add(first(kind, text(one)));
        }
      }
    }
    return all;
  }

  /** Takes the first published row of each topic. */
  private static List<byte[]> reckoned() throws IOException {
    Map<String, String> rows = new LinkedHashMap<>();
    try (Stream<Path> tables = Files.list(PUBLISHED)) {
      for (Path table : tables.sorted().toList()) {
        for (String line : Files.readAllLines(table)) {
          String[] cells = line.split(",", 3);
          if (cells.length == 3) {
            rows.putIfAbsent(cells[1], cells[2]);
          }
        }
      }
    }
    List<byte[]> all = new ArrayList<>();
    List<Reckoner> reckoners = Reckoners.all();
    for (int i = 0; i < reckoners.size(); i++) {
      Reckoner reckoner = reckoners.get(i);
      String row = rows.getOrDefault(reckoner.topic(), "");
      List<String> lines = new ArrayList<>();
      reckoner.inputs().forEach(input -> lines.add(value(row, input.name())));
      byte[] text = bytes(String.join("\n", lines));
      byte[] all2 = new byte[text.length + 2];
      all2[0] = (byte) (i >> 8);
      all2[1] = (byte) i;
      System.arraycopy(text, 0, all2, 2, text.length);
      all.add(all2);
    }
    return all;
  }

  private static String value(String row, String name) {
    for (String part : row.replaceAll("^\"|\".*$", "").split(" \\| ", -1)) {
      if (part.strip().startsWith(name + "=")) {
        return part.strip().substring(name.length() + 1).replaceFirst(",.*", "");
      }
    }
    return "";
  }

  private static List<byte[]> requests() {
    List<byte[]> all = new ArrayList<>();
    for (String page :
        List.of(
            "/lathe",
            "/lathe?state=everything",
            "/lathe.json",
            "/changes?tick=heavier-bed",
            "/value?file=machine.yaml&path=members.bed.mass&v=21+kg",
            "/what-if?in=members.bed&w.members.bed.mass=22+kg",
            "/history",
            "/reckon/rack-travel?in.z1=13&in.z2=40&in.z3=15&in.m=1.5",
            "/threads?lead=1.5+mm",
            "/gearbox?leads=1+2&perinch=20",
            "/clearance?at=saddle%3D10+mm",
            "/fits?fit=H7/g6",
            "/assets/desk.css",
            "/new-trial?kind=reversal",
            "/interview")) {
      all.add(bytes("GET " + page + " HTTP/1.1\r\nHost: HERE\r\nConnection: close\r\n\r\n"));
    }
    for (String form :
        List.of(
            "value|file=machine.yaml&path=members.bed.mass&v=21+kg&do=write",
            "undo|back=/lathe",
            "measure|unit=inch&back=/lathe",
            "what-if|in=members.bed&title=New&w.members.bed.mass=22+kg&do=keep",
            "new-trial|kind=reversal&say.what=A&say.member=saddle&at.target=0+to+20+by+10&at.run=2")) {
      String[] both = form.split("\\|");
      String body = "token=TOKEN&mark=MARK&" + both[1];
      all.add(
          bytes(
              "POST /"
                  + both[0]
                  + " HTTP/1.1\r\nHost: HERE\r\nConnection: close\r\n"
                  + "Content-Type: application/x-www-form-urlencoded\r\nContent-Length: 200\r\n\r\n"
                  + body
                  + "&x=".repeat(60)));
    }
    return all;
  }

  private static List<byte[]> files(String folder, String ending) throws IOException {
    List<byte[]> all = new ArrayList<>();
    try (Stream<Path> files = Files.list(DEMO.resolve(folder))) {
      for (Path file : files.filter(f -> f.toString().endsWith(ending)).sorted().toList()) {
        all.add(Files.readAllBytes(file));
      }
    }
    return all;
  }

  private static byte[] first(int index, String text) {
    byte[] bytes = bytes("x" + text);
    bytes[0] = (byte) index;
    return bytes;
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8);
  }
}
