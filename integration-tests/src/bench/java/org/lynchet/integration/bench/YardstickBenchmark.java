package org.lynchet.integration.bench;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import org.lynchet.integration.witness.ground.GroundPlane;

/** Measures the yardsticks on a folder of real fields; one operation is all of its fields. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 5)
@Measurement(iterations = 5, time = 5)
public class YardstickBenchmark {
  /** 12 rows of 30 in, border of 2 rows, headland of 2 passes. */
  private static final PlainJtsStrips STRIPS = new PlainJtsStrips(9.144, 1.524);

  private static final double HEADLAND_METRES = 2 * 9.144;
  private static final double HEADING_DEGREES = 13;

  private final List<Geometry> fields = new ArrayList<>();
  private final List<List<Geometry>> managementZones = new ArrayList<>();

  /** Lays every field into its own plane, strips along y. */
  @Setup
  public void layFields() throws IOException {
    for (Geometry lonLat : FieldFolder.ofProperty()) {
      Coordinate centre = lonLat.getEnvelopeInternal().centre();
      Geometry field = GroundPlane.at(centre).project(lonLat);
      // Counter-clockwise by the heading, so that what ran along it runs along y.
      field.apply(AffineTransformation.rotationInstance(Math.toRadians(HEADING_DEGREES)));
      field.geometryChanged();
      fields.add(field);
      managementZones.add(thirds(field.getEnvelopeInternal()));
    }
  }

  /** Strips with border and centre zones. */
  @Benchmark
  public void strips(Blackhole sink) {
    for (Geometry field : fields) {
      sink.consume(STRIPS.zones(field));
    }
  }

  /** The same inside a headland, crossed with three management zones. */
  @Benchmark
  public void stripsHeadlandAndManagementZones(Blackhole sink) {
    for (int i = 0; i < fields.size(); i++) {
      sink.consume(STRIPS.zones(fields.get(i), HEADLAND_METRES, managementZones.get(i)));
    }
  }

  /** Three slanted bands that cover an extent. */
  private static List<Geometry> thirds(Envelope extent) {
    double height = extent.getHeight() + 2;
    double slant = height / 10;
    List<Geometry> bands = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      double low = extent.getMinY() - 1 + (i == 0 ? -slant : i * height / 3);
      double high = extent.getMinY() - 1 + (i == 2 ? height + slant : (i + 1) * height / 3);
      bands.add(
          new GeometryFactory()
              .createPolygon(
                  new Coordinate[] {
                    new Coordinate(extent.getMinX() - 1, low),
                    new Coordinate(extent.getMaxX() + 1, low + slant),
                    new Coordinate(extent.getMaxX() + 1, high + slant),
                    new Coordinate(extent.getMinX() - 1, high),
                    new Coordinate(extent.getMinX() - 1, low),
                  }));
    }
    return bands;
  }
}
