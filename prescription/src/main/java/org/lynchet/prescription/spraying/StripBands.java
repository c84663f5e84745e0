package org.lynchet.prescription.spraying;

import java.util.ArrayList;
import java.util.List;
import org.lynchet.geometry.strip.Strip;
import org.lynchet.prescription.machine.Sprayer;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.swath.SteeredMachine;
import org.lynchet.prescription.swath.Swath;
import org.lynchet.prescription.swath.Swaths;

/** Divides strips among the passes of the sprayers of their crops. */
final class StripBands {
  private static final double TENTHS_IN_A_METRE = 10_000;

  private final Plan plan;
  private final CropSprayers sprayers;
  private final long tolerance;
  private final BoomWarnings warnings;

  StripBands(Plan plan, CropSprayers sprayers, BoomWarnings warnings) {
    this.plan = plan;
    this.sprayers = sprayers;
    this.tolerance = plan.fit().tolerance().tenthsOfMillimetre();
    this.warnings = warnings;
  }

  /** The bands, left to right; a strip without a sprayer is one. */
  List<SprayedBand> of(List<Strip> strips) {
    List<SprayedBand> bands = new ArrayList<>();
    for (Strip strip : strips) {
      String crop = plan.strips().get(strip.inPattern()).crop();
      sprayers
          .find(crop)
          .ifPresentOrElse(
              sprayer -> divide(strip, crop, sprayer, bands),
              () -> bands.add(new SprayedBand(strip, crop, strip.leftMetres(), null)));
    }
    return bands;
  }

  /** Where passes overlap, or leave something, the middle of that divides them. */
  private void divide(Strip strip, String crop, Sprayer sprayer, List<SprayedBand> bands) {
    long width = Math.round((strip.rightMetres() - strip.leftMetres()) * TENTHS_IN_A_METRE);
    Swaths swaths = Swaths.inside(steered(sprayer), width, tolerance);
    boolean shut = swaths.reachesOver(tolerance);
    if (!swaths.isWithin(tolerance)) {
      warnings.add(sprayer, crop, strip, swaths);
    }
    double edge = 0;
    for (int i = 0; i < swaths.passes().size(); i++) {
      Swath swath = swaths.passes().get(i);
      SprayedBand.Work work = new SprayedBand.Work(sprayer.name(), swath, shut);
      bands.add(new SprayedBand(strip, crop, strip.leftMetres() + edge, work));
      if (i + 1 < swaths.passes().size()) {
        edge = (swath.rightMetres() + swaths.passes().get(i + 1).leftMetres()) / 2;
      }
    }
  }

  private static SteeredMachine steered(Sprayer sprayer) {
    return SteeredMachine.of(sprayer.boom(), sprayer.section());
  }
}
