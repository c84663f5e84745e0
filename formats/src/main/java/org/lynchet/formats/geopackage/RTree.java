package org.lynchet.formats.geopackage;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Envelope;
import org.lynchet.formats.Feature;

/** Writes the R-tree of a layer and the triggers that keep it (OGC 12-128r17, Annex F.3). */
final class RTree {
  private static final String DEFINITION = "http://www.geopackage.org/spec120/#extension_rtree";

  private static final String HELD = "(NEW.\"geom\" NOTNULL AND NOT ST_IsEmpty(NEW.\"geom\"))";

  private static final String NOT_HELD = "(NEW.\"geom\" ISNULL OR ST_IsEmpty(NEW.\"geom\"))";

  private final Database database;
  private final String layer;
  private final String table;
  private final String tree;

  RTree(Database database, String layer) {
    this.database = database;
    this.layer = layer;
    this.table = Database.quoted(layer);
    this.tree = Database.quoted("rtree_" + layer + "_geom");
  }

  /** Writes the index of features whose keys count from 1. */
  void write(List<Feature> features) throws SQLException {
    database.run("CREATE VIRTUAL TABLE " + tree + " USING rtree(id, minx, maxx, miny, maxy)");
    List<@Nullable Object[]> boxes = new ArrayList<>();
    for (int i = 0; i < features.size(); i++) {
      Envelope box = features.get(i).geometry().getEnvelopeInternal();
      if (!box.isNull()) {
        boxes.add(new Object[] {i + 1, box.getMinX(), box.getMaxX(), box.getMinY(), box.getMaxY()});
      }
    }
    database.runForEach("INSERT INTO " + tree + " VALUES (?, ?, ?, ?, ?)", boxes);
    triggers();
    database.run(
        "INSERT INTO gpkg_extensions VALUES (?, 'geom', 'gpkg_rtree_index', ?, 'write-only')",
        layer,
        DEFINITION);
  }

  private void triggers() throws SQLException {
    String insert =
        "INSERT OR REPLACE INTO "
            + tree
            + " VALUES (NEW.\"fid\", ST_MinX(NEW.\"geom\"), ST_MaxX(NEW.\"geom\"),"
            + " ST_MinY(NEW.\"geom\"), ST_MaxY(NEW.\"geom\")); ";
    String delete = "DELETE FROM " + tree + " WHERE id = OLD.\"fid\"; ";
    String deleteBoth = "DELETE FROM " + tree + " WHERE id IN (OLD.\"fid\", NEW.\"fid\"); ";
    String same = "OLD.\"fid\" = NEW.\"fid\" AND ";
    String other = "OLD.\"fid\" != NEW.\"fid\" AND ";
    trigger("insert", "INSERT", HELD, insert);
    trigger("update1", "UPDATE OF \"geom\"", same + HELD, insert);
    trigger("update2", "UPDATE OF \"geom\"", same + NOT_HELD, delete);
    trigger("update3", "UPDATE", other + HELD, delete + insert);
    trigger("update4", "UPDATE", other + NOT_HELD, deleteBoth);
    trigger("delete", "DELETE", "OLD.\"geom\" NOTNULL", delete);
  }

  private void trigger(String suffix, String event, String when, String action)
      throws SQLException {
    database.run(
        "CREATE TRIGGER "
            + Database.quoted("rtree_" + layer + "_geom_" + suffix)
            + " AFTER "
            + event
            + " ON "
            + table
            + " WHEN "
            + when
            + " BEGIN "
            + action
            + "END");
  }
}
