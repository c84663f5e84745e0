package org.lynchet.prescription.setback;

import java.io.Serializable;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.spraying.SprayedArea;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * What is sprayed of a field once setbacks are kept.
 *
 * @param areas the sprayed areas, as {@link org.lynchet.prescription.spraying.Spraying} has them,
 *     less what is set aside
 * @param setAside what is set aside, with the crop that grows there
 * @param neighbours the neighbours that the plan names
 * @param warnings setbacks that set nothing aside, or all of a crop
 */
public record SprayPlan(
    List<SprayedArea> areas,
    List<SetAside> setAside,
    List<Neighbour> neighbours,
    List<Warning> warnings)
    implements Serializable {

  /** Copies the lists. */
  public SprayPlan {
    areas = List.copyOf(areas);
    setAside = List.copyOf(setAside);
    neighbours = List.copyOf(neighbours);
    warnings = List.copyOf(warnings);
  }

  /**
   * A part of a sprayed area that a setback takes.
   *
   * @param crop the crop
   * @param areaSquareMetres how much
   * @param shape where: polygons, longitude (x) and latitude (y) in degrees
   */
  public record SetAside(String crop, double areaSquareMetres, Geometry shape)
      implements Serializable {}

  /** Keeps the setbacks of a layout's plan. */
  public static SprayPlan of(FieldLayout layout, List<Neighbour> neighbours) {
    return new SetbackCutter(layout, neighbours).cut();
  }

  /** The area of a crop that is sprayed. */
  public double sprayedSquareMetres(String crop) {
    return areas.stream()
        .filter(area -> area.crop().equals(crop))
        .mapToDouble(SprayedArea::areaSquareMetres)
        .sum();
  }

  /** The area of a crop that is set aside. */
  public double setAsideSquareMetres(String crop) {
    return setAside.stream()
        .filter(area -> area.crop().equals(crop))
        .mapToDouble(SetAside::areaSquareMetres)
        .sum();
  }
}
