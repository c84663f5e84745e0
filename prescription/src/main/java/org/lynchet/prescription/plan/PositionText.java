package org.lynchet.prescription.plan;

import java.util.Optional;
import org.lynchet.prescription.plan.PlanNode.Listing;
import org.lynchet.prescription.plan.PlannedGuidance.Position;

/** Reads a position, {@code [longitude, latitude]}. */
final class PositionText {
  private static final String ALLOWED =
      "[longitude, latitude] in degrees: -180 to 180 (east positive), then -90 to 90 (north"
          + " positive)";

  private PositionText() {}

  static Optional<Position> read(PlanNode node, PlanFaults faults) {
    if (!(node instanceof Listing list) || list.items().size() != 2) {
      faults.add(
          node.place(),
          node instanceof Listing other
              ? "a position of " + other.items().size() + " numbers"
              : node.kind() + " is not a position",
          ALLOWED,
          "write two numbers in brackets, longitude first");
      return Optional.empty();
    }
    ValueReader<Double> degrees = NumberText.degrees(ALLOWED);
    Optional<Double> longitude = degrees.read(list.items().get(0), faults);
    Optional<Double> latitude = degrees.read(list.items().get(1), faults);
    return longitude.isPresent() && latitude.isPresent()
        ? position(list, longitude.get(), latitude.get(), faults)
        : Optional.empty();
  }

  private static Optional<Position> position(
      Listing list, double longitude, double latitude, PlanFaults faults) {
    boolean longitudeFits = Math.abs(longitude) <= 180;
    boolean latitudeFits = Math.abs(latitude) <= 90;
    boolean swapped = Math.abs(longitude) <= 90 && Math.abs(latitude) <= 180 && !latitudeFits;
    if (longitudeFits && latitudeFits) {
      return Optional.of(new Position(longitude, latitude));
    }
    String next = swapped ? "they look swapped: longitude comes first" : "correct the number";
    if (!longitudeFits) {
      PlanNode node = list.items().get(0);
      faults.add(node.place(), node.kind() + " is not a longitude", ALLOWED, next);
    }
    if (!latitudeFits) {
      PlanNode node = list.items().get(1);
      faults.add(node.place(), node.kind() + " is not a latitude", ALLOWED, next);
    }
    return Optional.empty();
  }
}
