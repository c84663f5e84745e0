package org.lynchet.prescription.zone;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/** Measures how far vertices lie from the edges of a shape. */
final class RingDistance {
  private final Geometry shape;
  private final IndexedFacetDistance edges;

  RingDistance(Geometry shape) {
    this.shape = shape;
    this.edges = new IndexedFacetDistance(shape.getBoundary());
  }

  /** The distance of the vertex that is farthest away. */
  double farthest(Geometry vertices) {
    double farthest = 0;
    for (Coordinate at : vertices.getCoordinates()) {
      farthest = Math.max(farthest, edges.distance(shape.getFactory().createPoint(at)));
    }
    return farthest;
  }
}
