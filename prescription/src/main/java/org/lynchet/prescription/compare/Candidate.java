package org.lynchet.prescription.compare;

import java.io.Serializable;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.lynchet.prescription.fit.StripWidth;
import org.lynchet.prescription.light.Compass;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.plan.PlannedStrip.Border;
import org.lynchet.prescription.plan.PlannedStrip.Sides;
import org.lynchet.prescription.quantity.Count;
import org.lynchet.prescription.quantity.LengthUnit;

/**
 * One way to plant the field.
 *
 * @param widths the strips of one period, left to right
 * @param strips the same as the plan would have them, with their border rows
 * @param turnDegrees by how much the plan's AB line is turned about A, clockwise, (-90, 90]
 * @param headingDegrees the heading that it then has
 * @param planned whether it is the plan as it stands
 */
public record Candidate(
    List<StripWidth> widths,
    List<PlannedStrip> strips,
    double turnDegrees,
    double headingDegrees,
    boolean planned)
    implements Serializable {

  /** Copies the lists. */
  public Candidate {
    widths = List.copyOf(widths);
    strips = List.copyOf(strips);
  }

  /** The plan with these strips; its AB line is not turned. */
  public Plan of(Plan plan) {
    return plan.withStrips(strips);
  }

  /** The widths in words, such as {@code 12 rows corn 30 ft, 24 rows soybean 30 ft}. */
  public String widthWords(LengthUnit unit) {
    return widths.stream()
        .map(
            strip ->
                String.format(
                    Locale.ROOT,
                    "%s %s %s %s",
                    Count.of(strip.rows(), "row"),
                    strip.crop(),
                    shortNumber(strip.widthMetres() / unit.metres()),
                    unit.symbol()))
        .collect(Collectors.joining(", "));
  }

  private static String shortNumber(double value) {
    String text = String.format(Locale.ROOT, "%.2f", value);
    return text.replaceAll("\\.?0+$", "");
  }

  /** The direction of the rows in words, such as {@code east-west} or {@code 37.5 degrees}. */
  public String headingWords() {
    double off = headingDegrees % 90;
    if (Math.min(off, 90 - off) > Headings.SAME_DEGREES) {
      return String.format(Locale.ROOT, "%.1f degrees", headingDegrees);
    }
    return Math.round(headingDegrees / 90) % 2 == 0 ? "north-south" : "east-west";
  }

  /** The border rows in words, with the points of the compass that they face. */
  public String borderWords() {
    String words =
        strips.stream()
            .filter(strip -> strip.border() != null)
            .map(strip -> words(strip.border()))
            .distinct()
            .collect(Collectors.joining("; "));
    return words.isEmpty() ? "none" : words;
  }

  /** The same without points of the compass. */
  String borderPlain() {
    return borderWords().replaceAll(" \\([^)]*\\)", "");
  }

  private String words(Border border) {
    String rows = Count.of(border.rows(), "row") + " ";
    if (border.sides() == Sides.BOTH) {
      return rows + "both sides";
    }
    boolean left = border.sides() == Sides.LEFT;
    return rows
        + (left ? "left (" : "right (")
        + Compass.point(headingDegrees + (left ? -90 : 90))
        + ")";
  }
}
