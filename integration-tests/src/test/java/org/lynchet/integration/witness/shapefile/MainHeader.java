package org.lynchet.integration.witness.shapefile;

import org.locationtech.jts.geom.Envelope;
import org.lynchet.integration.witness.Findings;

/** Checks the 100 bytes that begin both the main file and the index file. */
final class MainHeader {
  static final int LENGTH = 100;
  static final int POLYGON = 5;
  private static final int FILE_CODE = 9994;
  private static final int VERSION = 1000;

  private MainHeader() {}

  /** Checks everything but the box; false if there is no whole header to go on from. */
  static boolean check(FileBytes file, Findings findings) {
    if (!file.has(0, LENGTH)) {
      findings.add(ShapefileRule.TRUNCATED, file.name(), file.size() + " bytes, header needs 100");
      return false;
    }
    findings.addUnlessEqual(ShapefileRule.FILE_CODE, file.place(0), file.bigInt(0), FILE_CODE);
    for (int at = 4; at < 24; at += 4) {
      findings.addUnlessEqual(ShapefileRule.UNUSED, file.place(at), file.bigInt(at), 0);
    }
    findings.addUnlessEqual(
        ShapefileRule.FILE_LENGTH, file.place(24), file.bigInt(24) * 2L, (long) file.size());
    findings.addUnlessEqual(ShapefileRule.VERSION, file.place(28), file.littleInt(28), VERSION);
    findings.addUnlessEqual(ShapefileRule.SHAPE_TYPE, file.place(32), file.littleInt(32), POLYGON);
    return true;
  }

  /** Checks that the box of the header is that of the data, and that z and m are zero. */
  static void checkBox(FileBytes file, Envelope data, Findings findings) {
    checkBox(file, 36, data, findings);
    for (int at = 68; at < LENGTH; at += 8) {
      findings.addUnlessEqual(ShapefileRule.BOX, file.place(at), file.littleDouble(at), 0.0);
    }
  }

  /** Checks the four numbers xmin, ymin, xmax, ymax that stand at an offset. */
  static void checkBox(FileBytes file, int at, Envelope data, Findings findings) {
    double[] expected = {data.getMinX(), data.getMinY(), data.getMaxX(), data.getMaxY()};
    for (int i = 0; i < expected.length; i++) {
      int place = at + 8 * i;
      findings.addUnlessEqual(
          ShapefileRule.BOX, file.place(place), file.littleDouble(place), expected[i]);
    }
  }
}
