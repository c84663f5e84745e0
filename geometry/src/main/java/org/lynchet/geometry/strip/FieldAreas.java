package org.lynchet.geometry.strip;

/** Tells how much of a field lies between offsets. */
@FunctionalInterface
public interface FieldAreas {

  /**
   * Measures the field between neighbouring offsets.
   *
   * @param offsetsMetres n rising offsets
   * @return n + 1 areas in square metres: left of the first offset, between each two, right of the
   *     last
   */
  double[] between(double[] offsetsMetres);
}
