package fettle.bench;

/** Two ways to one number must give one number. */
final class Agreement {

  private Agreement() {}

  static void near(String what, double one, double other, double relative) {
    if (!(Math.abs(one - other) <= relative * Math.max(Math.abs(one), Math.abs(other)))) {
      throw new IllegalStateException(
          what + ": found " + one + " and " + other + ", expected the same");
    }
  }
}
