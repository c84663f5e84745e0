package org.lynchet.integration.bench;

import java.util.concurrent.TimeUnit;
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
 * Measures how time grows with zones, at 1,000 vertices and the same length of all cuts together:
 * the field gets wider and lower. In {@link ZoneGrowthBenchmark} it stays a disc, whose cuts get as
 * much longer as they get more, so that more vertices are needed for each zone.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class NarrowFieldBenchmark {
  /** Of a disc of 300 zones, cut along 300 lines, all lines together. */
  private static final double CUT_METRES = 215_000;

  @Param({"30", "100", "300", "1000", "3000"})
  int zones;

  private BenchField field = BenchField.plain(StarRing.ofZones(16, 30, 0));

  /** Draws the boundary. */
  @Setup
  public void draw() {
    field = BenchField.plain(StarRing.ofCutLength(1000, zones, 0.5, CUT_METRES));
  }

  /** From boundary to rated zones. */
  @Benchmark
  public Object layout() {
    return field.layout();
  }

  /** The same without spray areas. */
  @Benchmark
  public Object ratedZones() {
    return field.ratedZones();
  }

  /** From boundary to polygons. */
  @Benchmark
  public Object coverage() {
    return field.coverage();
  }
}
