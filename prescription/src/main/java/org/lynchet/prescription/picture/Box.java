package org.lynchet.prescription.picture;

/** A rectangle on the page, in points. */
record Box(double left, double top, double right, double bottom) {

  static Box around(double centreX, double centreY, double width, double height) {
    return new Box(
        centreX - width / 2, centreY - height / 2, centreX + width / 2, centreY + height / 2);
  }

  double width() {
    return right - left;
  }

  double height() {
    return bottom - top;
  }

  double centreX() {
    return (left + right) / 2;
  }

  double centreY() {
    return (top + bottom) / 2;
  }

  boolean overlaps(Box other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }

  boolean contains(Box other) {
    return left <= other.left && top <= other.top && right >= other.right && bottom >= other.bottom;
  }

  Box shrunk(double horizontally, double vertically) {
    return new Box(
        left + horizontally, top + vertically, right - horizontally, bottom - vertically);
  }
}
