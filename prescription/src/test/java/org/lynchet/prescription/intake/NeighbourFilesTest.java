package org.lynchet.prescription.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.formats.Fault;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlanFile;
import org.lynchet.prescription.setback.Neighbour;
import org.lynchet.prescription.zone.SamplePlans;

/** The field lies at longitude -94.1, latitude 43.55. */
class NeighbourFilesTest {
  private static final String PLAN =
      """
      field: {name: Hill, boundary: hill.geojson%s}
      guidance: {ab-line: {through: [-94.1, 43.55], heading: 0}}
      machines: {corn-planter: {kind: planter, rows: 12, row-spacing: 30 in}}
      strips:
        - {crop: corn, planted-by: corn-planter, passes: 1, centre: {product: tall-108, rate: 34000 seeds/ac}}
      setback:
        neighbours:
          creek: {file: creek.geojson, distance: 50 ft}
          school: {file: school.geojson}
      """;

  private static final String LINE =
      "{\"type\": \"LineString\", \"coordinates\": [[-94.1, 43.551], [-94.099, 43.552]]}";
  private static final String AREA =
      "{\"type\": \"Polygon\", \"coordinates\":"
          + " [[[-94.1, 43.551], [-94.099, 43.551], [-94.099, 43.552], [-94.1, 43.551]]]}";
  private static final String FAR =
      "{\"type\": \"LineString\", \"coordinates\": [[-95.1, 43.551], [-95.099, 43.552]]}";
  private static final String POINT = "{\"type\": \"Point\", \"coordinates\": [-94.1, 43.551]}";

  @TempDir Path folder;

  private List<Neighbour> read(String creek, String school, String entrance)
      throws IOException, RejectedException {
    Files.writeString(folder.resolve("creek.geojson"), creek);
    Files.writeString(folder.resolve("school.geojson"), school);
    Path file = Files.writeString(folder.resolve("plan.yaml"), PLAN.formatted(entrance));
    Plan plan = PlanFile.read(file);
    List<Warning> warnings = new ArrayList<>();
    return NeighbourFiles.read(
        plan, SamplePlans.lonLat("POLYGON ((0 0, 100 0, 100 100, 0 100, 0 0))"), warnings);
  }

  private List<Fault> faults(String creek, String school, String entrance) throws IOException {
    try {
      read(creek, school, entrance);
      return List.of();
    } catch (RejectedException rejected) {
      return rejected.faults();
    }
  }

  @Test
  void linesAndAreasAreNeighbours() throws Exception {
    List<Neighbour> neighbours = read(LINE, AREA, "");
    assertThat(neighbours).extracting(Neighbour::name).containsExactly("creek", "school");
    assertThat(neighbours.get(0).distanceMetres()).isCloseTo(15.24, within(1e-9)); // 50 ft
    assertThat(neighbours.get(1).distanceMetres()).isZero();
    assertThat(neighbours.get(0).shape().getGeometryN(0).getDimension()).isEqualTo(1);
    assertThat(neighbours.get(1).shape().getGeometryN(0).getDimension()).isEqualTo(2);
  }

  @Test
  void allFaultsAreToldAtOnce() throws Exception {
    assertThat(faults(FAR, POINT, ", entrance: [-94.1, 44.55]"))
        .extracting(Fault::what)
        .containsExactly(
            "the entrance is 111 km from the field",
            "the neighbour creek is 81 km from the field",
            "the file of the neighbour school has no line and no area");
  }

  @Test
  void aMissingFileIsAFault() throws Exception {
    Files.writeString(folder.resolve("plan.yaml"), PLAN.formatted(""));
    Plan plan = PlanFile.read(folder.resolve("plan.yaml"));
    assertThatThrownBy(
            () ->
                NeighbourFiles.read(
                    plan,
                    SamplePlans.lonLat("POLYGON ((0 0, 100 0, 100 100, 0 100, 0 0))"),
                    new ArrayList<>()))
        .isInstanceOfSatisfying(
            RejectedException.class,
            rejected ->
                assertThat(rejected.faults())
                    .extracting(fault -> fault.where().replaceFirst(".*plan.yaml", ""))
                    .containsExactly(
                        ":8:19 setback.neighbours.creek.file",
                        ":9:20 setback.neighbours.school.file"))
        .hasMessageContaining("no such file");
  }
}
