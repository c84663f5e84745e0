package org.lynchet.geometry.coverage;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/**
 * Buffers what has many vertices in stages, each as wide as all before it.
 *
 * <p>In one go each vertex draws an arc that crosses those of all vertices within two widths, which
 * takes time and memory with the square of their number. A first stage about as wide as vertices
 * are far apart closes gaps in which nothing wider finds room, so the next meets fewer.
 *
 * <p>It is the same buffer: what is a + b away from a set is b away from what is a away from it, as
 * distance changes by no more than the way gone (Serra 1982, Image Analysis and Mathematical
 * Morphology, dilations and erosions by discs add up). So strays of stages do no more than add up.
 */
final class StagedBuffer {
  /** With more vertices than this in a length as long as it is wide, a stage is too wide. */
  private static final double DENSE = 8;

  /** Segments of a quarter of a circle; fewer do for narrow ones. */
  private static final int QUADRANT_SEGMENTS = 32;

  /** How far a buffer may simplify its input, as a share of its width: 0.2 mm of 20 m. */
  private static final double SIMPLIFY_FACTOR = 1e-5;

  /** How far, in metres, what a stage has drawn may be simplified. */
  private static final double SIMPLIFY = 0.0003;

  private StagedBuffer() {}

  /**
   * Draws.
   *
   * @param distanceMetres above 0 for what lies around, below 0 for what lies inside
   */
  static Geometry of(Geometry around, double distanceMetres) {
    double width = Math.abs(distanceMetres);
    double stage = first(around, width);
    Geometry drawn = around;
    for (double done = 0; done < width; stage = Math.min(done, width - done)) {
      drawn = buffer(drawn, Math.copySign(stage, distanceMetres));
      done += stage;
      drawn = done < width ? simple(drawn) : drawn;
    }
    return drawn;
  }

  /** The width of the first stage: all, or a half as often as vertices are too dense for it. */
  private static double first(Geometry around, double width) {
    double first = width;
    while (isDense(around, first)) {
      first /= 2;
    }
    return first;
  }

  /** Whether vertices are too near each other to buffer a boundary by a width in one go. */
  static boolean isDense(Geometry boundary, double width) {
    Envelope box = boundary.getEnvelopeInternal();
    // Jags make a boundary long, but not its vertices farther from each other.
    double length = Math.min(boundary.getLength(), 2 * (box.getWidth() + box.getHeight()));
    return width * boundary.getNumPoints() > DENSE * length;
  }

  private static Geometry buffer(Geometry around, double distance) {
    // The chord of an angle is off the arc by radius x angle^2 / 8.
    double angle = Math.sqrt(8 * SIMPLIFY / Math.abs(distance));
    int segments = (int) Math.ceil(Math.PI / 2 / angle);
    BufferParameters parameters = new BufferParameters(Math.min(segments, QUADRANT_SEGMENTS));
    parameters.setSimplifyFactor(SIMPLIFY_FACTOR);
    return BufferOp.bufferOp(around, distance, parameters);
  }

  private static Geometry simple(Geometry drawn) {
    DouglasPeuckerSimplifier simplifier = new DouglasPeuckerSimplifier(drawn);
    simplifier.setDistanceTolerance(SIMPLIFY);
    simplifier.setEnsureValid(false);
    Geometry simple = simplifier.getResultGeometry();
    return simple.isValid() ? simple : drawn;
  }
}
