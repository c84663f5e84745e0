package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.lynchet.prescription.plan.PlannedSetback;
import org.lynchet.prescription.plan.PlannedSetback.Side;
import org.lynchet.prescription.quantity.Count;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.setback.Neighbour;
import org.lynchet.prescription.setback.SprayPlan;
import org.lynchet.prescription.spraying.SprayPass;
import org.lynchet.prescription.spraying.SprayedArea;
import org.lynchet.prescription.zone.FieldLayout;

/** Lists crops with what is sprayed of them, what is set aside, and the signs of the spray map. */
final class SprayLegend {
  private final FieldLayout layout;
  private final SprayPlan spray;
  private final UnitSystem units;
  private final SprayMap map;
  private final List<LegendRow> rows = new ArrayList<>();

  SprayLegend(FieldLayout layout, SprayPlan spray, UnitSystem units, SprayMap map) {
    this.layout = layout;
    this.spray = spray;
    this.units = units;
    this.map = map;
  }

  /**
   * The rows in columns.
   *
   * @param guidance what the guidance line is called; empty if the map does not show it
   * @param entrance whether the map shows the entrance
   */
  LegendColumns columns(String guidance, boolean entrance) {
    layout.spraying().crops().forEach(this::addCrop);
    double sprayed = spray.areas().stream().mapToDouble(SprayedArea::areaSquareMetres).sum();
    rows.add(new LegendRow(LegendRow.Sign.NONE, "sprayed in all", "", area(sprayed), true));
    addSetAside();
    spray.neighbours().forEach(this::addNeighbour);
    if (!guidance.isEmpty()) {
      rows.add(new LegendRow(AbLineMarks::sign, guidance, "", "", false));
    }
    if (entrance) {
      rows.add(
          new LegendRow(
              box -> SprayMap.entranceSign(box.centreX(), box.bottom()),
              "entrance",
              "",
              "",
              false));
    }
    return new LegendColumns(rows);
  }

  private void addCrop(String crop) {
    List<SprayPass> passes =
        layout.spraying().passes().stream().filter(pass -> pass.crop().equals(crop)).toList();
    if (!passes.isEmpty()) {
      long strips = passes.stream().map(SprayPass::strip).distinct().count();
      String open =
          passes.stream()
              .map(SprayPass::openInWords)
              .distinct()
              .collect(Collectors.joining(" or "));
      addArea(crop, "", false, Count.of(strips, "strip") + ", " + open);
    }
    if (layout.spraying().areas().stream()
        .anyMatch(area -> area.crop().equals(crop) && area.strip() == 0)) {
      addArea(crop, ", headland", true, "around the boundary");
    }
  }

  private void addArea(String crop, String part, boolean headland, String words) {
    double squareMetres =
        spray.areas().stream()
            .filter(area -> area.crop().equals(crop) && headland == (area.strip() == 0))
            .mapToDouble(SprayedArea::areaSquareMetres)
            .sum();
    rows.add(
        new LegendRow(
            LegendRow.Sign.of(map.look(crop, headland)),
            crop + part,
            cut(words, LegendRow.roomBelow()),
            area(squareMetres),
            true));
  }

  private void addSetAside() {
    double squareMetres =
        spray.setAside().stream().mapToDouble(SprayPlan.SetAside::areaSquareMetres).sum();
    PlannedSetback setback = layout.plan().setback();
    String sides =
        setback.sides().entrySet().stream()
            .map(side -> word(side.getKey()) + " " + length(side.getValue()))
            .collect(Collectors.joining(", "));
    boolean anyNear = spray.neighbours().stream().anyMatch(one -> one.distanceMetres() > 0);
    String near = anyNear ? "; near neighbours" : "";
    if (squareMetres > 0 || !sides.isEmpty()) {
      rows.add(
          new LegendRow(
              LegendRow.Sign.of(SprayMap.SET_ASIDE),
              "set aside, not sprayed",
              cut(
                  sides.isEmpty() ? "near neighbours" : "sides: " + sides + near,
                  LegendRow.roomBelow()),
              area(squareMetres),
              true));
    }
  }

  private void addNeighbour(Neighbour neighbour) {
    PlannedSetback.Neighbour planned = layout.plan().setback().neighbours().get(neighbour.name());
    Length distance = planned == null ? null : planned.distance();
    LegendRow.Sign sign =
        box ->
            List.of(
                new Mark.Area(Outline.of(box), OptionalInt.empty(), NeighbourMarks.HATCHES),
                new Mark.Line(
                    Outline.of(box), Scene.INK, NeighbourMarks.WIDTH, NeighbourMarks.DASH));
    rows.add(
        new LegendRow(
            sign,
            cut("neighbour: " + SafeText.of(neighbour.name()), LegendRow.roomBeside("")),
            (distance == null ? "no setback in the plan" : "set back " + length(distance))
                + (map.shows(neighbour) ? "" : "; not on this map"),
            "",
            false));
  }

  /** This legend is on paper only, whose font is known. */
  private static String cut(String words, double room) {
    return FontWidths.get().cut(words, room, LegendRow.SIZE, false);
  }

  private static String word(Side side) {
    return side.name().toLowerCase(Locale.ROOT);
  }

  private static String length(Length length) {
    return String.format(Locale.ROOT, "%.2f", length.amount()).replaceAll("\\.?0+$", "")
        + " "
        + length.unit().symbol();
  }

  private String area(double squareMetres) {
    return units.area(squareMetres, layout.areaSquareMetres());
  }
}
