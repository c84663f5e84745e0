package org.lynchet.prescription.convert;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.PlainDecimal;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.intake.FieldOutline;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.SeedingRate;
import org.lynchet.prescription.taskdata.PlantedArea;
import org.lynchet.prescription.taskdata.PlantedField;

/**
 * Makes a planted field of a table of areas with rates, as planting files are: columns rate and
 * rate_unit, and crop and product if they are known, their names in any case.
 */
final class PlantedTable {
  private final FeatureTable table;
  private final String file;
  private final List<Warning> warnings;
  private final Faults faults = new Faults();
  private final FeatureFaults wrong = new FeatureFaults();
  private final AreaCheck check = new AreaCheck(wrong);
  private final AreaOverlaps overlaps = new AreaOverlaps();
  private final List<PlantedArea> planted = new ArrayList<>();
  private final List<Geometry> off = new ArrayList<>();
  private final int crop;
  private final int product;
  private final int rate;
  private final int unit;

  /**
   * Takes a table.
   *
   * @param file what it is called in faults
   * @param warnings takes what is left out or doubtful
   */
  PlantedTable(FeatureTable table, String file, List<Warning> warnings) {
    this.table = table;
    this.file = file;
    this.warnings = warnings;
    this.crop = column(table, "crop");
    this.product = column(table, "product");
    this.rate = column(table, "rate");
    this.unit = column(table, "rate_unit");
  }

  /** Whether a table says how much is planted. */
  static boolean isOne(FeatureTable table) {
    return column(table, "rate") >= 0 && column(table, "rate_unit") >= 0;
  }

  private static int column(FeatureTable table, String name) {
    for (int c = 0; c < table.columns().size(); c++) {
      if (table.columns().get(c).name().toLowerCase(Locale.ROOT).equals(name)) {
        return c;
      }
    }
    return -1;
  }

  /**
   * The field.
   *
   * @throws RejectedException with everything that cannot be planted
   */
  PlantedField make() throws RejectedException {
    int areas = 0;
    for (int i = 0; i < table.features().size(); i++) {
      Geometry area = FieldOutline.polygonsOf(table.features().get(i).geometry());
      if (!area.isEmpty()) {
        areas++;
        if (check.isArea(i, area)) {
          add(i, area);
        }
      }
    }
    overlaps.tell(wrong);
    wrong.tell(file, faults);
    AreaCheck.checkTable(table, areas, file, faults);
    if (faults.isEmpty() && planted.isEmpty()) {
      faults.add("nothing is planted", file, "at least one rate above 0", "check the rates");
    }
    faults.throwIfAny();
    Leftovers.warn(table.features().size() - areas, "cannot be a treatment zone", warnings);
    Leftovers.warn(
        table,
        c -> c == crop || c == product || c == rate || c == unit,
        "a treatment zone has a crop, a product and a rate only",
        warnings);
    return field();
  }

  private void add(int i, Geometry area) {
    String grown = text(i, crop);
    String sown = text(i, product);
    check.checkName(i, grown);
    check.checkName(i, sown);
    Optional<SeedingRate> seeds = rate(i);
    if (seeds.isPresent()) {
      boolean nothing =
          seeds.get().seeds() == 0
              && (sown.isEmpty()
                  || sown.equals(PlantedArea.NOTHING)
                  || grown.equals(PlantedArea.NOTHING));
      overlaps.add(i, nothing ? "" : grown, area);
      if (nothing) {
        off.add(area);
      } else {
        planted.add(new PlantedArea(grown, sown, seeds.get(), area));
      }
    }
  }

  private String text(int i, int column) {
    return column < 0
        ? ""
        : Objects.toString(table.features().get(i).values().get(column), "").strip();
  }

  private Optional<SeedingRate> rate(int i) {
    String of = text(i, unit);
    Optional<AreaUnit> per =
        Arrays.stream(AreaUnit.values()).filter(u -> unit(u).equals(of)).findFirst();
    if (per.isEmpty()) {
      wrong.add(
          i,
          of.isEmpty() ? "a rate without a unit" : "a rate in '" + of + "'",
          Arrays.stream(AreaUnit.values())
              .map(PlantedTable::unit)
              .collect(Collectors.joining(", ")),
          "give seeding rates in one of these, or leave the column rate out to take over"
              + " boundaries only");
    }
    Object value = table.features().get(i).values().get(rate);
    // A column of numbers and texts comes as texts.
    double seeds = value instanceof Double number ? number : PlainDecimal.parse(text(i, rate));
    double most = SeedingRate.MOST_PER_SQUARE_METRE * per.orElse(AreaUnit.ACRE).squareMetres();
    if (seeds >= 0 && seeds <= most) {
      return per.map(u -> new SeedingRate(seeds, u));
    }
    wrong.add(
        i,
        value == null ? "no rate" : "no rate that can be planted: " + shown(value),
        "a number, " + SeedingRate.ALLOWED,
        "check the column " + table.columns().get(rate).name());
    return Optional.empty();
  }

  private static String shown(Object value) {
    return value instanceof Double number ? PlainDecimal.of(number) : value.toString();
  }

  private static String unit(AreaUnit per) {
    return new SeedingRate(0, per).unit();
  }

  private PlantedField field() throws RejectedException {
    List<Geometry> all = new ArrayList<>(off);
    planted.forEach(area -> all.add(area.polygons()));
    Geometry whole = FieldOutline.polygonsOf(OverlayNGRobust.union(all));
    if (FieldOutline.metresAcross(whole) > FieldOutline.LARGEST_METRES) {
      faults.add(
          "areas that are too far apart for one field",
          file,
          "a field of at most 20 km",
          "convert field by field");
    }
    faults.throwIfAny();
    double squareMetres = FieldOutline.squareMetres(whole, whole);
    String name = table.name().isBlank() ? "field" : table.name();
    return new PlantedField(
        name, whole, squareMetres, planted, off, false, file, "choose another format");
  }
}
