package org.lynchet.formats.shapefile;

import java.util.Arrays;
import java.util.Optional;

/** Names the shape types that are read; page 4 of the ESRI description lists them all. */
enum ShapeType {
  POINT(1, Kind.POINT, false, false),
  LINE(3, Kind.LINE, false, false),
  POLYGON(5, Kind.POLYGON, false, false),
  POINT_Z(11, Kind.POINT, true, true),
  LINE_Z(13, Kind.LINE, true, true),
  POLYGON_Z(15, Kind.POLYGON, true, true),
  POINT_M(21, Kind.POINT, false, true),
  LINE_M(23, Kind.LINE, false, true),
  POLYGON_M(25, Kind.POLYGON, false, true);

  /** What a shape is, whatever it carries beside x and y. */
  enum Kind {
    POINT,
    LINE,
    POLYGON
  }

  /** The code of a record without a shape. */
  static final int NULL_CODE = 0;

  final int code;
  final Kind kind;
  final boolean hasZ;
  final boolean hasM;

  ShapeType(int code, Kind kind, boolean hasZ, boolean hasM) {
    this.code = code;
    this.kind = kind;
    this.hasZ = hasZ;
    this.hasM = hasM;
  }

  static Optional<ShapeType> find(int code) {
    return Arrays.stream(values()).filter(t -> t.code == code).findFirst();
  }
}
