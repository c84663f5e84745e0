package org.lynchet.integration.bench;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.locationtech.jts.geom.Geometry;
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

/** Measures a folder of real fields; one operation is all of them. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 3)
@Measurement(iterations = 5, time = 4)
public abstract class FieldsBenchmark {
  private final List<BenchField> fields = new ArrayList<>();

  /** What is made of a boundary. */
  abstract BenchField field(Geometry boundary);

  /** Reads the boundaries. */
  @Setup
  public void read() throws IOException {
    for (Geometry boundary : FieldFolder.ofProperty()) {
      fields.add(field(boundary));
    }
  }

  /** The whole job: spray areas too. */
  @Benchmark
  public void layout(Blackhole sink) {
    fields.forEach(field -> sink.consume(field.layout()));
  }

  /** From boundary to rated zones, without spray areas. */
  @Benchmark
  public void ratedZones(Blackhole sink) {
    fields.forEach(field -> sink.consume(field.ratedZones()));
  }

  /** From boundary to polygons. */
  @Benchmark
  public void coverage(Blackhole sink) {
    fields.forEach(field -> sink.consume(field.coverage()));
  }

  /** The yardstick. */
  @Benchmark
  public void plainJts(Blackhole sink) {
    fields.forEach(field -> sink.consume(field.plainJts()));
  }
}
