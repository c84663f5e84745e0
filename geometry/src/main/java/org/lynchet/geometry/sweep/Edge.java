package org.lynchet.geometry.sweep;

import org.locationtech.jts.geom.Coordinate;

/** An edge of the boundary that is not along a line of constant offset, from left to right. */
record Edge(double left, double leftY, double right, double rightY) {

  static Edge between(Coordinate a, Coordinate b, double middle) {
    return a.x < b.x
        ? new Edge(a.x, a.y - middle, b.x, b.y - middle)
        : new Edge(b.x, b.y - middle, a.x, a.y - middle);
  }

  /** Where it crosses an offset of its reach; exact at its ends. */
  double y(double offset) {
    if (offset == left) {
      return leftY;
    }
    return offset == right ? rightY : leftY + (rightY - leftY) * ((offset - left) / (right - left));
  }
}
