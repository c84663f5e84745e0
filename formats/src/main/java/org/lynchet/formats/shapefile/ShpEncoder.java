package org.lynchet.formats.shapefile;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Envelope;
import org.lynchet.formats.Feature;

/**
 * Encodes geometries as the bytes of a .shp and its .shx.
 *
 * <p>Both files begin with the same 100 bytes but for the length. Numbers about the file (code,
 * lengths, record numbers, offsets) are big-endian and count 16-bit words; numbers about shapes are
 * little-endian (ESRI description, pages 3 to 5 and 23).
 */
final class ShpEncoder {
  private static final int HEADER_BYTES = 100;
  private static final int RECORD_HEADER_BYTES = 8;

  /** The published limit of one component. */
  private static final long LIMIT_BYTES = Integer.MAX_VALUE;

  private final ShapeType type;
  private final List<Shape> shapes;
  private final Envelope box;

  private ShpEncoder(ShapeType type, List<Shape> shapes) {
    this.type = type;
    this.shapes = shapes;
    this.box = new Envelope();
    shapes.forEach(s -> box.expandToInclude(s.box()));
  }

  /**
   * Takes the geometries of the features apart.
   *
   * @throws IllegalArgumentException if they differ in kind, or one is empty or has a coordinate
   *     that is not finite
   */
  static ShpEncoder of(List<Feature> features) {
    List<Shape> shapes = new ArrayList<>(features.size());
    for (Feature feature : features) {
      shapes.add(Shape.of(feature.geometry()));
      ShapeType first = shapes.get(0).type();
      if (shapes.get(shapes.size() - 1).type() != first) {
        throw new IllegalArgumentException(
            feature.geometry().getGeometryType() + " among shapes of type " + first);
      }
    }
    return new ShpEncoder(shapes.isEmpty() ? ShapeType.POLYGON : shapes.get(0).type(), shapes);
  }

  byte[] shp() {
    long size = HEADER_BYTES;
    for (Shape shape : shapes) {
      size += RECORD_HEADER_BYTES + shape.contentBytes();
    }
    byte[] bytes = new byte[checked(size)];
    ByteBuffer out = ByteBuffer.wrap(bytes);
    putHeader(out);
    for (int i = 0; i < shapes.size(); i++) {
      out.order(ByteOrder.BIG_ENDIAN).putInt(i + 1).putInt(words(shapes.get(i).contentBytes()));
      putContent(out.order(ByteOrder.LITTLE_ENDIAN), shapes.get(i));
    }
    return bytes;
  }

  byte[] shx() {
    byte[] bytes = new byte[checked(HEADER_BYTES + 8L * shapes.size())];
    ByteBuffer out = ByteBuffer.wrap(bytes);
    putHeader(out);
    out.order(ByteOrder.BIG_ENDIAN);
    int offset = HEADER_BYTES;
    for (Shape shape : shapes) {
      out.putInt(words(offset)).putInt(words(shape.contentBytes()));
      offset += RECORD_HEADER_BYTES + shape.contentBytes();
    }
    return bytes;
  }

  private void putHeader(ByteBuffer out) {
    out.order(ByteOrder.BIG_ENDIAN).putInt(9994).position(24);
    out.putInt(words(out.capacity()));
    out.order(ByteOrder.LITTLE_ENDIAN).putInt(1000).putInt(type.code);
    if (box.isNull()) {
      out.position(HEADER_BYTES);
      return;
    }
    putBox(out, box);
    out.position(HEADER_BYTES);
  }

  private static void putContent(ByteBuffer out, Shape shape) {
    out.putInt(shape.type().code);
    if (shape.type().kind != ShapeType.Kind.POINT) {
      putBox(out, shape.box());
      out.putInt(shape.parts().size()).putInt(shape.pointCount());
      int start = 0;
      for (CoordinateSequence part : shape.parts()) {
        out.putInt(start);
        start += part.size();
      }
    }
    for (CoordinateSequence part : shape.parts()) {
      for (int i = 0; i < part.size(); i++) {
        out.putDouble(zeroed(part.getX(i))).putDouble(zeroed(part.getY(i)));
      }
    }
  }

  private static void putBox(ByteBuffer out, Envelope box) {
    out.putDouble(zeroed(box.getMinX())).putDouble(zeroed(box.getMinY()));
    out.putDouble(zeroed(box.getMaxX())).putDouble(zeroed(box.getMaxY()));
  }

  /** Makes -0 a 0, so that equal coordinates have equal bytes. */
  private static double zeroed(double value) {
    return value + 0.0;
  }

  private static int words(int bytes) {
    return bytes / 2;
  }

  private static int checked(long size) {
    if (size > LIMIT_BYTES) {
      throw new IllegalArgumentException("a shapefile's component is at most 2 GB, not " + size);
    }
    return (int) size;
  }
}
