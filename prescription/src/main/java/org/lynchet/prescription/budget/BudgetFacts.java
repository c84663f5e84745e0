package org.lynchet.prescription.budget;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.quantity.Spread;

/**
 * What strips change on one field.
 *
 * @param currency what money is counted in, only shown
 * @param fieldSquareMetres the field's area
 * @param crops by crop
 * @param moreSeed what the strips' seed costs more than that of blocks; negative if less
 * @param moreHours hours in the field more than in blocks; negative if fewer
 * @param machineCost money for an hour, or null if not known: time then costs nothing
 * @param extraCosts what else strips cost on this field
 */
public record BudgetFacts(
    String currency,
    double fieldSquareMetres,
    List<CropChange> crops,
    double moreSeed,
    double moreHours,
    @Nullable Spread machineCost,
    List<BudgetLine> extraCosts)
    implements Serializable {

  /** Copies the lists. */
  public BudgetFacts {
    crops = List.copyOf(crops);
    extraCosts = List.copyOf(extraCosts);
  }
}
