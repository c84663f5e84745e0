package org.lynchet.prescription.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.formats.Fault;
import org.lynchet.geometry.guidance.Curve;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlanFile;

/** Curves that are taken, and what is said of those that are not. */
class CurveIntakeTest {
  /** Metres in a degree of latitude, and of longitude at 43.5 degrees: nearly. */
  private static final double NORTH = 111_100;

  private static final double EAST = 80_800;
  private static final double LONGITUDE = -94.1;
  private static final double LATITUDE = 43.5;

  @TempDir Path folder;

  @Test
  void aGentleCurveIsTakenFromEveryFormat() throws Exception {
    double[][] points = wave(20, x -> 20 * Math.sin(x / 90));
    Curve fromCsv = curve("curve.csv", csv(points));
    Curve fromGeoJson = curve("curve.geojson", geoJson(points));
    assertThat(fromCsv.points()).hasSize(21).isEqualTo(fromGeoJson.points());
    assertThat(fromCsv.directions().lengthMetres()).isCloseTo(405, within(5.0));
  }

  @Test
  void aLineOfSeveralIsChosenByItsNumber() throws Exception {
    String first = "part,lon,lat\n1,-94.1,43.5\n1,-94.1,43.501\n1,-94.1,43.502\n";
    String both = first + "2,-94.101,43.5\n2,-94.1008,43.501\n2,-94.101,43.502\n";
    assertThat(curve("{file: curve.csv, line: 2}", both).points().get(0).x).isEqualTo(-94.101);
    assertFault("curve.csv", both, "the file has 2 lines", "guidance.curve: {file: ..., line: 1}");
    assertFault("{file: curve.csv, line: 3}", both, "there is no line 3: the file has 2", "1 to 2");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "two points  | -200 0 200 0 | the curve has only two points | guidance.ab-line",
        "short       | 0 0 1 0 2 0.1 | 2.01 m long, less than a pass is wide | length of the field",
        "far         | 0 0 400 0 90000 10 | km from the field | longitude",
        "closed      | 0 0 100 0 100 100 0 100 0 0 | it ends where it begins | pivots",
        "crossing    | 0 0 200 0 200 100 100 100 100 -100 | crosses itself at longitude -94.098 | loop",
        "spiral      | 0 0 90 0 90 90 10 90 10 10 80 10 80 80 | span 450 degrees | pivots and spirals",
        "turning back| -200 0 200 0 200 50 -200 50 | span 180 degrees | pivots and spirals",
        "sharp       | -200 0 0 0 200 100 | turns by 27 degrees in one point at longitude | smooth",
      })
  void whatMachinesCannotFollowIsRefused(String name, String metres, String what, String next)
      throws IOException {
    assertThat(name).isNotBlank();
    String[] numbers = metres.split(" ", -1);
    double[][] points = new double[numbers.length / 2][];
    for (int i = 0; i < points.length; i++) {
      points[i] =
          new double[] {Double.parseDouble(numbers[2 * i]), Double.parseDouble(numbers[2 * i + 1])};
    }
    assertFault("curve.csv", csv(points), what, next);
  }

  /** A circle of 150 m through the middle of the field, which reaches 200 m to either side. */
  @Test
  void aCurveTooTightSaysWhereAndHowFar() throws Exception {
    double[][] arc = new double[41][];
    for (int i = 0; i < arc.length; i++) {
      double angle = Math.toRadians(40 - 2 * i);
      arc[i] = new double[] {-150 * Math.sin(angle), 150 * Math.cos(angle) - 150};
    }
    Fault fault = assertFault("curve.csv", csv(arc), "passes follow it as far as", "inside");
    // The centre is 150 m right of the curve; chords of 2 degrees are 23 mm nearer
    assertThat(fault.what())
        .containsPattern("as far as 150\\.\\d m to the right")
        .contains("longitude -94.1000", "latitude 43.4986");
    assertThat(fault.where()).isEqualTo("curve.csv");
  }

  @Test
  void otherGeometriesAreNoCurve() throws Exception {
    String point =
        "{\"type\":\"Feature\",\"properties\":{},\"geometry\":"
            + "{\"type\":\"Point\",\"coordinates\":[-94.1,43.5]}}";
    assertFault("curve.geojson", point, "the file has no line", "as a line");
  }

  @Test
  void aNumberThatIsNoneIsRefusedWithItsPlace() throws Exception {
    Fault fault = assertFault("curve.csv", "lon,lat\n-94,NaN\n-94,43\n", "not allowed: NaN", "");
    assertThat(fault.where()).contains("line 2", "column lat");
  }

  @Test
  void aFileThatIsMissingIsNamedWithItsKey() throws Exception {
    Files.deleteIfExists(folder.resolve("curve.csv"));
    assertThat(faults("nothing.csv"))
        .anySatisfy(
            fault -> {
              assertThat(fault.what()).contains("no such file: nothing.csv");
              assertThat(fault.where()).contains("guidance.curve");
            });
  }

  private static double[][] wave(int steps, DoubleUnaryOperator north) {
    double[][] points = new double[steps + 1][];
    for (int i = 0; i <= steps; i++) {
      double x = -200 + 400.0 * i / steps;
      points[i] = new double[] {x, north.applyAsDouble(x)};
    }
    return points;
  }

  private static String lonLat(double[] metres) {
    return String.format(
        Locale.ROOT, "%.9f,%.9f", LONGITUDE + metres[0] / EAST, LATITUDE + metres[1] / NORTH);
  }

  private static String csv(double[][] metres) {
    StringBuilder text = new StringBuilder("lon,lat\n");
    for (double[] at : metres) {
      text.append(lonLat(at)).append('\n');
    }
    return text.toString();
  }

  private static String geoJson(double[][] metres) {
    StringBuilder text = new StringBuilder();
    for (double[] at : metres) {
      text.append(text.isEmpty() ? "" : ",").append('[').append(lonLat(at)).append(']');
    }
    return "{\"type\":\"LineString\",\"coordinates\":[" + text + "]}";
  }

  private Fault assertFault(String curve, String text, String what, String next)
      throws IOException {
    Files.writeString(
        folder.resolve(curve.contains("geojson") ? "curve.geojson" : "curve.csv"), text);
    List<Fault> faults = faults(curve);
    assertThat(faults).anySatisfy(fault -> assertThat(fault.what()).contains(what));
    Fault fault = faults.stream().filter(f -> f.what().contains(what)).findFirst().orElseThrow();
    assertThat(fault.next()).contains(next);
    return fault;
  }

  private List<Fault> faults(String curve) throws IOException {
    try {
      FieldIntake.read(plan(curve));
      return List.of();
    } catch (RejectedException rejected) {
      return rejected.faults();
    }
  }

  private Curve curve(String curve, String text) throws Exception {
    Files.writeString(
        folder.resolve(curve.contains("geojson") ? "curve.geojson" : "curve.csv"), text);
    return (Curve) FieldIntake.read(plan(curve)).guidance();
  }

  private Plan plan(String curve) throws IOException, RejectedException {
    double[][] square = {{-250, -200}, {250, -200}, {250, 200}, {-250, 200}};
    Files.writeString(folder.resolve("field.csv"), csv(square));
    Path plan =
        Files.writeString(
            folder.resolve("plan.yaml"),
            """
            field: {name: Curved, boundary: field.csv}
            guidance: {curve: %s}
            machines: {corn-planter: {kind: planter, rows: 12, row-spacing: 30 in}}
            strips:
              - {crop: corn, planted-by: corn-planter, passes: 1, centre: {product: tall-108, rate: 34000 seeds/ac}}
            """
                .formatted(curve));
    return PlanFile.read(plan);
  }
}
