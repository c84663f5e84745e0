package org.lynchet.prescription.placement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.lynchet.geometry.coverage.Cell;
import org.lynchet.geometry.coverage.Coverage;
import org.lynchet.geometry.coverage.CrossSection;
import org.lynchet.geometry.coverage.FieldShape;
import org.lynchet.geometry.coverage.Piece;
import org.lynchet.geometry.coverage.Regions;
import org.lynchet.geometry.pass.Pass;
import org.lynchet.geometry.strip.Bands;
import org.lynchet.geometry.strip.Strip;
import org.lynchet.geometry.strip.StripLayout;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.zone.FieldData;
import org.lynchet.prescription.zone.PlanPattern;

/**
 * Lays a placement out for real, unrounded, and measures its terms on the cells: nothing is swept,
 * and how long a pass runs on its full width comes from overlays.
 */
final class LaidOut {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** A piece that ends this near to an edge of its pass reaches it, as for partial passes. */
  private static final double REACHES = 0.01;

  private final Plan plan;
  private final Map<String, Double> cropAreas = new HashMap<>();
  private final Map<String, Set<Integer>> passesOfPlanter = new HashMap<>();
  private double partial;
  private double pointRows;
  private double headland;
  private int pieces;

  private LaidOut(Plan plan) {
    this.plan = plan;
  }

  /** The terms of a plan's pattern along the AB line of a field's frame. */
  static PlacementTerms terms(Plan plan, FieldData field) {
    LaidOut laidOut = new LaidOut(plan);
    laidOut.measure(field);
    return laidOut.terms();
  }

  private void measure(FieldData field) {
    Regions regions =
        Regions.divided(
            FieldShape.of(field.boundary(), field.frame()),
            PlanPattern.headland(plan, field.guidance()),
            List.of());
    CrossSection inside = regions.insideHeadland();
    StripLayout strips =
        PlanPattern.of(plan)
            .over(inside.minOffsetMetres(), inside.maxOffsetMetres(), inside::areasSquareMetres);
    Bands bands = strips.passBands();
    Coverage cut = Coverage.cut(regions, bands.cutsMetres());
    for (Cell cell : cut.cells()) {
      headland += cell.band() == Cell.NO_BAND ? cut.areaSquareMetres(cell) : 0;
    }
    // Passes are numbered from 1, left to right.
    List<Pass> passes = new ArrayList<>();
    List<PlannedStrip> stripOfPass = new ArrayList<>();
    for (Strip strip : strips.strips()) {
      for (Pass pass : strip.passes()) {
        passes.add(pass);
        stripOfPass.add(plan.strips().get(strip.inPattern()));
      }
    }
    for (Piece piece :
        cut.pieces(cell -> cell.band() == Cell.NO_BAND ? -1 : bands.get(cell.band()).pass())) {
      int at = piece.group() - 1;
      add(cut, piece, passes.get(at), stripOfPass.get(at));
    }
  }

  private void add(Coverage cut, Piece piece, Pass pass, PlannedStrip strip) {
    double from = pass.leftMetres() + REACHES;
    double to = pass.rightMetres() - REACHES;
    if (piece.minOffsetMetres() <= from && piece.maxOffsetMetres() >= to) {
      double full = fullLength(cut, piece, from, to) * (pass.rightMetres() - pass.leftMetres());
      pointRows += Math.max(0, piece.areaSquareMetres() - full);
    } else {
      partial += piece.areaSquareMetres();
    }
    pieces++;
    cropAreas.merge(strip.crop(), piece.areaSquareMetres(), Double::sum);
    passesOfPlanter
        .computeIfAbsent(strip.plantedBy() + " " + strip.crop(), key -> new HashSet<>())
        .add(pass.number());
  }

  /**
   * All that a box around the piece has along the AB line, less the reach of each part of the box
   * that the piece leaves out.
   */
  private static double fullLength(Coverage cut, Piece piece, double from, double to) {
    List<Geometry> cells = new ArrayList<>();
    piece.cells().forEach(i -> cells.add(cut.inOffsetFrame(cut.cells().get(i))));
    Envelope box = new Envelope(from, to, piece.minAlongMetres() - 1, piece.maxAlongMetres() + 1);
    Geometry outside = FACTORY.toGeometry(box).difference(FACTORY.buildGeometry(cells).union());
    List<Envelope> parts = new ArrayList<>();
    for (int i = 0; i < outside.getNumGeometries(); i++) {
      parts.add(outside.getGeometryN(i).getEnvelopeInternal());
    }
    parts.sort(Comparator.comparingDouble(Envelope::getMinY));
    double covered = 0;
    double end = box.getMinY();
    for (Envelope part : parts) {
      covered += Math.max(0, part.getMaxY() - Math.max(end, part.getMinY()));
      end = Math.max(end, part.getMaxY());
    }
    return box.getHeight() - covered;
  }

  private PlacementTerms terms() {
    double all = cropAreas.values().stream().mapToDouble(Double::doubleValue).sum();
    double width = 0;
    Map<String, Double> widths = new HashMap<>();
    for (PlannedStrip strip : plan.strips()) {
      double passes =
          strip.passes() * PlanPattern.planter(plan, strip.plantedBy()).workingWidthMetres();
      widths.merge(strip.crop(), passes, Double::sum);
      width += passes;
    }
    Map<String, Double> wanted = plan.guidance().placement().wantedShares();
    double off = 0;
    for (Map.Entry<String, Double> crop : widths.entrySet()) {
      double share =
          wanted.isEmpty() ? crop.getValue() / width : wanted.getOrDefault(crop.getKey(), 0.0);
      off += Math.abs(cropAreas.getOrDefault(crop.getKey(), 0.0) - share * all);
    }
    int turns = passesOfPlanter.values().stream().mapToInt(passes -> passes.size() - 1).sum();
    return new PlacementTerms(partial, pointRows, headland, off / 2, pieces, turns);
  }
}
