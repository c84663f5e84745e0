package org.lynchet.prescription.plan;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;

/**
 * The line that machines steer by.
 *
 * @param line the AB line, or a curve
 * @param abLineIs what the line is of the pattern's first strip
 * @param placement whether the line stays there
 */
public record PlannedGuidance(Line line, AbLineIs abLineIs, PlacementChoices placement)
    implements Serializable {

  /** A line that stays where it is. */
  public PlannedGuidance(Line line, AbLineIs abLineIs) {
    this(line, abLineIs, PlacementChoices.FIXED);
  }

  /** What the line is of the pattern's first strip. */
  public enum AbLineIs {
    /** The centreline of its first pass. */
    PASS_CENTRE,
    /** Its left edge. */
    STRIP_EDGE
  }

  /** A place on the earth: degrees of longitude, -180 to 180, and of latitude, -90 to 90. */
  public record Position(double longitudeDegrees, double latitudeDegrees) implements Serializable {}

  /** How the line is given. */
  public sealed interface Line extends Serializable {}

  /** Two different points. */
  public record ThroughTwoPoints(Position a, Position b) implements Line {}

  /** A point and a heading, degrees clockwise from true north, [0, 360). */
  public record ThroughPoint(Position through, double headingDegrees) implements Line {}

  /** The guidance line of a file of task data, such as {@code taskdata.zip#GPN1}. */
  public record FromFile(String file) implements Line {}

  /**
   * A curve from a file.
   *
   * @param file the file, its path relative to the plan's folder
   * @param number which line of the file, from 1; null if it has only one
   */
  public record AlongCurve(String file, @Nullable Integer number) implements Line {}
}
