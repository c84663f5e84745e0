package org.lynchet.prescription.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.lynchet.formats.FeatureTable;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.Warning;

/**
 * Makes waterways of the features of a table: areas that are driven across but not planted.
 *
 * <p>They may overlap each other, reach beyond the field and over its holes: what counts is the
 * part of the field that they cover. A feature that covers none is told as a warning, a file of
 * which none covers any as a fault.
 */
final class WaterwayCheck {
  private final String file;
  private final boolean repair;
  private final Faults faults;
  private final List<Warning> warnings;

  WaterwayCheck(String file, boolean repair, Faults faults, List<Warning> warnings) {
    this.file = file;
    this.repair = repair;
    this.faults = faults;
    this.warnings = warnings;
  }

  /**
   * The waterways together.
   *
   * @param boundary the field, or empty if it has faults of its own: then nothing is said of where
   *     the waterways lie
   */
  Optional<Geometry> check(FeatureTable table, Optional<Geometry> boundary) {
    List<Geometry> areas = new ArrayList<>();
    List<Integer> outside = new ArrayList<>();
    boolean anyArea = false;
    boolean anyRefused = false;
    for (int i = 0; i < table.features().size(); i++) {
      Geometry area = FieldOutline.polygonsOf(table.features().get(i).geometry());
      if (!area.isEmpty()) {
        anyArea = true;
        Optional<Geometry> valid = valid(area, i + 1);
        anyRefused |= valid.isEmpty();
        if (valid.isPresent() && boundary.isPresent() && isOutside(valid.get(), boundary.get())) {
          outside.add(i + 1);
        } else {
          valid.ifPresent(areas::add);
        }
      }
    }
    if (!anyArea) {
      fault(
          "the waterways have no polygon",
          "",
          "polygons of what is not planted",
          "save the waterways as areas, as wide as they are grassed");
    } else if (areas.isEmpty() && !anyRefused) {
      fault(
          "no waterway lies in the field",
          "",
          "areas that cover a part of the field outside its holes",
          "check whether it is the right file and its coordinate system, or remove"
              + " field.waterways");
    } else if (!outside.isEmpty()) {
      warnings.add(
          new Warning(
              Warning.Code.WATERWAYS_OUTSIDE,
              file + ": waterways that lie outside the field were left out: features " + outside));
    }
    return areas.isEmpty()
        ? Optional.empty()
        : Optional.of(FieldOutline.polygonsOf(UnaryUnionOp.union(areas)));
  }

  /** Whether an area has no inside in common with the field; it may still touch its edge. */
  private static boolean isOutside(Geometry area, Geometry field) {
    return !field.intersects(area) || area.touches(field);
  }

  private Optional<Geometry> valid(Geometry area, int feature) {
    String problem = AreaRepair.problem(area);
    if (problem == null) {
      return Optional.of(area);
    }
    if (repair) {
      return Optional.of(AreaRepair.repaired(area));
    }
    fault(
        "a waterway is not a valid area: " + problem,
        ", feature " + feature,
        FieldOutline.VALID_AREA,
        AreaRepair.NEXT);
    return Optional.empty();
  }

  private void fault(String what, String place, String allowed, String next) {
    faults.add(what, file + place, allowed, next);
  }
}
