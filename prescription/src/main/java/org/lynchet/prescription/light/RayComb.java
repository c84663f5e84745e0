package org.lynchet.prescription.light;

/**
 * Sends parallel rays through a cross-section and follows each until it reaches the ground.
 *
 * <p>Rays fall on the height of the tallest canopy, evenly over each cell. What a canopy stops of a
 * ray is 1 - exp(-density x path), credited to its row; what is left goes on, so that all energy is
 * accounted for. Nothing is allocated here.
 */
final class RayComb {
  /** A ray of which less than this is left is given to the canopy that it is in. */
  private static final double LOST = 1e-9;

  /** Rays this near to upright are taken as this far from it, so as to divide by the shift. */
  private static final double UPRIGHT = 1e-9;

  /** Below this share of the light a place is in shade. */
  private static final double SHADE = 0.5;

  private final double rayMetres;

  /**
   * A comb of rays.
   *
   * @param rayMetres distance of rays across, about
   */
  RayComb(double rayMetres) {
    this.rayMetres = rayMetres;
  }

  /**
   * Sends light of one direction over a whole period.
   *
   * @param shift metres to the columns' far side for each metre down, 0 or more
   * @param path metres of path for each metre down, 1 or more
   * @param energy energy on level ground
   * @param start place of the first ray in its share of a cell, 0 to 1
   */
  void send(Columns columns, double shift, double path, double energy, double start, Receipts to) {
    double drop = 1 / Math.max(shift, UPRIGHT);
    double begin = 0;
    for (int i = 0; i < columns.count; i++) {
      int rays = Math.max(1, (int) Math.round(columns.spacing(i) / rayMetres));
      double width = columns.spacing(i) / rays;
      for (int k = 0; k < rays; k++) {
        follow(columns, i, begin + (k + start) * width, drop, path, width, energy, to);
      }
      begin = columns.cellEnd[i];
    }
  }

  /**
   * Follows one ray.
   *
   * @param drop metres down for each metre across
   * @param width metres across that the ray stands for
   */
  private static void follow(
      Columns columns,
      int first,
      double begin,
      double drop,
      double path,
      double width,
      double energy,
      Receipts to) {
    int i = first;
    double x = begin;
    double z = columns.topMetres();
    double left = 1;
    while (true) {
      double end = z - (columns.cellEnd[i] - x) * drop;
      double height = columns.height[i];
      int row = columns.row[i];
      if (z >= height && end < height) {
        to.incident[row] += left * width * energy;
        to.shaded[row] += left < SHADE ? width : 0;
      }
      double from = Math.min(height, z - Math.max(0, columns.canopyBegin[i] - x) * drop);
      double until = Math.max(0, z - Math.max(0, columns.canopyEnd[i] - x) * drop);
      if (from > until) {
        double passes = left * Math.exp(-columns.density[i] * path * (from - until));
        passes = passes < LOST ? 0 : passes;
        to.absorbed[row] += (left - passes) * width * energy;
        left = passes;
      }
      if (left == 0) {
        return;
      }
      if (end <= 0) {
        to.addGround(left * width * energy);
        return;
      }
      x = columns.cellEnd[i];
      z = end;
      i++;
      if (i == columns.count) {
        i = 0;
        x = 0;
      }
    }
  }
}
