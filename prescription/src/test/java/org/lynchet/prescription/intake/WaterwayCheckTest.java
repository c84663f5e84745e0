package org.lynchet.prescription.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.plan.PlanFile;
import org.lynchet.prescription.zone.FieldData;

/**
 * Goes through what can be wrong with a file of waterways. Places are in thousandths of a degree.
 */
class WaterwayCheckTest {
  private static final String FIELD =
      "[[[0, 0], [8, 0], [8, 4], [0, 4], [0, 0]], [[3, 1], [3, 2], [4, 2], [4, 1], [3, 1]]]";
  private static final String ACROSS = "[[[-1, 3], [9, 3], [9, 3.1], [-1, 3.1], [-1, 3]]]";

  @TempDir Path folder;

  @BeforeEach
  void writePlan() throws IOException {
    write("field.geojson", "Polygon", FIELD);
    Files.writeString(
        folder.resolve("plan.yaml"),
        """
        field: {name: Test, boundary: field.geojson, waterways: ways.geojson}
        guidance: {ab-line: {through: [-94.1, 43.5], heading: 90}}
        machines: {corn-planter: {kind: planter, rows: 12, row-spacing: 30 in}}
        strips:
          - {crop: corn, planted-by: corn-planter, passes: 1, centre: {product: p, rate: 1 seeds/m2}}
        """);
  }

  /** Writes features of one type; numbers in thousandths of a degree from -94.1, 43.5. */
  private void write(String name, String type, String... shapes) throws IOException {
    String features =
        Arrays.stream(shapes)
            .map(
                shape ->
                    "{\"type\": \"Feature\", \"properties\": {}, \"geometry\": {\"type\": \""
                        + type
                        + "\", \"coordinates\": "
                        + placed(shape)
                        + "}}")
            .collect(Collectors.joining(", "));
    Files.writeString(
        folder.resolve(name),
        "{\"type\": \"FeatureCollection\", \"features\": [" + features + "]}");
  }

  private static String placed(String shape) {
    return Pattern.compile("\\[([-0-9.]+), ([-0-9.]+)]")
        .matcher(shape)
        .replaceAll(
            found ->
                "["
                    + (-94.1 + Double.parseDouble(found.group(1)) / 1000)
                    + ", "
                    + (43.5 + Double.parseDouble(found.group(2)) / 1000)
                    + "]");
  }

  private FieldData read() throws RejectedException {
    return FieldIntake.read(PlanFile.read(folder.resolve("plan.yaml")));
  }

  @Test
  void mayReachBeyondTheFieldAndOverItsHolesAndOverlap() throws Exception {
    write("ways.geojson", "Polygon", ACROSS, "[[[2, 1], [5, 1], [5, 3.5], [2, 3.5], [2, 1]]]");
    FieldData field = read();
    assertThat(field.warnings()).isEmpty();
    assertThat(Objects.requireNonNull(field.waterways()).isValid()).isTrue();
  }

  @Test
  void oneOutsideIsAWarning() throws Exception {
    String inHole = "[[[3.2, 1.2], [3.8, 1.2], [3.8, 1.8], [3.2, 1.2]]]";
    String beside = "[[[8, 0], [9, 0], [9, 4], [8, 4], [8, 0]]]";
    write("ways.geojson", "Polygon", inHole, ACROSS, beside);
    FieldData field = read();
    assertThat(field.warnings())
        .singleElement()
        .satisfies(
            warning -> {
              assertThat(warning.code()).isEqualTo(Warning.Code.WATERWAYS_OUTSIDE);
              assertThat(warning.text()).contains("ways.geojson", "[1, 3]");
            });
  }

  @ParameterizedTest(name = "{2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "Polygon | [[[18, 3], [19, 3], [19, 3.1], [18, 3]]] | no waterway lies in the field",
        "LineString | [[0, 3], [8, 3]] | the waterways have no polygon",
        "Polygon | [[[0, 1], [8, 3], [8, 1], [0, 3], [0, 1]]] | a waterway is not a valid area",
      })
  void faults(String type, String shape, String what) throws IOException {
    write("ways.geojson", type, shape);
    assertThatThrownBy(this::read)
        .isInstanceOfSatisfying(
            RejectedException.class,
            rejected ->
                assertThat(rejected.faults())
                    .singleElement()
                    .satisfies(
                        fault -> {
                          assertThat(fault.what()).startsWith(what);
                          assertThat(fault.where()).startsWith("ways.geojson");
                          assertThat(fault.allowed()).isNotBlank();
                          assertThat(fault.next()).isNotBlank();
                        }));
  }

  @Test
  void aMissingFileIsToldWithItsKey() {
    assertThatThrownBy(this::read)
        .isInstanceOfSatisfying(
            RejectedException.class,
            rejected -> assertThat(rejected.faults().get(0).where()).endsWith("field.waterways"));
  }

  @Test
  void isRepairedOnRequest() throws Exception {
    write("ways.geojson", "Polygon", "[[[0, 1], [8, 3], [8, 1], [0, 3], [0, 1]]]");
    Path plan = folder.resolve("plan.yaml");
    Files.writeString(
        plan, Files.readString(plan).replace("ways.geojson}", "ways.geojson, repair: true}"));
    assertThat(Objects.requireNonNull(read().waterways()).isValid()).isTrue();
  }
}
