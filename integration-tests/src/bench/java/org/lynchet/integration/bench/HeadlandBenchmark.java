package org.lynchet.integration.bench;

import org.locationtech.jts.geom.Geometry;

/** Measures real fields with headland and zones. */
public class HeadlandBenchmark extends FieldsBenchmark {
  @Override
  BenchField field(Geometry boundary) {
    return BenchField.withHeadlandAndZones(boundary);
  }
}
