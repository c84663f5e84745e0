package org.lynchet.prescription.light;

/**
 * Turns the extinction coefficient of a closed canopy into what a ray meets on its path.
 *
 * <p>A published k tells how light fades with depth, averaged over directions: 1 - exp(-k L) of it
 * stops in a canopy of leaf area index L. A slanted ray fades with the length of its path: exp(-G L
 * / sin(elevation)), where G is the leaf area that faces it, as a share. G is taken as the same for
 * all directions, and so that of evenly diffuse light a closed canopy stops just what k says.
 */
final class LeafExtinction {
  private static final int HALVINGS = 60;
  private static final int STEPS = 400;

  private LeafExtinction() {}

  /** The share G of a k at a leaf area index, both above 0. */
  static double facingShare(double k, double leafAreaIndex) {
    double wanted = Math.exp(-k * leafAreaIndex);
    double low = 0;
    double high = k;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (diffuseTransmission(middle * leafAreaIndex) > wanted) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  /**
   * The share of evenly diffuse light that passes a closed canopy.
   *
   * @param depth G x leaf area index
   */
  static double diffuseTransmission(double depth) {
    // With s = sin^2(elevation) light is spread evenly over s from 0 to 1.
    double sum = 0;
    for (int i = 0; i < STEPS; i++) {
      sum += Math.exp(-depth / Math.sqrt((i + 0.5) / STEPS));
    }
    return sum / STEPS;
  }
}
