package org.lynchet.formats.geopackage;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ByteOrderValues;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKBReader;
import org.locationtech.jts.io.WKBWriter;

/** Turns geometries into blobs and back (OGC 12-128r17, 2.1.3). */
final class Blob {
  private static final int HEADER = 8;

  /** Little-endian, with an envelope of x and y. */
  private static final byte WITH_BOX = 0b0000_0011;

  private static final int EXTENDED = 0b0010_0000;

  /** Bytes of the envelope by its kind. */
  private static final int[] BOX_BYTES = {0, 32, 48, 48, 64};

  private Blob() {}

  /** The blob of a geometry that has a place; one that is empty is no value at all. */
  static byte @Nullable [] of(Geometry geometry, int srsId) {
    if (geometry.isEmpty()) {
      return null;
    }
    byte[] wkb = new WKBWriter(2, ByteOrderValues.LITTLE_ENDIAN).write(geometry);
    Envelope box = geometry.getEnvelopeInternal();
    return ByteBuffer.allocate(HEADER + BOX_BYTES[1] + wkb.length)
        .order(ByteOrder.LITTLE_ENDIAN)
        .put((byte) 'G')
        .put((byte) 'P')
        .put((byte) 0)
        .put(WITH_BOX)
        .putInt(srsId)
        .putDouble(box.getMinX())
        .putDouble(box.getMaxX())
        .putDouble(box.getMinY())
        .putDouble(box.getMaxY())
        .put(wkb)
        .array();
  }

  /**
   * The geometry of a blob.
   *
   * @throws ParseException if it is none
   */
  static Geometry read(byte[] blob) throws ParseException {
    if (blob.length < HEADER || blob[0] != 'G' || blob[1] != 'P' || (blob[3] & EXTENDED) != 0) {
      throw new ParseException("not a geometry of GeoPackage");
    }
    int kind = (blob[3] >> 1) & 0b111;
    if (kind >= BOX_BYTES.length || blob.length < HEADER + BOX_BYTES[kind]) {
      throw new ParseException("an envelope of kind " + kind);
    }
    byte[] wkb = Arrays.copyOfRange(blob, HEADER + BOX_BYTES[kind], blob.length);
    try {
      return new WKBReader().read(wkb);
    } catch (IllegalArgumentException | StackOverflowError e) {
      // Rings that are not closed, and collections in collections without end.
      throw new ParseException("no geometry: " + e.getMessage());
    }
  }
}
