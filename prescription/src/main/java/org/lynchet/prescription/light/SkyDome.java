package org.lynchet.prescription.light;

/**
 * Divides an evenly bright sky into directions.
 *
 * <p>A direction is its angle t from upright in the plane across the rows and its angle g along
 * them. The light of a piece of sky on level ground is cos t cos^2 g dt dg / pi: with sin t = 1 -
 * v^2 even steps of v, closer near the horizon, where canopies make the most of a small change; and
 * Gauss-Chebyshev nodes of the second kind in sin g, whose weight is cos^2 g.
 */
final class SkyDome {
  final double[] shift;
  final double[] path;
  final double[] share;

  SkyDome(int across, int along) {
    shift = new double[2 * across * along];
    path = new double[shift.length];
    share = new double[shift.length];
    int next = 0;
    for (int i = 0; i < across; i++) {
      double low = 1 - (i + 0.5) / across;
      double sine = 1 - low * low;
      double cosine = Math.sqrt(1 - sine * sine);
      for (int k = 1; k <= along; k++) {
        double node = Math.PI * k / (2 * along + 1);
        double weight = Math.pow(Math.sin(node), 2) * 4 / (2 * along + 1);
        for (int side = -1; side <= 1; side += 2) {
          shift[next] = side * sine / cosine;
          path[next] = 1 / (cosine * Math.sin(node));
          share[next] = weight * low / across;
          next++;
        }
      }
    }
  }
}
