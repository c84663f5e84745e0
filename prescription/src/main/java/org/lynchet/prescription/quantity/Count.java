package org.lynchet.prescription.quantity;

/** Counts things in words: {@code 1 row}, {@code 2 rows}. */
public final class Count {
  private Count() {}

  /**
   * A number with the word for what is counted.
   *
   * @param word for one of them, such as {@code row} or {@code pass}
   */
  public static String of(long number, String word) {
    return number + " " + (number == 1 ? word : word.endsWith("s") ? word + "es" : word + "s");
  }
}
