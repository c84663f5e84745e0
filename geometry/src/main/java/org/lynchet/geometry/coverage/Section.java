package org.lynchet.geometry.coverage;

/** Measures a part of a field across the guidance line. */
public interface Section {
  /** Whether there is nothing to measure. */
  boolean isEmpty();

  /** The least offset; infinite if there is nothing. */
  double minOffsetMetres();

  /** The greatest offset; negative infinite if there is nothing. */
  double maxOffsetMetres();

  /**
   * How long lines of constant offset run inside: the lengths of rows there.
   *
   * @param offsetsMetres rising offsets
   * @return a length in metres for each
   */
  double[] lengthsMetres(double[] offsetsMetres);

  /**
   * How much lies between neighbouring offsets.
   *
   * @param offsetsMetres n rising offsets
   * @return n + 1 areas in square metres: left of the first offset, between each two, right of the
   *     last
   */
  double[] areasSquareMetres(double[] offsetsMetres);

  /**
   * Between which neighbouring offsets something may end short of one of them. Where nothing may,
   * every piece of what lies there reaches from the one offset to the other, or nothing lies there.
   *
   * @param offsetsMetres n rising offsets
   * @param nearMetres what ends this near to an offset may end on either side of it
   * @return n + 1 answers: left of the first offset, between each two, right of the last
   */
  boolean[] mayEnd(double[] offsetsMetres, double nearMetres);
}
