package fettle.desk.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;

/** A small book with one change of two parts. */
final class SmallBook {

  static final String CHANGE =
      """
      title: Two parts
      reason: To try it.
      benefit: It is tried.
      cost: 47.11 EUR
      hours: 3 h
      differs: {members: {slide: {mass: 3 kg}}}
      assembly: [pin, plate]
      parts:
        pin: {what: A pin., material: C45, stock: bar 10 mm, recipe: pin, price: 47.11 EUR}
        plate: {what: A plate., material: S235, stock: flat, recipe: plate}
      purchases:
        springs: {what: Two springs., designation: 0.5 x 4 x 12, quantity: 2, lead time: 3 d}
      steps:
        turn: {do: Turn the pin., hours: 1 h, lathe: used, makes: [pin]}
        fit: {do: Fit both., hours: 2 h, lathe: down, after: [turn]}
      caution: [Mind the spring.]
      """;

  private SmallBook() {}

  static void write(Path book) throws IOException {
    put(
        book,
        "machine.yaml",
        """
        fettle: 1
        name: Small
        lathe: {centre height: 90 mm, between centres: 300 mm}
        members:
          bed:
            seat: {kind: fixed}
            envelope: {body: {kind: box, x: 100 mm, y: 80 mm, z: 500 mm}}
          slide:
            seat: {kind: sliding, on: bed, axis: Z, travel: 100 mm, at: {y: 80 mm}}
            length: 60 mm
            envelope: {body: {kind: cylinder, axis: Z, at: {y: 30 mm}, diameter: 50 mm, length: 60 mm}}
        """);
    put(book, "shop.yaml", "owner: A workshop\nlicence: For private use.\n");
    put(book, "changes/pair.yaml", CHANGE);
    put(
        book,
        "parts/pin.yaml",
        "title: Pin\nturned: {outside: [{cylinder: {diameter: 8 mm h6, length: 30 mm}}]}\n");
    put(
        book,
        "parts/plate.yaml",
        "title: Plate\nblock: {length: = members.slide.length, width: 20 mm, height: 9 mm}\n");
  }

  static void put(Path book, String file, String text) throws IOException {
    Path path = book.resolve(file);
    Files.createDirectories(Objects.requireNonNull(path.getParent()));
    Files.writeString(path, text);
  }
}
