package org.lynchet.prescription.light;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * What the light of a season is asked for.
 *
 * @param longitudeDegrees of the field, east positive
 * @param latitudeDegrees of the field, -66 to 66
 * @param headingDegrees of the AB line, clockwise from true north
 * @param rows one period of the pattern, left to right without gaps, at least one row with a canopy
 * @param clearness of January to December, 0 to 1
 * @param sampling how finely
 */
public record LightRequest(
    double longitudeDegrees,
    double latitudeDegrees,
    double headingDegrees,
    List<CanopyRow> rows,
    List<Double> clearness,
    Sampling sampling)
    implements Serializable {
  /** Where every day has a sunrise and a sunset, with some hours between them. */
  public static final double GREATEST_LATITUDE = 66;

  /**
   * Copies the lists and checks the ranges.
   *
   * @throws IllegalArgumentException if a value is out of its range
   */
  public LightRequest {
    rows = List.copyOf(rows);
    clearness = List.copyOf(clearness);
    if (!(Math.abs(latitudeDegrees) <= GREATEST_LATITUDE)
        || clearness.size() != 12
        || rows.stream().map(CanopyRow::canopy).noneMatch(Objects::nonNull)) {
      throw new IllegalArgumentException("no season of light for latitude " + latitudeDegrees);
    }
  }

  /** The same rows once, with open ground beyond the first and the last. */
  public LightRequest withOpenEdges() {
    List<CanopyRow> open = new ArrayList<>(rows);
    CanopyRow last = rows.get(rows.size() - 1);
    double end = last.offsetMetres() + last.spacingMetres() / 2;
    open.add(OpenGround.from(end));
    return withRows(open);
  }

  /** The same place and season with other rows. */
  public LightRequest withRows(List<CanopyRow> others) {
    return new LightRequest(
        longitudeDegrees, latitudeDegrees, headingDegrees, others, clearness, sampling);
  }

  /** The same rows in another direction. */
  public LightRequest withHeading(double degrees) {
    return new LightRequest(longitudeDegrees, latitudeDegrees, degrees, rows, clearness, sampling);
  }

  /** The same, sampled otherwise. */
  public LightRequest withSampling(Sampling other) {
    return new LightRequest(
        longitudeDegrees, latitudeDegrees, headingDegrees, rows, clearness, other);
  }
}
