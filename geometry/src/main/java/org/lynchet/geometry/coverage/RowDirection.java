package org.lynchet.geometry.coverage;

import java.io.Serializable;

/** Tells which way the rows run at a place of the field. */
@FunctionalInterface
public interface RowDirection extends Serializable {
  /** Rows along a straight AB line. */
  RowDirection ALONG_AB_LINE = (offset, along) -> 0;

  /**
   * The direction of the rows at a place, in radians clockwise from that of the AB line; one and
   * its opposite are the same.
   */
  double radiansAt(double offsetMetres, double alongMetres);
}
