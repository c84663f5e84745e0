package org.lynchet.prescription.driving;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.lynchet.prescription.machine.Handling;

/**
 * The passes of one planter in one crop, driven in one order, and what that takes.
 *
 * @param order the order
 * @param trips the passes as they are driven
 * @param turns the turns between them, one less than passes
 * @param inRowMetres the passes together, without gaps
 * @param gapMetres what is driven across gaps in passes, the planter lifted
 * @param turningMetres the turns together
 * @param inRowHours time in the row
 * @param gapHours time across gaps
 * @param turningHours time of the turns
 */
public record DrivingPlan(
    PassOrder order,
    List<Trip> trips,
    List<Turn> turns,
    double inRowMetres,
    double gapMetres,
    double turningMetres,
    double inRowHours,
    double gapHours,
    double turningHours)
    implements Serializable {

  /** Copies the lists. */
  public DrivingPlan {
    trips = List.copyOf(trips);
    turns = List.copyOf(turns);
  }

  /** Drives passes, given left to right. */
  static DrivingPlan of(PassOrder order, List<PlantedPass> passes, Handling handling) {
    List<Trip> trips = order.drive(passes);
    List<Turn> turns = new ArrayList<>();
    for (int i = 1; i < trips.size(); i++) {
      turns.add(Turn.between(trips.get(i - 1), trips.get(i), handling.turnRadius().metres()));
    }
    double inRow = passes.stream().mapToDouble(PlantedPass::inRowMetres).sum();
    double gaps = passes.stream().mapToDouble(PlantedPass::gapMetres).sum();
    return new DrivingPlan(
        order,
        trips,
        turns,
        inRow,
        gaps,
        turns.stream().mapToDouble(Turn::lengthMetres).sum(),
        FieldCapacity.hours(inRow, handling.speed()),
        FieldCapacity.hours(gaps, handling.speed()),
        turns.stream().mapToDouble(turn -> turn.hours(handling)).sum());
  }

  /** All back and forth orders, those that jump least first. */
  static List<DrivingPlan> backAndForth(List<PlantedPass> passes, Handling handling) {
    return PassOrder.backAndForth(passes.size()).stream()
        .map(order -> of(order, passes, handling))
        .toList();
  }

  /** The one with the fewest loops and, of these, the least turning. */
  static DrivingPlan best(List<DrivingPlan> plans) {
    return plans.stream()
        .min(
            Comparator.comparingInt(DrivingPlan::loops)
                .thenComparingDouble(DrivingPlan::turningMetres))
        .orElseThrow();
  }

  /** The passes as they are driven: {@code +7} is pass 7 from A to B, {@code -7} against it. */
  public String tripsInWords() {
    return trips.stream()
        .map(trip -> (trip.direction() == Direction.ALONG ? "+" : "-") + trip.pass().number())
        .collect(Collectors.joining(" "));
  }

  /** How many turns are narrower than twice the turn radius. */
  public int loops() {
    return (int) turns.stream().filter(Turn::loop).count();
  }

  /** Time in the row, across gaps and in turns; filling and waiting are not in it. */
  public double drivingHours() {
    return inRowHours + gapHours + turningHours;
  }

  /** The share of the driving time that is spent in the row. */
  public double shareInRow() {
    return FieldCapacity.shareInRow(inRowHours, gapHours + turningHours);
  }

  /** The widest turn in metres; 0 without turns. */
  public double widestTurnMetres() {
    return turns.stream().mapToDouble(Turn::widthMetres).max().orElse(0);
  }

  /** The narrowest turn in metres; 0 without turns. */
  public double narrowestTurnMetres() {
    return turns.stream().mapToDouble(Turn::widthMetres).min().orElse(0);
  }
}
