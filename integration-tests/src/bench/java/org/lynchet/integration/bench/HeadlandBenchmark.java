package org.lynchet.integration.bench;

import org.locationtech.jts.geom.Geometry;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** Measures real fields with headland and zones. */
@State(Scope.Benchmark)
public class HeadlandBenchmark extends FieldsBenchmark {
  @Override
  BenchField field(Geometry boundary) {
    return BenchField.withHeadlandAndZones(boundary);
  }
}
