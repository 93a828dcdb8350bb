package fettle.desk.web;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the folder tells of a book's files without opening them: their names, sizes, places on the
 * disk and the moments they last changed. Two equal sets of stamps, the younger of them no newer
 * than {@link #SETTLED} before the first was taken, mean that the texts are the same too; a file
 * that changed just before may change again within the same tick of the disk's clock, and has to be
 * read.
 *
 * @param files stamp of each file, by its path within the book
 */
record Stamps(Map<String, Stamp> files) {

  private static final Duration SETTLED = Duration.ofSeconds(2);
  private static final int MOST = 1500;
  private static final boolean UNIX =
      FileSystems.getDefault().supportedFileAttributeViews().contains("unix");

  /**
   * One file.
   *
   * @param changed when its text or its attributes changed last
   * @param size its length in bytes
   * @param key where it lies on the disk, if the disk tells
   */
  record Stamp(Instant changed, long size, @Nullable Object key) {

    /** Looks at a file, not at what a link leads to. */
    static Stamp of(Path file) throws IOException {
      if (UNIX) {
        Map<String, Object> seen =
            Files.readAttributes(file, "unix:ctime,size,ino", LinkOption.NOFOLLOW_LINKS);
        FileTime changed = (FileTime) Objects.requireNonNull(seen.get("ctime"));
        long size = (Long) Objects.requireNonNull(seen.get("size"));
        return new Stamp(changed.toInstant(), size, seen.get("ino"));
      }
      BasicFileAttributes seen =
          Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
      return new Stamp(seen.lastModifiedTime().toInstant(), seen.size(), seen.fileKey());
    }
  }

  /** Looks at a book's folder; empty if it cannot be looked at or holds too much. */
  static Optional<Stamps> of(Path folder) {
    Map<String, Stamp> files = new HashMap<>();
    try {
      for (String one : List.of("machine.yaml", "shop.yaml")) {
        if (Files.exists(folder.resolve(one), LinkOption.NOFOLLOW_LINKS)) {
          files.put(one, Stamp.of(folder.resolve(one)));
        }
      }
      for (String sub : List.of("changes", "parts", "trials")) {
        take(folder.resolve(sub), sub, files);
      }
      return files.size() > MOST ? Optional.empty() : Optional.of(new Stamps(files));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static void take(Path inner, String sub, Map<String, Stamp> files) throws IOException {
    if (!Files.isDirectory(inner, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    try (DirectoryStream<Path> entries = Files.newDirectoryStream(inner)) {
      for (Path entry : entries) {
        files.put(sub + "/" + entry.getFileName(), Stamp.of(entry));
        if (files.size() > MOST) {
          return;
        }
      }
    }
  }

  /** Tells whether files with these stamps, read at a moment, can be trusted to stay the same. */
  boolean settledAt(Instant read) {
    Instant settled = read.minus(SETTLED);
    return files.values().stream().allMatch(f -> f.changed().isBefore(settled));
  }
}
