package org.lynchet.formats;

import java.io.Serializable;

/**
 * The coordinate system that a file says it is in.
 *
 * @param kind how the file says it
 * @param definition the WKT text or the authority's code, such as {@code EPSG:28992}; else empty
 */
public record DeclaredCrs(Kind kind, String definition) implements Serializable {

  /** How a file declares its coordinate system. */
  public enum Kind {
    /** WGS 84 longitude and latitude, by the format's own definition or by declaration. */
    LON_LAT,
    /** Well-known text of any flavour. */
    WKT,
    /** A code of an authority. */
    CODE,
    /** The file says nothing. */
    NONE
  }

  /** WGS 84, longitude before latitude, in degrees. */
  public static final DeclaredCrs LON_LAT = new DeclaredCrs(Kind.LON_LAT, "");

  /** Nothing declared. */
  public static final DeclaredCrs NONE = new DeclaredCrs(Kind.NONE, "");

  /** Declared by well-known text. */
  public static DeclaredCrs wkt(String text) {
    return new DeclaredCrs(Kind.WKT, text);
  }

  /** Declared by an authority's code. */
  public static DeclaredCrs code(String code) {
    return new DeclaredCrs(Kind.CODE, code);
  }
}
