package org.lynchet.geometry.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.geometry.frame.PlaneFrame;
import org.lynchet.geometry.guidance.OffsetFrame;

/** Boundaries that are delicate on their way from longitude and latitude into the plane. */
class FieldShapeTest {

  @Test
  @DisplayName("a hole that touches the middle of an 800 m edge, which bows past it by 12 mm")
  void holeTouchesEdgeBetweenVertices() {
    checkAtHeading(
        "POLYGON ((-94.105 43.55, -94.095 43.55, -94.095 43.555, -94.105 43.555, -94.105 43.55),"
            + " (-94.1 43.55, -94.101 43.552, -94.099 43.552, -94.1 43.55))");
    checkAtHeading(
        "POLYGON ((-94.105 43.55, -94.095 43.55, -94.095 43.555, -94.105 43.555, -94.105 43.55),"
            + " (-94.1 43.555, -94.101 43.552, -94.099 43.552, -94.1 43.555))");
  }

  @Test
  @DisplayName("a part that touches the middle of the other's edge")
  void partTouchesEdgeBetweenVertices() {
    checkAtHeading(
        "MULTIPOLYGON (((-94.105 43.55, -94.095 43.55, -94.095 43.555, -94.105 43.555,"
            + " -94.105 43.55)), ((-94.1 43.55, -94.101 43.548, -94.099 43.548, -94.1 43.55)))");
    checkAtHeading(
        "MULTIPOLYGON (((-94.105 43.55, -94.095 43.55, -94.095 43.555, -94.105 43.555,"
            + " -94.105 43.55)), ((-94.1 43.555, -94.099 43.557, -94.101 43.557, -94.1 43.555)))");
  }

  @Test
  @DisplayName("vertices nearer to each other than the grid are one")
  void repeatedVertices() {
    Geometry boundary =
        TestField.read(
            "POLYGON ((-94.1 43.55, -94.1 43.55, -94.099 43.55, -94.09900000000001 43.55,"
                + " -94.099 43.551, -94.1 43.551, -94.1 43.55000000000001, -94.1 43.55))");
    FieldShape shape = FieldShape.of(boundary, TestField.FRAME);
    assertThat(shape.parts()).hasSize(1);
    assertThat(shape.parts().get(0)[0]).hasSize(4);
  }

  @Test
  @DisplayName("a field around longitude 0 and latitude 0 is written without negative zeros")
  void noNegativeZero() {
    OffsetFrame frame = OffsetFrame.onHeading(PlaneFrame.centredOn(0, 0), new Coordinate(0, 0), 0);
    Geometry boundary =
        TestField.read("POLYGON ((-1e-10 -1e-10, 0.001 0, 0.001 0.001, 0 0.001, -1e-10 -1e-10))");
    Coverage rounded =
        Coverage.cut(Regions.whole(FieldShape.of(boundary, frame)), new double[] {50}).rounded();
    for (Cell cell : rounded.cells()) {
      for (Coordinate at : rounded.inLonLat(cell).getCoordinates()) {
        assertThat(1 / at.x).isNotEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(1 / at.y).isNotEqualTo(Double.NEGATIVE_INFINITY);
      }
    }
  }

  private static void checkAtHeading(String wkt) {
    Geometry boundary = TestField.read(wkt);
    assertThat(boundary.isValid()).isTrue();
    TestField field = TestField.ofLonLat(boundary);
    assertThat(field.inMetres().isValid()).isTrue();
    double area = 0;
    for (int i = 0; i < boundary.getNumGeometries(); i++) {
      area += TestField.inMetres(boundary.getGeometryN(i)).getArea();
    }
    // 12 mm of bow over 800 m at most
    assertThat(field.shape.areaSquareMetres()).isCloseTo(area, within(10.0));
    field.cut(TestField.every(9.144, -700, 700));
  }
}
