package org.lynchet.integration.witness.shapefile;

import java.util.List;
import org.lynchet.integration.witness.Findings;

/** Checks the index file against the records of the main file. */
final class ShxFile {
  private static final int ENTRY = 8;

  private ShxFile() {}

  static void check(FileBytes index, FileBytes main, List<ShpRecord> records, Findings findings) {
    if (!MainHeader.check(index, findings)) {
      return;
    }
    for (int at = 36; at < MainHeader.LENGTH && main.has(at, 8); at += 8) {
      findings.addUnlessEqual(
          ShapefileRule.BOX, index.place(at), index.littleDouble(at), main.littleDouble(at));
    }
    int entryBytes = index.size() - MainHeader.LENGTH;
    findings.addUnlessEqual(
        ShapefileRule.INDEX_COUNT,
        index.name(),
        entryBytes + " bytes of entries",
        ENTRY * records.size() + " bytes of entries");
    for (int i = 0; i < records.size() && ENTRY * (i + 1) <= entryBytes; i++) {
      checkEntry(index, MainHeader.LENGTH + ENTRY * i, records.get(i), findings);
    }
  }

  private static void checkEntry(FileBytes index, int at, ShpRecord record, Findings findings) {
    findings.addUnlessEqual(
        ShapefileRule.INDEX_OFFSET, index.place(at), index.bigInt(at), record.at() / 2);
    findings.addUnlessEqual(
        ShapefileRule.INDEX_LENGTH,
        index.place(at + 4),
        index.bigInt(at + 4),
        record.contentWords());
  }
}
