package org.lynchet.formats.crs;

import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.Fault;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FormatException;

/** Brings a table to longitude and latitude of WGS 84, or says why it can't be done safely. */
public final class LonLat {
  private LonLat() {}

  /**
   * The table in longitude and latitude; the same table if it is so already.
   *
   * <p>A table that declares nothing is taken as longitude and latitude if all its numbers can be,
   * and a note says so.
   *
   * @param where what the table is called in faults: its file
   * @throws FormatException if the system is not known or not understood, its datum can't be
   *     brought to WGS 84 to within {@link DatumShift#MAX_ACCURACY_METRES}, or coordinates lie
   *     outside of where it holds
   */
  public static LonLatTable of(FeatureTable table, String where) throws FormatException {
    return switch (table.crs().kind()) {
      case LON_LAT -> new LonLatTable(table, List.of());
      case NONE -> undeclared(table, where);
      case CODE ->
          new Reprojection(where).of(table, EpsgSystems.wkt(table.crs().definition(), where));
      case WKT -> new Reprojection(where).of(table, SystemText.of(table.crs().definition(), where));
    };
  }

  private static LonLatTable undeclared(FeatureTable table, String where) throws FormatException {
    Envelope box = new Envelope();
    table.features().forEach(f -> box.expandToInclude(f.geometry().getEnvelopeInternal()));
    Envelope world = new Envelope(-180, 180, -90, 90);
    if (!box.isNull() && !world.covers(box)) {
      throw new FormatException(
          new Fault(
              "it declares no coordinate system, and its numbers are no degrees: x "
                  + box.getMinX()
                  + " to "
                  + box.getMaxX()
                  + ", y "
                  + box.getMinY()
                  + " to "
                  + box.getMaxY(),
              where,
              "a declared coordinate system, such as a .prj file, or WGS 84 degrees",
              "put the .prj beside it, or export it in WGS 84 longitude and latitude"));
    }
    FeatureTable taken =
        new FeatureTable(table.name(), DeclaredCrs.LON_LAT, table.columns(), table.features());
    return new LonLatTable(
        taken,
        List.of("It declares no coordinate system; taken as WGS 84 longitude and latitude."));
  }
}
