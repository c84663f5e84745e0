package org.lynchet.prescription.plan;

import java.util.Optional;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.plan.PlannedField.ManagementZoneMap;
import org.lynchet.prescription.plan.PlannedGuidance.Position;
import org.lynchet.prescription.quantity.Area;
import org.lynchet.prescription.quantity.AreaUnit;

/** Reads the section {@code field}. */
final class FieldSection {
  private static final Area MINIMUM_PIECE =
      new Area(Defaults.get().number("field.minimum-piece-square-metres"), AreaUnit.SQUARE_METRE);

  private FieldSection() {}

  static Optional<PlannedField> read(KeyReader keys) {
    Optional<String> name = keys.get("name", NameText::name);
    Optional<String> boundary = keys.get("boundary", NameText::file);
    Optional<ManagementZoneMap> zones =
        keys.find("management-zones", KeyReader.keys(FieldSection::zoneMap));
    boolean zonesWhole = zones.isPresent() || !keys.has("management-zones");
    Area minimumPiece = keys.find("minimum-piece", QuantityText.AREA).orElse(MINIMUM_PIECE);
    Optional<String> waterways = keys.find("waterways", NameText::file);
    Optional<Position> entrance = keys.find("entrance", PositionText::read);
    boolean repair = keys.find("repair", WordText::flag).orElse(false);
    if (name.isEmpty() || boundary.isEmpty() || !zonesWhole) {
      return Optional.empty();
    }
    return Optional.of(
        new PlannedField(
            name.get(),
            boundary.get(),
            zones.orElse(null),
            minimumPiece,
            repair,
            waterways.orElse(null),
            entrance.orElse(null)));
  }

  private static Optional<ManagementZoneMap> zoneMap(KeyReader keys) {
    Optional<String> file = keys.get("file", NameText::file);
    Optional<String> attribute = keys.get("attribute", NameText::name);
    Optional<String> elsewhere = keys.find("elsewhere", NameText::name);
    return file.isPresent() && attribute.isPresent()
        ? Optional.of(new ManagementZoneMap(file.get(), attribute.get(), elsewhere.orElse(null)))
        : Optional.empty();
  }
}
