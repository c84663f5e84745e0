package org.lynchet.formats.shapefile;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.lynchet.formats.FaultList;

/**
 * Decodes the bytes of a .shp, record after record, and checks every count against the bytes that
 * there are before it makes room for anything. Boxes and record numbers are not used.
 */
final class ShpDecoder {
  private static final int HEADER_BYTES = 100;
  private static final int RECORD_HEADER_BYTES = 8;
  private static final String AGAIN = "export the shapefile again";

  private final ByteBuffer in;
  private final String place;
  private final FaultList faults;
  private final GeometryFactory factory = new GeometryFactory();
  private final List<Geometry> shapes = new ArrayList<>();

  ShpDecoder(byte[] bytes, String place, FaultList faults) {
    this.in = ByteBuffer.wrap(bytes);
    this.place = place;
    this.faults = faults;
  }

  /** The geometries in order; one without shape is an empty collection. */
  List<Geometry> decode() {
    if (in.limit() < HEADER_BYTES) {
      fault("it ends after " + in.limit() + " bytes", place, "a header of 100 bytes");
      return shapes;
    }
    int code = in.getInt(0);
    if (code != 9994) {
      fault("its file code is " + code, place, "the file code 9994: a shapefile");
      return shapes;
    }
    checkLength();
    in.order(ByteOrder.LITTLE_ENDIAN);
    int version = in.getInt(28);
    if (version != 1000) {
      fault("its version is " + version, place, "version 1000");
    }
    int typeCode = in.getInt(32);
    ShapeType.find(typeCode)
        .ifPresentOrElse(this::decodeRecords, () -> decodeWithoutType(typeCode));
    return shapes;
  }

  private void checkLength() {
    long bytes = 2L * in.getInt(24);
    if (bytes > in.limit()) {
      fault("it ends after " + in.limit() + " of " + bytes + " bytes", place, "the whole file");
    } else if (bytes != in.limit()) {
      fault(
          "its header says " + bytes + " bytes, it has " + in.limit(), place, "the file's length");
    }
  }

  private void decodeWithoutType(int code) {
    if (code != ShapeType.NULL_CODE) {
      fault(
          "its shape type is " + code,
          place,
          "points, lines or polygons: 1, 3, 5, 11, 13, 15, 21, 23, 25");
    } else if (in.limit() > HEADER_BYTES) {
      fault("its shape type is 0: no shapes", place, "points, lines or polygons");
    }
  }

  private void decodeRecords(ShapeType type) {
    int position = HEADER_BYTES;
    for (int number = 1; position < in.limit(); number++) {
      String record = place + ", record " + number;
      if (in.limit() - position < RECORD_HEADER_BYTES) {
        fault("it ends inside the record's header", record, "whole records");
        return;
      }
      long content = 2L * in.order(ByteOrder.BIG_ENDIAN).getInt(position + 4);
      position += RECORD_HEADER_BYTES;
      if (content < 4 || content > in.limit() - position) {
        fault(
            "its length is " + content + " bytes, the file has " + (in.limit() - position),
            record,
            "a length that lies within the file");
        return;
      }
      ByteBuffer bytes = in.slice(position, (int) content).order(ByteOrder.LITTLE_ENDIAN);
      shapes.add(decodeRecord(type, bytes, record));
      position += (int) content;
    }
  }

  private Geometry decodeRecord(ShapeType type, ByteBuffer bytes, String record) {
    int code = bytes.getInt(0);
    if (code != ShapeType.NULL_CODE && code != type.code) {
      fault("its shape type is " + code, record, "0 or the file's type, " + type.code);
    } else if (code != ShapeType.NULL_CODE) {
      return new RecordDecoder(type, bytes, record, faults).decode(factory);
    }
    return factory.createGeometryCollection();
  }

  private void fault(String what, String where, String allowed) {
    faults.add(what, where, allowed, AGAIN);
  }
}
