package org.lynchet.prescription.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.MultiPolygon;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.WKTReader;
import org.lynchet.formats.isoxml.TaskData;
import org.lynchet.formats.isoxml.TaskSet;
import org.lynchet.formats.isoxml.TaskSet.Kind;
import org.lynchet.formats.isoxml.TaskSet.Line;
import org.lynchet.formats.isoxml.TaskSet.PartField;
import org.lynchet.formats.isoxml.TaskSet.Version;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.plan.PlanFile;
import org.lynchet.prescription.zone.FieldData;

/** Takes the boundary and the AB line of a plan out of task data. */
class TaskDataIntakeTest {
  private static final String HOLED =
      "POLYGON ((-94.1 43.55, -94.09 43.55, -94.09 43.555, -94.1 43.555, -94.1 43.55),"
          + " (-94.098 43.552, -94.098 43.553, -94.097 43.553, -94.097 43.552, -94.098 43.552))";

  @TempDir Path folder;

  @BeforeEach
  void writeTaskData() throws Exception {
    Polygon holed = (Polygon) new WKTReader().read(HOLED);
    MultiPolygon area = holed.getFactory().createMultiPolygon(new Polygon[] {holed});
    Coordinate a = new Coordinate(-94.1, 43.55);
    Coordinate b = new Coordinate(-94.1, 43.555);
    Coordinate c = new Coordinate(-94.101, 43.556);
    List<Line> lines =
        List.of(
            line("GPN1", Kind.AB, null, a, b),
            line("GPN2", Kind.A_PLUS, new BigDecimal("92.5"), a),
            line("GPN3", Kind.CURVE, null, a, b, c));
    PartField first = new PartField("PFD1", "North", 449_000, area, lines);
    PartField second = new PartField("PFD2", "South", 449_000, area, List.of());
    TaskSet set =
        new TaskSet(
            Version.V4_3,
            "A",
            "B",
            List.of(),
            List.of(),
            List.of(),
            List.of(first, second),
            List.of());
    TaskData.write(set, folder);
  }

  private static Line line(
      String id, Kind kind, @Nullable BigDecimal heading, Coordinate... points) {
    return new Line(id, "lines", id, kind, List.of(points), heading, 0);
  }

  @ParameterizedTest
  @CsvSource({
    "TASKDATA.zip#PFD1, TASKDATA.zip#GPN1, 0",
    "TASKDATA/TASKDATA.XML#PFD2, TASKDATA/TASKDATA.XML#GPN2, 92.5",
  })
  void theFieldWithItsHoleAndTheLineAreRead(String boundary, String line, double heading)
      throws Exception {
    FieldData field = read(boundary, line);
    assertThat(field.boundary().getNumPoints()).isEqualTo(10);
    assertThat(field.boundary().equalsTopo(new WKTReader().read(HOLED))).isTrue();
    assertThat(field.frame().headingDegrees()).isCloseTo(heading, within(1e-6));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "TASKDATA.zip; TASKDATA.zip#GPN1; 2 fields in it; one of PFD1 (North), PFD2 (South)",
        "TASKDATA.zip#PFD3; TASKDATA.zip#GPN1; no field PFD3; one of PFD1 (North), PFD2 (South)",
        "TASKDATA.zip#PFD1; TASKDATA.zip; 3 guidance lines; GPN1 (ab GPN1), GPN2 (A+ GPN2)",
        "TASKDATA.zip#PFD1; TASKDATA.zip#GPN4; no guidance line GPN4; GPN1 (ab GPN1)",
        "TASKDATA.zip#PFD1; TASKDATA.zip#GPN3; no straight line: curve of 3 points; an AB line of 2",
        "TASKDATA.zip#PFD1; other.zip#GPN1; no such file: other.zip; relative to the plan",
      })
  void whatIsNotThereIsToldWithWhatIs(String boundary, String line, String what, String allowed) {
    RejectedException rejected =
        catchThrowableOfType(RejectedException.class, () -> read(boundary, line));
    assertThat(rejected).isNotNull();
    assertThat(rejected.faults())
        .anySatisfy(
            fault -> {
              assertThat(fault.what()).contains(what);
              assertThat(fault.allowed()).contains(allowed);
            });
  }

  @Test
  void aHashElsewhereBelongsToTheName() {
    assertThat(NamedPart.of("a#b.geojson")).isEqualTo(new NamedPart("a#b.geojson", ""));
    assertThat(NamedPart.of("a#b.ZIP#PFD1")).isEqualTo(new NamedPart("a#b.ZIP", "PFD1"));
  }

  private FieldData read(String boundary, String line) throws IOException, RejectedException {
    String plan =
        """
        field: {name: East, boundary: '%s'}
        guidance: {ab-line: {file: '%s'}}
        machines:
          corn-planter: {kind: planter, rows: 12, row-spacing: 30 in}
        strips:
          - {crop: corn, planted-by: corn-planter, passes: 1, centre: {product: a, rate: 34000 seeds/ac}}
        """
            .formatted(boundary, line);
    Path file = Files.writeString(folder.resolve("plan.yaml"), plan);
    return FieldIntake.read(PlanFile.read(file));
  }
}
