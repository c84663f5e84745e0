package org.lynchet.integration.bench;

import org.locationtech.jts.geom.Geometry;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** Measures strips on real fields. */
@State(Scope.Benchmark)
public class ParcelsBenchmark extends FieldsBenchmark {
  @Override
  BenchField field(Geometry boundary) {
    return BenchField.plain(boundary);
  }
}
