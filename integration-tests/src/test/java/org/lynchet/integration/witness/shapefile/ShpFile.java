package org.lynchet.integration.witness.shapefile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.lynchet.integration.witness.Findings;

/**
 * Walks the records of the main file.
 *
 * <p>The next record is looked for where the number of parts and points of this one puts it, so
 * that a wrong content length is one finding and not the end of the walk.
 */
final class ShpFile {
  private static final int RECORD_HEADER = 8;

  /** Shape type, box, number of parts, number of points. */
  private static final int FIXED_CONTENT = 44;

  private final FileBytes file;
  private final Findings findings;
  private final List<ShpRecord> records = new ArrayList<>();

  private ShpFile(FileBytes file, Findings findings) {
    this.file = file;
    this.findings = findings;
  }

  /** Checks header, record headers, boxes and rings; gives the records that could be read. */
  static List<ShpRecord> check(FileBytes file, Findings findings) {
    ShpFile walk = new ShpFile(file, findings);
    if (MainHeader.check(file, findings)) {
      walk.walk();
    }
    return walk.records;
  }

  private void walk() {
    int at = MainHeader.LENGTH;
    while (at < file.size()) {
      int length = readRecord(at);
      if (length < 0) {
        return;
      }
      at += length;
    }
    Envelope all = new Envelope();
    records.forEach(record -> all.expandToInclude(envelope(record.rings())));
    MainHeader.checkBox(file, all.isNull() ? new Envelope(0, 0, 0, 0) : all, findings);
  }

  /** Reads the record at an offset; gives its length with its header, or -1 if it is cut off. */
  private int readRecord(int at) {
    int content = at + RECORD_HEADER;
    if (!file.has(content, FIXED_CONTENT)) {
      return cutOff(at);
    }
    findings.addUnlessEqual(
        ShapefileRule.RECORD_NUMBER, file.place(at), file.bigInt(at), records.size() + 1);
    findings.addUnlessEqual(
        ShapefileRule.SHAPE_TYPE, file.place(content), file.littleInt(content), MainHeader.POLYGON);
    int parts = file.littleInt(content + 36);
    int points = file.littleInt(content + 40);
    long length = FIXED_CONTENT + 4L * parts + 16L * points;
    if (parts < 1 || points < 1 || length > Integer.MAX_VALUE) {
      findings.add(
          ShapefileRule.PARTS, file.place(content + 36), parts + " parts, " + points + " points");
      return -1;
    }
    if (!file.has(content, (int) length)) {
      return cutOff(at);
    }
    int words = file.bigInt(at + 4);
    findings.addUnlessEqual(
        ShapefileRule.CONTENT_LENGTH, file.place(at + 4), (long) words, length / 2);
    List<Coordinate[]> rings = rings(content, parts, points);
    records.add(new ShpRecord(at, words, rings));
    MainHeader.checkBox(file, content + 4, envelope(rings), findings);
    Rings.check(rings, "record " + records.size() + " of " + file.name(), findings);
    return RECORD_HEADER + (int) length;
  }

  private int cutOff(int at) {
    findings.add(ShapefileRule.TRUNCATED, file.place(at), "the record is cut off");
    return -1;
  }

  private List<Coordinate[]> rings(int content, int parts, int points) {
    int[] starts = new int[parts + 1];
    starts[parts] = points;
    for (int part = 0; part < parts; part++) {
      starts[part] = file.littleInt(content + FIXED_CONTENT + 4 * part);
    }
    Coordinate[] all = points(content + FIXED_CONTENT + 4 * parts, points);
    List<Coordinate[]> rings = new ArrayList<>();
    for (int part = 0; part < parts; part++) {
      boolean inOrder = starts[part] >= 0 && starts[part] < starts[part + 1];
      if (!inOrder || starts[part + 1] > points || (part == 0 && starts[0] != 0)) {
        findings.add(
            ShapefileRule.PARTS,
            file.place(content + FIXED_CONTENT + 4 * part),
            "part " + (part + 1) + " runs from " + starts[part] + " to " + starts[part + 1]);
      } else {
        rings.add(Arrays.copyOfRange(all, starts[part], starts[part + 1]));
      }
    }
    return rings;
  }

  private Coordinate[] points(int at, int count) {
    Coordinate[] points = new Coordinate[count];
    for (int i = 0; i < count; i++) {
      points[i] =
          new Coordinate(file.littleDouble(at + 16 * i), file.littleDouble(at + 16 * i + 8));
    }
    return points;
  }

  private static Envelope envelope(List<Coordinate[]> rings) {
    Envelope envelope = new Envelope();
    rings.forEach(ring -> Arrays.stream(ring).forEach(envelope::expandToInclude));
    return envelope;
  }
}
