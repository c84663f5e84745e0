package org.lynchet.integration.endtoend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;
import org.lynchet.integration.witness.Sample;

/** A user's fault: exit code 3, four texts on standard error, no stack trace, nothing written. */
class FaultIT {
  private static final GroundField FIELD = GroundField.of(-94.1, 42, 13, 60, 50);

  @TempDir Path folder;
  private Path plan = Path.of("");

  @BeforeEach
  void writePlan() throws IOException {
    plan = FIELD.writeInto(folder);
  }

  /** A piece of the plan, what stands there instead, and what the fault's place must name. */
  static Stream<Arguments> plans() {
    return Stream.of(
        arguments("boundary: field.geojson", "boundary: nowhere.geojson", "nowhere.geojson"),
        arguments("boundary: field.geojson", "boundary: field.doc", "boundary"),
        arguments("name: Ground", "name: \"Ground", "plan.yaml"),
        arguments("  name: Ground\n", "  name: Ground\n  nmae: Ground\n", "nmae"),
        arguments("machines:", "machinery:", "machinery"),
        arguments("rows: 12", "rows: -12", "rows"),
        arguments("rows: 12", "rows: 0", "rows"),
        arguments("30 in}", "-30 in}", "row-spacing"),
        arguments("30 in}", "30 inches}", "row-spacing"),
        arguments("30 in}", "30}", "row-spacing"),
        arguments("34000 seeds/ac", "34000 bags/ac", "rate"),
        arguments("planted-by: corn-planter", "planted-by: corn-planer", "planted-by"),
        arguments("passes: 1", "passes: 0", "passes"),
        arguments("{rows: 2,", "{rows: 7,", "border"),
        arguments("strip-edge", "row-edge", "ab-line-is"),
        arguments("{a: [", "{a: [1", "ab-line"));
  }

  @ParameterizedTest(name = "{1}")
  @MethodSource("plans")
  void planWithAFault(String good, String bad, String place)
      throws IOException, InterruptedException {
    assertThat(FIELD.plan()).contains(good);
    Files.writeString(plan, FIELD.plan().replace(good, bad));
    assertThat(faults()).anyMatch(fault -> (fault.where() + fault.what()).contains(place));
  }

  @Test
  void abLineOfOnePoint() throws IOException, InterruptedException {
    Files.writeString(plan, FIELD.plan().replaceFirst("b: \\[[^]]*]", "b: [-94.1, 42.0]"));
    assertThat(faults()).anyMatch(fault -> fault.where().contains("ab-line"));
  }

  @Test
  void missingPlan() throws IOException, InterruptedException {
    Files.delete(plan);
    assertThat(faults()).anyMatch(fault -> fault.toString().contains("plan.yaml"));
  }

  @Test
  void unparsedPlanIsPlacedByLine() throws IOException, InterruptedException {
    Files.writeString(plan, FIELD.plan().replace("name: Ground", "name: [Ground"));
    assertThat(faults()).anyMatch(fault -> fault.where().matches(".*plan\\.yaml.*\\d+.*"));
  }

  static Stream<Arguments> boundaries() {
    return Stream.of(
        arguments("no polygon", "{\"type\":\"Point\",\"coordinates\":[-94.1,42]}"),
        arguments("no JSON", "{\"type\":"),
        arguments("empty file", ""),
        arguments("bow-tie", ring("[0,0],[0.001,0.001],[0.001,0],[0,0.001],[0,0]")),
        arguments("not closed", ring("[0,0],[0.001,0],[0.001,0.001],[0,0.001]")),
        arguments("not a number", ring("[0,0],[NaN,0],[0.001,0.001],[0,0]")),
        arguments("metres", ring("[0,0],[500,0],[500,400],[0,400],[0,0]")),
        arguments("antimeridian", ring("[179.99,0],[-179.99,0],[-179.99,0.01],[179.99,0]")),
        arguments("at a pole", ring("[0,89.5],[0.1,89.5],[0.1,89.51],[0,89.5]")),
        arguments("too large", ring("[0,0],[0.3,0],[0.3,0.3],[0,0.3],[0,0]")));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("boundaries")
  void boundaryWithAFault(String name, String geoJson) throws IOException, InterruptedException {
    Files.writeString(folder.resolve("field.geojson"), geoJson);
    assertThat(faults()).as(name).anyMatch(fault -> fault.where().contains("field.geojson"));
  }

  static Stream<Arguments> shapefiles() {
    return Stream.of(
        arguments("strips.shp", 8),
        arguments("strips.shp", 600),
        arguments("strips.dbf", 274),
        arguments("strips.dbf", 1045));
  }

  @ParameterizedTest(name = "{0} loses {1} bytes")
  @MethodSource("shapefiles")
  void shapefileCutOff(String name, int lost) throws IOException, InterruptedException {
    Sample.shapefile(folder);
    Path file = folder.resolve(name);
    byte[] bytes = Files.readAllBytes(file);
    Files.write(file, Arrays.copyOf(bytes, bytes.length - lost));
    Files.writeString(plan, FIELD.plan().replace("field.geojson", "strips.shp"));
    assertThat(faults()).anyMatch(fault -> fault.where().contains(name));
  }

  @Test
  void allFaultsOfARunTogether() throws IOException, InterruptedException {
    Files.writeString(
        plan,
        FIELD
            .plan()
            .replace("30 in}", "30 inches}")
            .replace("34000 seeds/ac", "34000 bags/ac")
            .replace("strip-edge", "row-edge"));
    assertThat(faults()).hasSizeGreaterThanOrEqualTo(3);
  }

  private List<FaultText> faults() throws IOException, InterruptedException {
    Path out = folder.resolve("out");
    Run run = Program.jar().run(folder, "plan", plan.toString(), "--out", out.toString());
    assertThat(run.exitCode()).as(run.toString()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).doesNotContain("\tat ").doesNotContain("Exception");
    assertThat(out).doesNotExist();
    List<FaultText> faults = FaultText.in(run.err());
    assertThat(faults).as(run.toString()).isNotEmpty();
    return faults;
  }

  private static String ring(String positions) {
    return "{\"type\":\"Polygon\",\"coordinates\":[[" + positions + "]]}";
  }
}
