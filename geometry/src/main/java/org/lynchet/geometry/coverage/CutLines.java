package org.lynchet.geometry.coverage;

/** Draws cuts into an arrangement, and tells in which band a face between them lies. */
interface CutLines {
  /** Adds the cuts to an arrangement, numbered from 0, each with lesser offsets on its left. */
  void addTo(Arrangement arrangement);

  /** The band in which a face lies. */
  int band(int[][] face, Arrangement arrangement, Vertices vertices);
}
