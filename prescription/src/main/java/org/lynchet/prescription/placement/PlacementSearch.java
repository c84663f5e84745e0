package org.lynchet.prescription.placement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.geometry.frame.RoundedDegrees;
import org.lynchet.geometry.guidance.OffsetFrame;
import org.lynchet.geometry.strip.StripPattern;
import org.lynchet.geometry.sweep.SweptField;
import org.lynchet.prescription.plan.PlacementChoices;
import org.lynchet.prescription.plan.PlacementChoices.Kind;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedGuidance.Position;
import org.lynchet.prescription.plan.PlannedHeadland;
import org.lynchet.prescription.zone.FieldData;
import org.lynchet.prescription.zone.PlanPattern;

/**
 * Searches the placement that costs least, among all start offsets on all headings of the plan.
 *
 * <p>The plan's own heading and offset are always among them. Of placements that cost the same, the
 * one that turns the AB line least is taken, then the one that moves it least, then clockwise and
 * to the right; so the result is the same on every machine.
 */
public final class PlacementSearch {
  /**
   * Costs within this of the least, in square metres, are the same: far above rounding errors,
   * which may differ between machines, and far below anything that matters.
   */
  private static final double SAME_COST = 0.01;

  /** Headings within this of each other, in degrees, are the same. */
  private static final double SAME_HEADING = 1e-7;

  private static final double LEAST_LINE_METRES = 100;

  private final Plan plan;
  private final FieldData field;
  private final StripPattern pattern;
  private final InsideHeadland inside;

  /** The field inside the headland, as seen from a line turned about A. */
  private record Seen(SweptField swept, double headlandSquareMetres) {}

  private record Candidate(double turnDegrees, double shiftMetres, double cost) {}

  private static final Comparator<Candidate> LEAST_CHANGE =
      Comparator.comparingDouble((Candidate c) -> Math.abs(c.turnDegrees))
          .thenComparingDouble(c -> Math.abs(c.shiftMetres))
          .thenComparing(Comparator.comparingDouble((Candidate c) -> c.turnDegrees).reversed())
          .thenComparing(Comparator.comparingDouble((Candidate c) -> c.shiftMetres).reversed());

  private PlacementSearch(Plan plan, FieldData field) {
    this.plan = plan;
    this.field = field;
    this.pattern = PlanPattern.of(plan);
    this.inside = InsideHeadland.of(plan, field);
  }

  /** The result, or nothing if the plan's placement is fixed. */
  public static Optional<PlacementResult> of(Plan plan, FieldData field) {
    return plan.guidance().placement().kind() == Kind.BEST
        ? Optional.of(new PlacementSearch(plan, field).search())
        : Optional.empty();
  }

  private PlacementResult search() {
    PlacementChoices choices = plan.guidance().placement();
    List<Double> turns = turns(choices);
    List<Candidate> candidates = new ArrayList<>();
    for (double turn : turns) {
      addCandidates(turn, candidates);
    }
    double least = candidates.stream().mapToDouble(Candidate::cost).min().orElseThrow();
    Candidate best =
        candidates.stream()
            .filter(candidate -> candidate.cost <= least + SAME_COST)
            .min(LEAST_CHANGE)
            .orElseThrow();
    OffsetFrame frame = frame(best);
    return new PlacementResult(
        turns.size(),
        candidates.size(),
        choices.weights(),
        wantedShares(),
        placement(0, 0),
        placement(best.turnDegrees, best.shiftMetres),
        frame,
        position(frame, 0),
        position(frame, Math.max(LEAST_LINE_METRES, reachAlong(frame))));
  }

  /**
   * By how much the line is turned for each heading, (-90, 90]; its own first. Of a heading and its
   * opposite, along which the rows are the same, the nearer one is taken: left stays left.
   */
  private List<Double> turns(PlacementChoices choices) {
    List<Double> turns = new ArrayList<>();
    turns.add(0.0);
    for (double heading : choices.headingsDegrees()) {
      double turn = heading - field.frame().headingDegrees();
      double nearer = turn - 180 * Math.ceil(turn / 180 - 0.5);
      if (turns.stream().noneMatch(other -> Math.abs(other - nearer) <= SAME_HEADING)) {
        turns.add(nearer);
      }
    }
    return turns;
  }

  private void addCandidates(double turn, List<Candidate> candidates) {
    Seen seen = seen(turn);
    SweptField swept = seen.swept();
    PlacementReader reader = reader(seen);
    double min = swept.isEmpty() ? 0 : swept.minOffsetMetres();
    double max = swept.isEmpty() ? 0 : swept.maxOffsetMetres();
    for (double shift : StartOffsets.of(pattern, min, max)) {
      PlacementTerms terms = reader.read(pattern.shifted(shift));
      candidates.add(
          new Candidate(
              turn, shift, terms.costSquareMetres(plan.guidance().placement().weights())));
    }
  }

  /** A headland all around lies where it does; one where rows end goes with their heading. */
  private Seen seen(double turn) {
    PlannedHeadland headland = plan.headland();
    if (turn == 0 || headland == null || headland.endAngleDegrees() == null) {
      return new Seen(inside.swept(turn), inside.headlandSquareMetres());
    }
    OffsetFrame turned = field.frame().turned(Math.toRadians(turn));
    InsideHeadland other = InsideHeadland.of(plan, field.withFrame(turned));
    return new Seen(other.swept(0), other.headlandSquareMetres());
  }

  private PlacementReader reader(Seen seen) {
    return new PlacementReader(plan, pattern, seen.swept(), seen.headlandSquareMetres());
  }

  private Placement placement(double turn, double shift) {
    PlacementReader reader = reader(seen(turn));
    PlacementTerms terms = reader.read(pattern.shifted(shift));
    return new Placement(
        turn,
        shift,
        terms,
        terms.costSquareMetres(plan.guidance().placement().weights()),
        reader.cropAreas());
  }

  private Map<String, Double> wantedShares() {
    WantedShares wanted = WantedShares.of(plan, pattern);
    Map<String, Double> shares = new LinkedHashMap<>();
    for (int i = 0; i < wanted.crops().size(); i++) {
      shares.put(wanted.crops().get(i), wanted.shares().get(i));
    }
    return shares;
  }

  /** The plan's own frame, untouched, if nothing changes. */
  private OffsetFrame frame(Candidate best) {
    OffsetFrame turned =
        best.turnDegrees == 0
            ? field.frame()
            : field.frame().turned(Math.toRadians(best.turnDegrees));
    return best.shiftMetres == 0 ? turned : turned.movedRight(best.shiftMetres);
  }

  private double reachAlong(OffsetFrame frame) {
    double reach = Double.NEGATIVE_INFINITY;
    for (Coordinate at : field.boundary().getCoordinates()) {
      reach = Math.max(reach, frame.toOffset(at.x, at.y).y);
    }
    return reach;
  }

  private static Position position(OffsetFrame frame, double along) {
    Coordinate at = RoundedDegrees.of(frame.toLonLat(0, along));
    return new Position(at.x, at.y);
  }
}
