package fettle.desk;

import java.io.IOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Follows every link of a folder of pages. */
public final class Links {

  private static final Pattern LINK = Pattern.compile("(?:href|src)=\"([^\"]*)\"");

  private Links() {}

  /** Returns the links that lead nowhere, or out of the folder. */
  public static List<String> broken(Path folder) throws IOException {
    List<String> broken = new ArrayList<>();
    try (Stream<Path> paths = Files.walk(folder)) {
      for (Path page : paths.filter(p -> p.toString().endsWith(".html")).toList()) {
        Matcher m = LINK.matcher(Files.readString(page));
        while (m.find()) {
          if (!leads(folder, page, m.group(1))) {
            broken.add(folder.relativize(page) + ": " + m.group(1));
          }
        }
      }
    }
    return broken;
  }

  private static boolean leads(Path folder, Path page, String link) throws IOException {
    if (link.isEmpty() || link.contains(":") || link.startsWith("/")) {
      return false;
    }
    String[] parts = link.split("#", 2);
    String name = URLDecoder.decode(parts[0].replace("+", "%2B"), StandardCharsets.UTF_8);
    Path target = name.isEmpty() ? page : page.resolveSibling(name).normalize();
    if (!target.startsWith(folder) || !Files.isRegularFile(target)) {
      return false;
    }
    return parts.length == 1
        || Files.readString(target).contains("id=\"" + parts[1].replace("&", "&amp;") + "\"");
  }
}
