package org.lynchet.prescription.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.MultiPolygon;
import org.locationtech.jts.geom.Polygon;
import org.lynchet.formats.Column;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.Fault;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.geojson.GeoJson;
import org.lynchet.formats.isoxml.TaskData;
import org.lynchet.formats.isoxml.TaskSet;
import org.lynchet.formats.isoxml.TaskSet.Kind;
import org.lynchet.formats.isoxml.TaskSet.Line;
import org.lynchet.formats.isoxml.TaskSet.PartField;
import org.lynchet.formats.isoxml.TaskSet.Version;
import org.lynchet.geometry.guidance.Curve;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlanFile;
import org.lynchet.prescription.taskdata.TaskSetMaker;
import org.lynchet.prescription.zone.FieldData;
import org.lynchet.prescription.zone.FieldLayout;

/** Takes a plan's curve out of task data. */
class TaskDataCurveTest {
  private static final Map<String, Kind> KINDS =
      Map.of(
          "AB", Kind.AB,
          "A+", Kind.A_PLUS,
          "curve", Kind.CURVE,
          "pivot", Kind.PIVOT,
          "spiral", Kind.SPIRAL);

  @TempDir Path folder;

  /** The curve comes back point by point, and with it every pass. */
  @ParameterizedTest
  @CsvSource({"4.3, TASKDATA.zip#GPN1", "3.3, TASKDATA/TASKDATA.XML#LSG1"})
  void theCurveThatWasWrittenIsReadBack(String version, String written) throws Exception {
    StringBuilder points = new StringBuilder("lon,lat\n");
    for (int i = 0; i <= 20; i++) {
      points.append(
          String.format(
              Locale.ROOT, "%.9f,%.9f%n", -94.1 + i * 2e-4, 43.5 + 1e-4 * Math.sin(i / 6.0)));
    }
    Files.writeString(folder.resolve("curve.csv"), points);
    Files.writeString(
        folder.resolve("field.csv"),
        "lon,lat\n-94.1,43.499\n-94.096,43.499\n-94.096,43.501\n-94.1,43.501\n");
    FieldLayout drawn = layout("field.csv", "curve.csv", version);
    TaskData.write(TaskSetMaker.of(drawn), folder);
    FieldLayout read = layout("field.csv", written, version);
    assertThat(((Curve) read.guidance()).points()).isEqualTo(((Curve) drawn.guidance()).points());
    assertThat(read.passes()).isEqualTo(drawn.passes());
    assertThat(read.zones()).isEqualTo(drawn.zones());
  }

  /**
   * The curves, spirals, pivots and straight lines of a field in Iowa, from an ISO 11783-10 file.
   */
  @Test
  void theCurvesOfARealFieldAreTakenAndItsOtherLinesAreNot() throws Exception {
    Path field = writeRealField();
    assertThat(((Curve) read("beside.geojson", "TASKDATA.zip#GPN9", "4.3").guidance()).points())
        .hasSize(30);
    // The whole field reaches farther to the inside of its bend, the other one has a corner
    assertThat(fault(field, "TASKDATA.zip#GPN9").what()).contains("too tight for the field");
    assertThat(fault(field, "TASKDATA.zip#GPN2").what()).contains("turns by 34 degrees");
    assertThat(fault(field, "TASKDATA.zip#GPN1").what())
        .isEqualTo("guidance line GPN1 is no curve: spiral of 56 points");
    assertThat(fault(field, "TASKDATA.zip#GPN4").next()).contains("under guidance.ab-line");
    assertThat(fault(field, "TASKDATA.zip#GPN6").what()).contains("no curve: pivot");
    assertThat(fault(field, "TASKDATA.zip#GPN8").what()).contains("no curve: A+ of 1 points");
    assertThat(fault(field, "TASKDATA.zip#PFD1").allowed()).contains("GPN2 (curve ");
    Fault unnamed = fault(field, "TASKDATA.zip");
    assertThat(unnamed.what()).isEqualTo("9 guidance lines in it");
    assertThat(unnamed.next()).contains("taskdata.zip#GPN");
  }

  /** An open sample set: its one pattern says that it is an AB line, of four points. */
  @Test
  void aPatternThatSaysItIsAnAbLineIsNoCurve() throws Exception {
    Path field = openData().resolve("isoxml/full_task/TASKDATA.XML");
    assumeThat(field).exists();
    assertThat(fault(field, field + "#GPN1").what())
        .isEqualTo("guidance line GPN1 is no curve: ab of 4 points");
  }

  private static Path openData() {
    String fields = System.getProperty("lynchet.fields", "");
    assumeThat(fields).as("-Dlynchet.fields=FOLDER names no folder of boundaries").isNotEmpty();
    return Path.of(fields).toAbsolutePath().resolveSibling("");
  }

  /**
   * Task data of the field's boundary and lines as they are in the open data; and what lies within
   * some 25 m of the last line as a field of its own.
   */
  private Path writeRealField() throws Exception {
    Path data = openData().resolve("fields_with_ab/fields_and_lines.geojson");
    assumeThat(data).exists();
    FeatureTable table = GeoJson.reader().read(data);
    List<Line> lines = new ArrayList<>();
    for (Feature feature : table.features()) {
      if ("acp-PFD-6".equals(value(table, feature, "field"))) {
        Kind kind = Objects.requireNonNull(KINDS.get(value(table, feature, "type")));
        BigDecimal heading = kind == Kind.A_PLUS ? BigDecimal.ZERO : null;
        List<Coordinate> points = List.of(feature.geometry().getCoordinates());
        lines.add(new Line("GPN" + (lines.size() + 1), "all", "a line", kind, points, heading, 0));
      }
    }
    Feature boundary =
        table.features().stream()
            .filter(f -> "acp-PFD-6".equals(value(table, f, "pid")))
            .findFirst()
            .orElseThrow();
    Polygon polygon = (Polygon) boundary.geometry();
    MultiPolygon area = polygon.getFactory().createMultiPolygon(new Polygon[] {polygon});
    PartField field = new PartField("PFD1", "Field", 226_390, area, lines);
    Feature beside = new Feature(line(lines.get(8)).buffer(3e-4), List.of());
    FeatureTable strip =
        new FeatureTable("beside", DeclaredCrs.LON_LAT, List.of(), List.of(beside));
    GeoJson.writer().write(strip, folder.resolve("beside.geojson"));
    TaskSet set =
        new TaskSet(
            Version.V4_3, "A", "B", List.of(), List.of(), List.of(), List.of(field), List.of());
    TaskData.write(set, folder);
    return folder.resolve("TASKDATA.zip");
  }

  private static LineString line(Line line) {
    return new GeometryFactory().createLineString(line.points().toArray(new Coordinate[0]));
  }

  private static @Nullable Object value(FeatureTable table, Feature feature, String name) {
    List<String> names = table.columns().stream().map(Column::name).toList();
    return feature.values().get(names.indexOf(name));
  }

  private Fault fault(Path field, String curve) {
    RejectedException rejected =
        catchThrowableOfType(
            RejectedException.class, () -> read(field.toString(), curve, "4.3").guidance());
    assertThat(rejected).isNotNull();
    return rejected.faults().stream()
        .filter(f -> (f.where() + f.what()).matches(".*(guidance line|the curve).*"))
        .findFirst()
        .orElseThrow();
  }

  private FieldLayout layout(String boundary, String curve, String version) throws Exception {
    Plan plan = plan(boundary, curve, version);
    return FieldLayout.of(plan, FieldIntake.read(plan));
  }

  private FieldData read(String boundary, String curve, String version) throws Exception {
    return FieldIntake.read(plan(boundary, curve, version));
  }

  private Plan plan(String boundary, String curve, String version)
      throws IOException, RejectedException {
    String plan =
        """
        field: {name: Curved, boundary: '%s'}
        guidance: {curve: '%s'}
        machines: {corn-planter: {kind: planter, rows: 12, row-spacing: 30 in}}
        strips:
          - {crop: corn, planted-by: corn-planter, passes: 1, centre: {product: a, rate: 34000 seeds/ac}}
        handoff: {formats: [isoxml], task-data: {version: %s}}
        """
            .formatted(boundary, curve, version);
    return PlanFile.read(Files.writeString(folder.resolve("plan.yaml"), plan));
  }
}
