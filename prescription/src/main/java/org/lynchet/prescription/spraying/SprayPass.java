package org.lynchet.prescription.spraying;

import java.io.Serializable;
import org.locationtech.jts.geom.Geometry;

/**
 * One trip of a sprayer over a strip.
 *
 * @param machine the sprayer's name
 * @param crop the crop
 * @param strip number of the strip
 * @param number its place among the spray passes of its crop, from 1, left to right
 * @param offsetMetres offset of the middle of the boom: what is driven
 * @param firstOpen the first open section, from 1 at the left end of the boom looking along the AB
 *     line; 0 if none may be open
 * @param lastOpen the last open section; 0 if none may be open
 * @param line what is driven, longitude (x) and latitude (y) in degrees: a line for each stretch in
 *     which any of its part of the strip is in the field
 */
public record SprayPass(
    String machine,
    String crop,
    int strip,
    int number,
    double offsetMetres,
    int firstOpen,
    int lastOpen,
    Geometry line)
    implements Serializable {

  /** Whether any section may be open. */
  public boolean sprays() {
    return firstOpen > 0;
  }

  /** Which sections are open, in words. */
  public String openInWords() {
    if (!sprays()) {
      return "NO SECTION OPEN";
    }
    return firstOpen == lastOpen
        ? "section " + firstOpen + " open"
        : "sections " + firstOpen + " to " + lastOpen + " open";
  }
}
