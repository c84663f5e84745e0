package org.lynchet.prescription.plan;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is compared.
 *
 * @param headingsDegrees headings besides the plan's own, east-west and north-south; degrees
 *     clockwise from true north, [0, 360)
 * @param borderRows the most border rows on a side, 0 or more; null for as many as the plan has
 */
public record CompareChoices(List<Double> headingsDegrees, @Nullable Integer borderRows)
    implements Serializable {

  /** No further headings, and as many border rows as the plan has. */
  public static final CompareChoices DEFAULT = new CompareChoices(List.of(), null);

  /** Copies the list. */
  public CompareChoices {
    headingsDegrees = List.copyOf(headingsDegrees);
  }
}
