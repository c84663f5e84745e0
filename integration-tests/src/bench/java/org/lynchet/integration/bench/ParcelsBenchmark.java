package org.lynchet.integration.bench;

import org.locationtech.jts.geom.Geometry;

/** Measures strips on real fields. */
public class ParcelsBenchmark extends FieldsBenchmark {
  @Override
  BenchField field(Geometry boundary) {
    return BenchField.plain(boundary);
  }
}
