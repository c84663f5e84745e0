package org.lynchet.integration.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.locationtech.jts.geom.Polygon;
import org.lynchet.geometry.sweep.SweptField;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Measures how fast placements are tried: 5,000 of them on a field of 1,000 vertices, 640 m across,
 * in 70 strips of 30 ft.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class PlacementBenchmark {
  private static final int PLACEMENTS = 5000;

  /** How jagged the boundary is, in distances of neighbouring vertices. */
  @Param({"0.5", "3"})
  double jag;

  private BenchField field = BenchField.plain(StarRing.ofZones(16, 30, 0));
  private List<Polygon> parts = List.of();

  /** Draws the boundary. */
  @Setup
  public void draw() {
    field = BenchField.plain(StarRing.ofZones(1000, 210, jag));
    parts = field.inOffsetFrame();
  }

  /** All start offsets on one heading: one sweep. */
  @Benchmark
  public double oneHeading() {
    return least(0, PLACEMENTS);
  }

  /** 50 start offsets on each of 100 headings: 100 sweeps. */
  @Benchmark
  public double hundredHeadings() {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 100; i++) {
      least = Math.min(least, least(Math.toRadians(1.8 * i), PLACEMENTS / 100));
    }
    return least;
  }

  private double least(double turnRadians, int offsets) {
    return field.leastCost(SweptField.of(parts, turnRadians), offsets);
  }
}
