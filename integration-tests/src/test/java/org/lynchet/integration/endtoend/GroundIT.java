package org.lynchet.integration.endtoend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;
import org.lynchet.integration.witness.coverage.CoverageWitness;
import org.lynchet.integration.witness.coverage.Polygons;
import org.lynchet.integration.witness.ground.GroundLine;
import org.lynchet.integration.witness.ground.GroundPlane;
import org.lynchet.integration.witness.ground.GroundTruth;

/**
 * Strips have their width on the ground: C. F. F. Karney 2013, doi:10.1007/s00190-012-0578-z.
 *
 * <p>Measured at vertices, which are the same for every reader, and in the middle of edges as RFC
 * 7946 section 3.1.1 reads them, straight in longitude and latitude.
 */
class GroundIT {
  private static final double MILLIMETRE = 1e-3;
  private static final double SAME_AREA = 1e-6;

  @TempDir Path folder;

  @ParameterizedTest(name = "latitude {0}, heading {1}, {2} m by {3} m")
  @CsvSource({
    "-45,   0,  800,  400",
    "-45, 137,  800,  400",
    "  0,  13,  800,  400",
    " 42,  90,  800,  400",
    " 42,  13,  800,  400",
    " 60, 271,  800,  400",
    " 60,  13, 5000, 5000",
    "-45,  90, 5000, 5000",
  })
  void stripsAndAreasOnTheGround(double lat, double heading, double along, double across)
      throws IOException, InterruptedException {
    GroundField field = GroundField.of(-94.1, lat, heading, along, across);
    Path out = folder.resolve("out");
    String plan = field.writeInto(folder).toString();
    Run run = Program.jar().run(folder, "plan", plan, "--out", out.toString());
    assertThat(run.exitCode()).as(run.toString()).isZero();

    checkCuts(field, Polygons.read(out.resolve("plan.geojson")), across);
    checkAreas(out);
    checkPasses(field, out);
    checkPartition(field, out);
  }

  /**
   * Every vertex lies on a cut or on the field's boundary, every edge along a cut stays on it for a
   * reader that draws it straight in longitude and latitude, and no cut is missing.
   */
  private static void checkCuts(GroundField field, List<Geometry> zones, double across) {
    GroundLine line = field.abLine();
    GroundPlane plane = GroundPlane.at(field.polygon().getEnvelopeInternal().centre());
    IndexedFacetDistance boundary =
        new IndexedFacetDistance(plane.project(field.polygon().getBoundary()));
    Set<Long> strips = new TreeSet<>();
    for (Geometry zone : zones) {
      Coordinate[] vertices = zone.getCoordinates();
      for (int i = 0; i < vertices.length; i++) {
        double offset = line.offsetMetres(vertices[i]);
        if (distanceToCut(offset) > MILLIMETRE) {
          Geometry point = plane.project(zone.getFactory().createPoint(vertices[i]));
          assertThat(boundary.distance(point))
              .as("vertex %s at %s m from the AB line", vertices[i], offset)
              .isLessThan(MILLIMETRE);
          continue;
        }
        strips.add(Math.round(offset / GroundField.STRIP_METRES));
        if (i > 0 && Math.abs(line.offsetMetres(vertices[i - 1]) - offset) < MILLIMETRE) {
          double middle = line.offsetMetres(middle(vertices[i - 1], vertices[i]));
          assertThat(middle).as("middle of an edge").isCloseTo(offset, within(MILLIMETRE));
        }
      }
    }
    int last = (int) Math.floor((across - 1) / GroundField.STRIP_METRES);
    assertThat(strips).containsAll(LongStream.rangeClosed(1, last).boxed().toList());
  }

  /** Strips of even number are corn, with border rows on both sides. */
  private static double distanceToCut(double offset) {
    double strip = GroundField.STRIP_METRES;
    double border = GroundField.BORDER_METRES;
    double inPeriod = offset - 2 * strip * Math.floor(offset / (2 * strip));
    return DoubleStream.of(0, border, strip - border, strip, 2 * strip)
        .map(cut -> Math.abs(inPeriod - cut))
        .min()
        .orElseThrow();
  }

  private static Coordinate middle(Coordinate p, Coordinate q) {
    return new Coordinate((p.x + q.x) / 2, (p.y + q.y) / 2);
  }

  private static void checkAreas(Path out) throws IOException {
    double sum = 0;
    double truth = 0;
    for (JsonNode feature : Polygons.features(out.resolve("plan.geojson"))) {
      Geometry zone = Polygons.of(feature.path("geometry"));
      double area = feature.path("properties").path("area_m2").asDouble();
      double ground = GroundTruth.areaSquareMetres(zone);
      // Rounding moves a long edge by up to 0.06 mm, all along it.
      double rounding = 2 * 0.06e-3 * area / GroundField.BORDER_METRES;
      assertThat(area).isCloseTo(ground, within(SAME_AREA * ground + rounding));
      sum += area;
      truth += ground;
    }
    assertThat(sum).isCloseTo(truth, within(SAME_AREA * truth));
  }

  /** A pass is driven where its offset says, in the middle of its strip. */
  private static void checkPasses(GroundField field, Path out) throws IOException {
    GroundLine line = field.abLine();
    List<JsonNode> passes = Polygons.features(out.resolve("guidance/passes.geojson"));
    assertThat(passes).isNotEmpty();
    for (JsonNode pass : passes) {
      double offset = pass.path("properties").path("offset_m").asDouble();
      double strips = offset / GroundField.STRIP_METRES - 0.5;
      assertThat(strips).isCloseTo(Math.rint(strips), within(1e-4));
      for (JsonNode position : positions(pass.path("geometry"))) {
        Coordinate at = new Coordinate(position.get(0).asDouble(), position.get(1).asDouble());
        assertThat(line.offsetMetres(at)).isCloseTo(offset, within(MILLIMETRE));
      }
    }
  }

  private static void checkPartition(GroundField field, Path out) throws IOException {
    List<Geometry> zones = Polygons.read(out.resolve("plan.geojson"));
    assertThat(CoverageWitness.inspect(zones, field.polygon())).isEmpty();
  }

  private static List<JsonNode> positions(JsonNode geometry) {
    List<JsonNode> parts = new ArrayList<>();
    if (geometry.path("type").asText().equals("LineString")) {
      geometry.path("coordinates").forEach(parts::add);
    } else {
      geometry.path("coordinates").forEach(line -> line.forEach(parts::add));
    }
    return parts;
  }
}
