package fettle.desk.fuzz;

import java.io.File;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Where the classes of this run lie, for processes that are started beside it. */
public final class OwnClasses {

  private OwnClasses() {}

  /** Returns a class path with everything this program was started with. */
  public static String path() {
    Set<String> all = new LinkedHashSet<>();
    for (String property :
        List.of("surefire.test.class.path", "java.class.path", "jdk.module.path")) {
      for (String entry : System.getProperty(property, "").split(File.pathSeparator, -1)) {
        if (!entry.isEmpty() && new File(entry).exists()) {
          all.add(new File(entry).getAbsolutePath());
        }
      }
    }
    File tests = new File("target/test-classes");
    if (tests.isDirectory()) {
      all.add(tests.getAbsolutePath());
    }
    return String.join(File.pathSeparator, all);
  }
}
