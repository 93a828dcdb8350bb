package fettle.desk.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** A sound book of a lathe with two members and two changes: read and checked in no time. */
public final class SmallBook {

  /** The lathe. */
  public static final String LATHE =
      """
      fettle: 1
      name: Wren 60
      units: metric
      lathe: {centre height: 60 mm, between centres: 200 mm}
      # The owner's own remark stays where it is.
      members:
        bed:
          seat: {kind: fixed}
          mass: 20 kg
        saddle:
          seat: {kind: sliding, on: bed, axis: Z, travel: 150 mm}
          mass: 3 kg
      """;

  private static final String CHANGE =
      """
      title: A heavier bed
      reason: It shakes.
      hours: 4 h
      differs:
        members:
          bed: {mass: 25 kg}
      """;

  private SmallBook() {}

  /** Returns its texts by the names of their files. */
  public static Map<String, String> texts() {
    return Map.of(
        "machine.yaml",
        LATHE,
        "changes/heavier-bed.yaml",
        CHANGE,
        "changes/lighter-saddle.yaml",
        CHANGE
            .replace("heavier bed", "lighter saddle")
            .replace("bed: {mass: 25", "saddle: {mass: 2"));
  }

  /** Writes it into a folder. */
  public static Path write(Path folder) throws IOException {
    Files.createDirectories(folder.resolve("changes"));
    for (Map.Entry<String, String> file : texts().entrySet()) {
      Files.writeString(folder.resolve(file.getKey()), file.getValue());
    }
    return folder;
  }
}
