package org.lynchet.prescription.picture;

import java.util.List;
import java.util.Locale;
import org.lynchet.geometry.guidance.Curve;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.quantity.Count;
import org.lynchet.prescription.zone.DrivenPass;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * Says what a map shows.
 *
 * @param units of areas
 */
record MapWords(FieldLayout layout, UnitSystem units) {

  /** The scene with these words for those who cannot see it. */
  Scene scene(List<Scene.Layer> layers) {
    return new Scene(name() + ": map of the plan", description(), layers);
  }

  /** The field's name. */
  String name() {
    return SafeText.of(layout.plan().field().name()).strip();
  }

  /** Heading, area, strips and passes. */
  String facts() {
    return String.format(
        Locale.ROOT,
        "%s \u00b7 %s \u00b7 %s \u00b7 %s",
        heading(),
        units.area(layout.areaSquareMetres(), layout.areaSquareMetres()),
        Count.of(layout.passes().stream().mapToInt(DrivenPass::strip).distinct().count(), "strip"),
        Count.of(layout.passes().size(), "pass"));
  }

  private String heading() {
    if (layout.guidance() instanceof Curve curve) {
      return String.format(
          Locale.ROOT,
          "curve, headings %.0f\u00b0 to %.0f\u00b0",
          curve.directions().firstHeadingDegrees(),
          curve.directions().lastHeadingDegrees());
    }
    return String.format(Locale.ROOT, "heading %.1f\u00b0", layout.frame().headingDegrees());
  }

  private String description() {
    List<String> crops =
        layout.plan().strips().stream()
            .map(PlannedStrip::crop)
            .distinct()
            .map(SafeText::of)
            .toList();
    return "The field "
        + name()
        + " seen from above, north up, with strips of "
        + String.join(" and ", crops)
        + ": "
        + facts()
        + ".";
  }
}
