package org.lynchet.prescription.handoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lynchet.prescription.zone.SamplePlans.cornAndSoybean;
import static org.lynchet.prescription.zone.SamplePlans.field;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.formats.FeatureReader;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.geojson.GeoJson;
import org.lynchet.formats.geopackage.GeoPackage;
import org.lynchet.formats.isoxml.TaskData;
import org.lynchet.formats.isoxml.TaskSet;
import org.lynchet.formats.kml.Kml;
import org.lynchet.formats.shapefile.Shapefile;
import org.lynchet.prescription.plan.HandoffChoices.Format;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.summary.Summary;
import org.lynchet.prescription.zone.CurvedFields;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.SamplePlans;

/** Writes one plan in all formats and holds them against each other. */
class CrossFormatTest {
  private static final String FIELD =
      "POLYGON ((0 0, 60 -10, 80 200, 10 220, 0 0), (20 40, 30 80, 40 40, 20 40))";

  /** Half a step of DDI 11, 0.0005 seeds/m2, in seeds/ac: 2.02. */
  private static final double HALF_STEP = 0.0005 * AreaUnit.ACRE.squareMetres();

  @TempDir Path folder;
  private Path out = Path.of("");

  /** What a product's zones come to, in one format: count, square degrees, rates. */
  private record Total(int count, double area, Map<Double, Integer> rates) {}

  @BeforeEach
  void writeAll() throws Exception {
    out = folder.resolve("out");
    FieldLayout layout =
        FieldLayout.of(
            cornAndSoybean().headland(1, true).sprayer(90, 10.0).formats(Format.values()).plan(),
            field(FIELD));
    Handoff.of(layout, Summary.of(layout)).write(out, false);
  }

  @Test
  void allTablesSayTheSame() throws Exception {
    Map<String, Total> plan = totals(GeoJson.reader(), "plan.geojson");
    assertThat(plan).hasSize(3);
    same(plan, totals(GeoPackage.reader("zones"), "plan.gpkg"));
    same(plan, totals(Kml.reader("zones"), "plan.kml"));
    for (String ending : new String[] {".shp", ".geojson"}) {
      FeatureReader reader = ending.equals(".shp") ? Shapefile.reader() : GeoJson.reader();
      Map<String, Total> both = totals(reader, "planting/corn" + ending);
      both.putAll(totals(reader, "planting/soybean" + ending));
      same(plan, both);
    }
  }

  /** Files are read back and compared as they are written. */
  @ParameterizedTest
  @EnumSource(Format.class)
  void eachFormatAloneIsWrittenAlongACurve(Format format) throws Exception {
    SamplePlans plans = cornAndSoybean().headlandAtEnds(1, 30).sprayer(90, 10.0).formats(format);
    FieldLayout layout = FieldLayout.of(plans.plan(), CurvedFields.ring(null));
    Path alone = folder.resolve("alone");
    Handoff.of(layout, Summary.of(layout)).write(alone, false);
    boolean oneTable = format == Format.SHAPEFILE || format == Format.GEOJSON;
    assertThat(Files.exists(alone.resolve("spraying"))).isEqualTo(oneTable);
    assertThat(Files.readString(alone.resolve("README.txt")))
        .contains(oneTable ? "spraying/corn" : "no files: add shapefile or geojson");
  }

  @Test
  void taskDataSaysTheSameToItsOwnRounding() throws Exception {
    Map<String, Total> plan = totals(GeoJson.reader(), "plan.geojson");
    TaskSet set = TaskData.read(out.resolve("taskdata/TASKDATA.zip"));
    Map<String, Integer> counts = new TreeMap<>();
    Map<String, Double> areas = new TreeMap<>();
    for (TaskSet.Task task : set.tasks()) {
      for (TaskSet.Zone zone : task.zones().subList(1, task.zones().size())) {
        counts.merge(zone.name(), zone.area().getNumGeometries(), Integer::sum);
        areas.merge(zone.name(), zone.area().getArea(), Double::sum);
        double sent = zone.values().get(0).value() * 0.001 * AreaUnit.ACRE.squareMetres();
        assertThat(plan.get(zone.name())).isNotNull();
        assertThat(Objects.requireNonNull(plan.get(zone.name())).rates().keySet())
            .anySatisfy(rate -> assertThat(rate).isCloseTo(sent, within(HALF_STEP)));
      }
    }
    plan.forEach(
        (product, total) -> {
          assertThat(counts).containsEntry(product, total.count());
          assertThat(areas.getOrDefault(product, 0.0))
              .isCloseTo(total.area(), within(1e-12 * total.area()));
        });
  }

  /** Where machines must not plant, planting files and task data draw the same. */
  @Test
  void offZonesAreTheSameOverWaterwaysToo() throws Exception {
    String way = "POLYGON ((-5 100, 300 100, 300 104, -5 104, -5 100))";
    FieldLayout layout =
        FieldLayout.of(
            cornAndSoybean().headland(1, true).offZones().formats(Format.values()).plan(),
            SamplePlans.fieldWithWaterways(FIELD, way));
    Path wet = folder.resolve("wet");
    Handoff.of(layout, Summary.of(layout)).write(wet, false);
    TaskSet set = TaskData.read(wet.resolve("taskdata/TASKDATA.zip"));
    for (TaskSet.Task task : set.tasks()) {
      String crop = task.name().split(" ", 2)[0];
      FeatureTable planting = Shapefile.reader().read(wet.resolve("planting/" + crop + ".shp"));
      double off =
          planting.features().stream()
              .filter(feature -> "off".equals(feature.values().get(column(planting, "zone"))))
              .mapToDouble(feature -> feature.geometry().getArea())
              .sum();
      assertThat(off).isPositive();
      assertThat(task.zones().get(0).area().getArea()).isCloseTo(off, within(1e-12 * off));
    }
  }

  @Test
  void passesAndBoundaryAreTheSame() throws Exception {
    FeatureTable lines = GeoJson.reader().read(out.resolve("guidance/passes.geojson"));
    FeatureTable inPackage = GeoPackage.reader("passes").read(out.resolve("plan.gpkg"));
    FeatureTable inKml = Kml.reader("passes").read(out.resolve("plan.kml"));
    assertThat(ReadBack.differences(lines, inPackage, true)).isEmpty();
    assertThat(ReadBack.differences(lines, inKml, true)).isEmpty();
    Geometry boundary =
        GeoPackage.reader("boundary").read(out.resolve("plan.gpkg")).features().get(0).geometry();
    TaskSet set = TaskData.read(out.resolve("taskdata/TASKDATA.zip"));
    assertThat(set.partFields().get(0).boundary().getGeometryN(0).equalsExact(boundary, 1e-9))
        .isTrue();
  }

  private Map<String, Total> totals(FeatureReader reader, String path) throws FormatException {
    FeatureTable table = reader.read(out.resolve(path));
    int product = column(table, "product");
    int rate = column(table, "rate");
    Map<String, Total> totals = new TreeMap<>();
    for (var feature : table.features()) {
      String name = Objects.toString(feature.values().get(product));
      Total before = totals.getOrDefault(name, new Total(0, 0, new TreeMap<>()));
      before.rates().merge((Double) feature.values().get(rate), 1, Integer::sum);
      totals.put(
          name,
          new Total(
              before.count() + 1, before.area() + feature.geometry().getArea(), before.rates()));
    }
    return totals;
  }

  private static int column(FeatureTable table, String name) {
    for (int i = 0; i < table.columns().size(); i++) {
      if (table.columns().get(i).name().equalsIgnoreCase(name)) {
        return i;
      }
    }
    throw new AssertionError("no column " + name);
  }

  private static void same(Map<String, Total> meant, Map<String, Total> seen) {
    assertThat(seen.keySet()).isEqualTo(meant.keySet());
    meant.forEach(
        (product, total) -> {
          Total other = Objects.requireNonNull(seen.get(product));
          assertThat(other.count()).as(product).isEqualTo(total.count());
          assertThat(other.rates()).as(product).isEqualTo(total.rates());
          assertThat(other.area())
              .as(product)
              .isCloseTo(total.area(), within(1e-12 * total.area()));
        });
  }
}
