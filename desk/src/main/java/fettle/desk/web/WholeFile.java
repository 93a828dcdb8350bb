package fettle.desk.web;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Objects;

/** Writes files so that a reader sees all of the old text or all of the new one. */
final class WholeFile {

  private static final String BEGUN = ".fettle-";
  private static final String ENDING = ".part";

  private WholeFile() {}

  /** Writes beside the file, forces it to the disk, then lets it take the file's place at once. */
  static void write(Path file, byte[] content) throws IOException {
    Path folder = Objects.requireNonNull(file.getParent());
    Path fresh = Files.createTempFile(folder, BEGUN, ENDING);
    try {
      try (FileChannel channel = FileChannel.open(fresh, StandardOpenOption.WRITE)) {
        ByteBuffer bytes = ByteBuffer.wrap(content);
        while (bytes.hasRemaining()) {
          channel.write(bytes);
        }
        channel.force(true);
      }
      keepPermissions(file, fresh);
      Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(fresh);
    }
  }

  /** Takes away what a program that was killed had begun to write in a folder. */
  static void sweep(Path folder) {
    if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, BEGUN + "*" + ENDING)) {
      for (Path one : left) {
        Files.deleteIfExists(one);
      }
    } catch (IOException e) {
      // it does no harm to leave it there
    }
  }

  private static void keepPermissions(Path from, Path to) throws IOException {
    boolean posix = Files.getFileStore(to).supportsFileAttributeView("posix");
    if (posix) {
      Files.setPosixFilePermissions(
          to,
          Files.exists(from)
              ? Files.getPosixFilePermissions(from)
              : PosixFilePermissions.fromString("rw-r--r--"));
    }
  }
}
