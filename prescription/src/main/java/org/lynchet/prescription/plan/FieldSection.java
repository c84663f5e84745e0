package org.lynchet.prescription.plan;

import java.util.Optional;
import org.lynchet.prescription.plan.PlannedField.ManagementZoneMap;
import org.lynchet.prescription.quantity.Area;
import org.lynchet.prescription.quantity.AreaUnit;

/** Reads the section {@code field}. */
final class FieldSection {
  private static final Area MINIMUM_PIECE = new Area(10, AreaUnit.SQUARE_METRE);

  private FieldSection() {}

  static Optional<PlannedField> read(KeyReader plan) {
    return plan.getKeys("field").flatMap(FieldSection::field);
  }

  private static Optional<PlannedField> field(KeyReader keys) {
    Optional<String> name = keys.getText("name");
    Optional<String> boundary = keys.getText("boundary");
    Optional<KeyReader> zoneKeys = keys.findKeys("management-zones");
    Optional<ManagementZoneMap> zones = zoneKeys.flatMap(FieldSection::zoneMap);
    Optional<Area> minimumPiece = keys.findArea("minimum-piece");
    boolean repair = keys.findFlag("repair").orElse(false);
    keys.close();
    if (name.isEmpty() || boundary.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new PlannedField(
            name.get(),
            boundary.get(),
            zones.orElse(null),
            minimumPiece.orElse(MINIMUM_PIECE),
            repair));
  }

  private static Optional<ManagementZoneMap> zoneMap(KeyReader keys) {
    Optional<String> file = keys.getText("file");
    Optional<String> attribute = keys.getText("attribute");
    Optional<String> elsewhere = keys.findText("elsewhere");
    keys.close();
    return file.isPresent() && attribute.isPresent()
        ? Optional.of(new ManagementZoneMap(file.get(), attribute.get(), elsewhere.orElse(null)))
        : Optional.empty();
  }
}
