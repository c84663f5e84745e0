package org.lynchet.prescription.light;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.machine.Planter;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedGuidance.Position;
import org.lynchet.prescription.plan.PlannedHeadland;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * A field seen across its rows: its strips as laid out, and the separate blocks that they are held
 * against.
 *
 * <p>Beyond the outer strips lies open ground, behind the rows of a headland if that goes all
 * around. Of many strips only as many are drawn as differ in what stands beside them: the outer
 * ones, and between them each of the pattern at least once. A strip further in gets the light of
 * the one that is drawn for it. Rows are taken to be as long as the field, whatever their length:
 * where a side of the field cuts rows off at an angle, and beside holes, nothing is open.
 *
 * <p>Separate blocks are one for each crop, side by side in the pattern's order, with the strips'
 * areas, row spacings and heading, and the same beside them; they have no border rows. Where no
 * crop has more than one strip, strips are separate blocks.
 */
public final class FieldAcross {
  /** Headland that is further from the strips than this casts no shade that matters. */
  private static final double BESIDE_METRES =
      Defaults.get().number("model.headland-beside-strips-metres");

  private final List<String> crops;
  private final int period;
  private final List<FieldStrip> strips;
  private final List<CanopyRow> beside;
  private final LightRequest like;

  private FieldAcross(
      Plan plan, List<FieldStrip> strips, List<CanopyRow> beside, LightRequest like) {
    this.crops = plan.strips().stream().map(strip -> strip.crop()).distinct().toList();
    this.period = plan.strips().size();
    this.strips = strips;
    this.beside = beside;
    this.like = like;
  }

  /**
   * The field of a layout along an AB line; nothing if no row of a strip is in the field.
   *
   * @throws RejectedException with every fault of what the forecast goes by: a latitude with polar
   *     days, a crop whose canopy nobody knows, a season that ends before it starts
   */
  public static Optional<FieldAcross> of(FieldLayout layout) throws RejectedException {
    Plan plan = layout.plan();
    Coordinate a = layout.frame().toLonLat(0, 0);
    Faults faults = new Faults();
    PlanSeason season =
        new PlanSeason(plan, new Position(a.x, a.y), layout.frame().headingDegrees(), faults);
    List<FieldStrip> strips = FieldStrip.of(layout, season.canopies());
    List<CanopyRow> beside = beside(plan, season.canopies());
    faults.throwIfAny();
    List<CanopyRow> all = new ArrayList<>(beside);
    strips.forEach(strip -> strip.rows().forEach(row -> all.add(row.row())));
    return strips.isEmpty()
        ? Optional.empty()
        : Optional.of(new FieldAcross(plan, outside(strips), beside, season.requestOfMany(all)));
  }

  /** The strips without what the field does not reach of the outer ones. */
  private static List<FieldStrip> outside(List<FieldStrip> all) {
    List<FieldStrip> strips = new ArrayList<>(all);
    int last = strips.size() - 1;
    strips.set(0, strips.get(0).withoutOutside(true));
    strips.set(last, strips.get(last).withoutOutside(false));
    return strips;
  }

  /** The headland's rows on the left of the strips, the outermost first. */
  private static List<CanopyRow> beside(Plan plan, PlanCanopies canopies) {
    PlannedHeadland headland = plan.headland();
    if (headland == null
        || headland.endAngleDegrees() != null
        || !(plan.machines().get(headland.plantedBy()) instanceof Planter planter)) {
      return List.of();
    }
    Optional<CanopyTraits> canopy = canopies.find(headland.crop(), headland.seeding().product());
    double spacing = planter.rowSpacing().metres();
    int rows =
        Math.min(headland.passes() * planter.rows(), (int) Math.ceil(BESIDE_METRES / spacing));
    return canopy
        .map(traits -> new CanopyRow(0, headland.crop(), "", 0, 0, spacing, traits))
        .map(row -> Collections.nCopies(rows, row))
        .orElse(List.of());
  }

  /** Whether no crop has more than one strip. */
  public boolean isSeparateBlocks() {
    return strips.stream().map(FieldStrip::crop).distinct().count() == strips.size();
  }

  /** The strips. */
  public FieldRows strips() {
    RowsAcross across = new RowsAcross();
    across.addBeside(beside);
    for (List<FieldStrip> alike : drawn()) {
      List<CanopyRow> rows = new ArrayList<>();
      List<Double> areas = new ArrayList<>();
      for (FieldStrip.Row row : alike.get(0).rows()) {
        double area = 0;
        for (FieldStrip strip : alike.subList(1, alike.size())) {
          area += strip.rows().get(rows.size()).squareMetres();
        }
        rows.add(row.row());
        areas.add(area);
      }
      across.addStrip(rows, areas);
    }
    across.addBeside(beside);
    return across.asked(like);
  }

  /** The strips that are drawn, left to right: each first, then those that it is drawn for. */
  private List<List<FieldStrip>> drawn() {
    int last = strips.size() - 1;
    int inside = isWholePattern() ? period : last;
    int drawn = Math.min(last, inside + 1 + Math.floorMod(last - inside - 1, inside));
    List<List<FieldStrip>> all = new ArrayList<>();
    all.add(List.of(strips.get(0), strips.get(0)));
    for (int i = 1; i < drawn; i++) {
      List<FieldStrip> alike = new ArrayList<>();
      alike.add(strips.get(i));
      for (int k = i; k < last && i <= inside; k += inside) {
        alike.add(strips.get(k));
      }
      all.add(alike);
    }
    if (last > 0) {
      all.add(List.of(strips.get(last), strips.get(last)));
    }
    return all;
  }

  /** Whether no strip of the pattern is left out where the field is in parts. */
  private boolean isWholePattern() {
    int first = strips.get(0).inPattern();
    for (int i = 1; i < strips.size(); i++) {
      if (strips.get(i).inPattern() != (first + i) % period) {
        return false;
      }
    }
    return true;
  }

  /** The separate blocks. */
  public FieldRows blocks() {
    return isSeparateBlocks() ? strips() : new BlocksAcross(strips, crops, beside).asked(like);
  }
}
