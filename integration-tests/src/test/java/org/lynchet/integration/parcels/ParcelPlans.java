package org.lynchet.integration.parcels;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.plan.CompareChoices;
import org.lynchet.prescription.plan.FitChoices;
import org.lynchet.prescription.plan.ForecastChoices;
import org.lynchet.prescription.plan.HandoffChoices;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedBudget;
import org.lynchet.prescription.plan.PlannedField;
import org.lynchet.prescription.plan.PlannedField.ManagementZoneMap;
import org.lynchet.prescription.plan.PlannedGuidance;
import org.lynchet.prescription.plan.PlannedSetback;
import org.lynchet.prescription.quantity.Area;
import org.lynchet.prescription.quantity.AreaUnit;

/**
 * Makes plans as a program would that calls this one from Java.
 *
 * @param pattern the strips
 * @param headland where there is headland
 * @param zones names of the management zones; none for a field without
 * @param repair whether an invalid boundary is repaired
 */
public record ParcelPlans(Pattern pattern, Where headland, List<String> zones, boolean repair) {
  /** The column of a map of management zones that names them. */
  static final String ZONE = "zone";

  /** Where there is headland. */
  public enum Where {
    NOWHERE,
    ALL_AROUND,
    ENDS
  }

  /** A headland of one pass all around, or none. */
  public ParcelPlans(Pattern pattern, boolean headland, List<String> zones, boolean repair) {
    this(pattern, headland ? Where.ALL_AROUND : Where.NOWHERE, zones, repair);
  }

  /** Copies the list. */
  public ParcelPlans {
    zones = List.copyOf(zones);
  }

  /**
   * The plan of one field.
   *
   * @param folder where its files would be found
   * @param boundary the file of its boundary, and of its management zones if there are any
   */
  public Plan plan(String folder, String boundary, String zoneMap, PlannedGuidance.Line abLine) {
    @Nullable ManagementZoneMap map =
        zones.isEmpty() ? null : new ManagementZoneMap(zoneMap, ZONE, null);
    return new Plan(
        folder + "/plan.yaml",
        null,
        new PlannedField(boundary, boundary, map, new Area(10, AreaUnit.SQUARE_METRE), repair),
        new PlannedGuidance(abLine, pattern.abLineIs()),
        pattern.machines(),
        switch (headland) {
          case NOWHERE -> null;
          case ALL_AROUND -> pattern.headland(zones);
          case ENDS -> pattern.headlandAtEnds(zones);
        },
        pattern.strips(zones),
        Map.of(),
        new HandoffChoices(true, List.of(HandoffChoices.Format.GEOJSON)),
        FitChoices.DEFAULT,
        ForecastChoices.DEFAULT,
        PlannedBudget.NONE,
        PlannedSetback.NONE,
        CompareChoices.DEFAULT);
  }
}
