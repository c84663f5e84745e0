package org.lynchet.formats.isoxml;

import java.nio.file.Path;
import java.util.List;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureReader;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.NamedChoice;
import org.lynchet.formats.isoxml.TaskSet.PartField;

/** Reads the boundary of one field out of task data. */
final class PartFieldReader implements FeatureReader {
  private static final NamedChoice<PartField> CHOICE =
      new NamedChoice<>(
          "field",
          PartField::id,
          field -> field.id() + " (" + field.name() + ")",
          "task data with a field (PFD)",
          "name one after the file, as in taskdata.zip#PFD1");

  private final String id;

  /** Takes the field's id, such as PFD1; empty for the only one. */
  PartFieldReader(String id) {
    this.id = id;
  }

  @Override
  public FeatureTable read(Path file) throws FormatException {
    try (TaskFiles files = TaskFiles.open(file)) {
      return table(TaskTree.read(files), id, file.toString());
    }
  }

  /** The table of a tree that has been read. */
  static FeatureTable table(TaskTree tree, String id, String place) throws FormatException {
    PartField meant = CHOICE.choose(new TaskSetDecoder(tree).decode().partFields(), id, place);
    Feature area = new Feature(meant.boundary(), List.of());
    return new FeatureTable(meant.name(), DeclaredCrs.LON_LAT, List.of(), List.of(area));
  }
}
