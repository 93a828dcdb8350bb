package fettle.machine.text;

import static org.assertj.core.api.Assertions.assertThat;

import fettle.machine.SampleBooks;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a folder holds that is no book is said in words. */
class BookFilesTest {

  @TempDir private Path folder;

  private Parsed<BookFiles> read() {
    return BookFiles.read(folder);
  }

  private void write(String name, byte[] bytes) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.write(file, bytes);
  }

  @Test
  void aMissingFolderOrFile() {
    assertThat(BookFiles.read(folder.resolve("none")).problems()).hasSize(1);
    assertThat(read().problems())
        .singleElement()
        .satisfies(p -> assertThat(p.text()).contains("machine.yaml", "fettle new"));
  }

  @Test
  void bytesThatAreNoText() throws IOException {
    byte[][] wrong = {
      {'a', ':', ' ', (byte) 0xff},
      {(byte) 0xc3, '('},
      {(byte) 0xed, (byte) 0xa0, (byte) 0x80},
      "name: Bänke".getBytes(StandardCharsets.ISO_8859_1),
      "name: x".getBytes(StandardCharsets.UTF_16),
      {(byte) 0xf8, (byte) 0x88, (byte) 0x80, (byte) 0x80, (byte) 0x80}
    };
    for (byte[] bytes : wrong) {
      write("machine.yaml", bytes);
      assertThat(read().problems())
          .singleElement()
          .satisfies(
              p -> {
                assertThat(p.at().file()).isEqualTo("machine.yaml");
                assertThat(p.text()).contains("UTF-8");
              });
    }
  }

  @Test
  void filesTooLargeLinksAndFolders() throws IOException {
    write("machine.yaml", new byte[4_000_001]);
    Files.createDirectories(folder.resolve("shop.yaml"));
    write("changes/a.yaml", new byte[] {'a'});
    Files.createSymbolicLink(folder.resolve("changes/b.yaml"), folder.resolve("machine.yaml"));
    assertThat(read().problems())
        .extracting(p -> p.at().file())
        .containsExactly("machine.yaml", "shop.yaml", "changes/b.yaml");
  }

  @Test
  void filesOfOtherNamesAreLeftAlone() throws IOException {
    write("machine.yaml", new byte[] {'a'});
    write("notes.txt", new byte[] {(byte) 0xff});
    write("changes/b.yml", new byte[] {(byte) 0xff});
    assertThat(SampleBooks.texts(folder)).containsOnlyKeys("machine.yaml");
  }
}
