package org.lynchet.prescription.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryCollection;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedGuidance.Position;
import org.lynchet.prescription.plan.PlannedSetback;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.setback.Neighbour;

/** Reads the lines and areas of the neighbours that a plan names, and checks its entrance. */
public final class NeighbourFiles {
  private final Geometry boundary;
  private final Faults faults;

  private NeighbourFiles(Geometry boundary, Faults faults) {
    this.boundary = boundary;
    this.faults = faults;
  }

  /**
   * The neighbours, in the plan's order.
   *
   * @param boundary the field, in longitude and latitude
   * @param warnings takes what deserves a second look
   * @throws RejectedException with every fault of every file
   */
  public static List<Neighbour> read(Plan plan, Geometry boundary, List<Warning> warnings)
      throws RejectedException {
    Faults faults = new Faults();
    InputTables tables = new InputTables(NamedBy.plan(plan.file()), faults, warnings);
    NeighbourFiles files = new NeighbourFiles(boundary, faults);
    files.checkEntrance(plan);
    List<Neighbour> neighbours = new ArrayList<>();
    plan.setback()
        .neighbours()
        .forEach(
            (name, planned) ->
                tables
                    .readLines(planned.file(), "setback.neighbours." + name + ".file")
                    .flatMap(table -> files.neighbour(name, planned, table))
                    .ifPresent(neighbours::add));
    faults.throwIfAny();
    return neighbours;
  }

  private void checkEntrance(Plan plan) {
    Position at = plan.field().entrance();
    if (at == null) {
      return;
    }
    double metres = NearField.metresFrom(boundary, at.longitudeDegrees(), at.latitudeDegrees());
    if (metres > NearField.FARTHEST) {
      fault(
          plan.place("field.entrance"),
          String.format(Locale.ROOT, "the entrance is %.0f km from the field", metres / 1000),
          "a place at most 10 km from the field; longitude first, then latitude",
          "check both numbers and their order");
    }
  }

  private Optional<Neighbour> neighbour(
      String name, PlannedSetback.Neighbour planned, FeatureTable table) {
    List<Geometry> shapes = new ArrayList<>();
    for (Feature feature : table.features()) {
      addShapes(feature.geometry(), shapes);
    }
    if (shapes.isEmpty()) {
      fault(
          planned.file(),
          "the file of the neighbour " + name + " has no line and no area",
          "lines or polygons",
          "save the neighbour as a line or an area, not as points");
      return Optional.empty();
    }
    double metres = nearest(shapes);
    if (!(metres <= NearField.FARTHEST)) {
      fault(
          planned.file(),
          String.format(
              Locale.ROOT, "the neighbour %s is %.0f km from the field", name, metres / 1000),
          "a line or an area at most 10 km from the field",
          "check the file and its coordinate system, or leave the neighbour out");
      return Optional.empty();
    }
    Length distance = planned.distance();
    Geometry all = boundary.getFactory().createGeometryCollection(shapes.toArray(Geometry[]::new));
    return Optional.of(new Neighbour(name, all, distance == null ? 0 : distance.metres()));
  }

  private static void addShapes(Geometry geometry, List<Geometry> shapes) {
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      Geometry one = geometry.getGeometryN(i);
      if (one instanceof GeometryCollection) {
        addShapes(one, shapes);
      } else if (!one.isEmpty() && (one instanceof LineString || one instanceof Polygon)) {
        // Where only distances count, the nearest valid area is as good as the one drawn.
        shapes.add(one.isValid() ? one : GeometryFixer.fix(one));
      }
    }
  }

  private double nearest(List<Geometry> shapes) {
    double nearest = Double.POSITIVE_INFINITY;
    for (Geometry shape : shapes) {
      for (Coordinate at : shape.getCoordinates()) {
        nearest = Math.min(nearest, NearField.metresFrom(boundary, at.x, at.y));
      }
    }
    return nearest;
  }

  private void fault(String where, String what, String allowed, String next) {
    faults.add(what, where, allowed, next);
  }
}
