package org.lynchet.prescription.taskdata;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.geometry.coverage.Waterway;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * A field and what is planted where.
 *
 * @param name the field's name
 * @param boundary longitude (x) and latitude (y) in degrees
 * @param areaSquareMetres its area in the plane
 * @param areas what is planted, at least one
 * @param off what no crop is planted on
 * @param othersAreOff whether the areas of the other crops are drawn in each crop's off zone
 * @param place where faults are
 * @param wayOut how to do without task data, to end a sentence
 */
public record PlantedField(
    String name,
    Geometry boundary,
    double areaSquareMetres,
    List<PlantedArea> areas,
    List<Geometry> off,
    boolean othersAreOff,
    String place,
    String wayOut) {

  /** Copies the lists. */
  public PlantedField {
    areas = List.copyOf(areas);
    off = List.copyOf(off);
  }

  /** The field of a layout; what is off is drawn if the plan says so. */
  static PlantedField of(FieldLayout layout) {
    boolean offZones = layout.plan().handoff().offZones();
    return new PlantedField(
        layout.plan().field().name(),
        layout.boundary(),
        layout.areaSquareMetres(),
        layout.zones().stream()
            .map(zone -> new PlantedArea(zone.crop(), zone.product(), zone.rate(), zone.polygon()))
            .toList(),
        offZones
            ? layout.waterways().stream().<Geometry>map(Waterway::polygon).toList()
            : List.of(),
        offZones,
        layout.plan().file() + " handoff.formats",
        "leave out isoxml");
  }

  /** The crops, in the order of their first areas. */
  List<String> crops() {
    return areas.stream().map(PlantedArea::crop).distinct().toList();
  }

  /** The products of a crop that have a name, in the order of their first areas. */
  List<String> products(String crop) {
    return areas.stream()
        .filter(area -> area.crop().equals(crop) && !area.product().isEmpty())
        .map(PlantedArea::product)
        .distinct()
        .toList();
  }

  /** All products that have a name, in the order of their first areas. */
  List<String> products() {
    return areas.stream()
        .map(PlantedArea::product)
        .filter(product -> !product.isEmpty())
        .distinct()
        .toList();
  }

  /** What a crop's machine must not plant, as far as it is drawn. */
  List<Geometry> offFor(String crop) {
    List<Geometry> all = new ArrayList<>();
    if (othersAreOff) {
      areas.stream().filter(a -> !a.crop().equals(crop)).forEach(a -> all.add(a.polygons()));
    }
    all.addAll(off);
    return all;
  }
}
