package org.lynchet.integration.witness.geojson;

/** The rules that a GeoJSON file is held to, each with its section of RFC 7946. */
public enum GeoJsonRule {
  /** UTF-8; RFC 8259 section 8.1. */
  UTF_8("RFC 8259 8.1"),
  /** No byte order mark; RFC 8259 section 8.1. */
  BYTE_ORDER_MARK("RFC 8259 8.1"),
  /** JSON, one value, no name twice in an object; RFC 8259 sections 2 and 4. */
  JSON("RFC 8259 2, 4"),
  /** The file is one FeatureCollection with an array of features. */
  FEATURE_COLLECTION("3.3"),
  /** Every feature is an object of type Feature. */
  FEATURE("3.2"),
  /** Every feature has a geometry, an object or null. */
  GEOMETRY_PRESENT("3.2"),
  /** Every feature has properties, an object or null. */
  PROPERTIES_PRESENT("3.2"),
  /** An id is a string or a number. */
  ID("3.2"),
  /** A geometry's type is one of the seven, in their letters. */
  GEOMETRY_TYPE("1.4, 3.1"),
  /** Coordinates nest as deep as the type wants. */
  COORDINATES("3.1"),
  /** A position has two numbers; stricter: no height. */
  POSITION("3.1.1"),
  /** Longitude within 180, latitude within 90 degrees. */
  LON_LAT("4"),
  /** A line has at least two positions. */
  LINE("3.1.4"),
  /** A ring has at least four positions. */
  RING_POSITIONS("3.1.6"),
  /** A ring's last position is its first. */
  RING_CLOSED("3.1.6"),
  /** Exterior rings run counter-clockwise, holes clockwise. */
  RIGHT_HAND_RULE("3.1.6"),
  /** Nothing crosses the antimeridian. */
  ANTIMERIDIAN("3.1.9"),
  /** No crs member. */
  CRS("4"),
  /** A bbox is west, south, east, north of what it covers. */
  BBOX("5"),
  /** Members that define one kind of object do not stand in another. */
  FOREIGN("7.1"),
  /** Stricter: at most nine decimals of a degree. */
  DECIMALS("11.2"),
  /** Stricter: no number has an exponent, which some readers do not know. */
  EXPONENT("RFC 8259 6");

  private final String section;

  GeoJsonRule(String section) {
    this.section = section;
  }

  @Override
  public String toString() {
    return name() + " (" + section + ")";
  }
}
