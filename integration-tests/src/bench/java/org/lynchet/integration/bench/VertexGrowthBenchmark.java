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

/** Measures how time grows with vertices, at about 100 zones. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class VertexGrowthBenchmark {
  @Param({"1000", "3000", "10000", "30000", "100000"})
  int vertices;

  private BenchField field = BenchField.plain(StarRing.ofZones(16, 30, 0));

  /** Draws the boundary. */
  @Setup
  public void draw() {
    field = BenchField.plain(StarRing.ofZones(vertices, 100, 0.5));
  }

  /** From boundary to rated zones. */
  @Benchmark
  public Object layout() {
    return field.layout();
  }

  /** From boundary to polygons. */
  @Benchmark
  public Object coverage() {
    return field.coverage();
  }
}
