package org.lynchet.prescription.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.lynchet.formats.Column;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.PlainDecimal;
import org.lynchet.geometry.coverage.ManagementZone;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.plan.PlannedField.ManagementZoneMap;

/** Makes management zones of the features of a table: those of one name are one zone. */
final class ZoneMapCheck {
  private final boolean repair;
  private final ManagementZoneMap map;
  private final Faults faults;

  ZoneMapCheck(boolean repair, ManagementZoneMap map, Faults faults) {
    this.repair = repair;
    this.map = map;
    this.faults = faults;
  }

  /** The zones in the order of their first features. */
  List<ManagementZone> check(FeatureTable table) {
    int before = faults.list().size();
    OptionalInt column = table.findColumn(map.attribute());
    if (column.isEmpty()) {
      faults.add(
          "the management zones have no attribute '" + map.attribute() + "'",
          map.file(),
          "one of: " + table.columns().stream().map(Column::name).collect(Collectors.joining(", ")),
          "name one of these in field.management-zones.attribute");
      return List.of();
    }
    Map<String, List<Geometry>> areas = new LinkedHashMap<>();
    for (int i = 0; i < table.features().size(); i++) {
      Feature feature = table.features().get(i);
      Geometry area = FieldOutline.polygonsOf(feature.geometry());
      if (!area.isEmpty()) {
        add(areas, area, name(feature.values().get(column.getAsInt())), i);
      }
    }
    if (areas.isEmpty() && faults.list().size() == before) {
      faults.add(
          "the management zones have no polygon",
          map.file(),
          "polygons that cover the field",
          "save the zones as areas");
    }
    List<ManagementZone> zones = new ArrayList<>();
    areas.forEach(
        (name, parts) ->
            zones.add(
                new ManagementZone(
                    name,
                    parts.size() == 1
                        ? parts.get(0)
                        : FieldOutline.polygonsOf(UnaryUnionOp.union(parts)))));
    return zones;
  }

  private void add(Map<String, List<Geometry>> areas, Geometry area, String name, int feature) {
    String place = map.file() + ", feature " + (feature + 1);
    if (name.isBlank()) {
      faults.add(
          "a management zone without a name",
          place,
          "a value of '" + map.attribute() + "' for each polygon",
          "fill it in");
      return;
    }
    String problem = AreaRepair.problem(area);
    if (problem != null && !repair) {
      faults.add(
          "management zone '" + name + "' is not a valid area: " + problem,
          place,
          FieldOutline.VALID_AREA,
          AreaRepair.NEXT);
      return;
    }
    areas
        .computeIfAbsent(name, key -> new ArrayList<>())
        .add(problem == null ? area : AreaRepair.repaired(area));
  }

  /** A value as a name; whole numbers without decimals. */
  private static String name(@Nullable Object value) {
    if (value == null) {
      return "";
    }
    return value instanceof Double number && Double.isFinite(number)
        ? PlainDecimal.of(number)
        : value.toString().strip();
  }
}
