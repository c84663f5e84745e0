package org.lynchet.formats.isoxml;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.Fault;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureReader;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.isoxml.TaskSet.PartField;

/** Reads the boundary of one field out of task data. */
final class PartFieldReader implements FeatureReader {
  private final String id;

  /** Takes the field's id, such as PFD1; empty for the only one. */
  PartFieldReader(String id) {
    this.id = id;
  }

  @Override
  public FeatureTable read(Path file) throws FormatException {
    List<PartField> fields = TaskData.read(file).partFields();
    List<PartField> meant = fields.stream().filter(f -> id.isEmpty() || f.id().equals(id)).toList();
    if (meant.size() != 1) {
      throw new FormatException(
          new Fault(
              id.isEmpty() ? fields.size() + " fields in it" : "no field " + id + " in it",
              file.toString(),
              fields.isEmpty() ? "task data with a field (PFD)" : "one of " + list(fields),
              "name one after the file, as in taskdata.zip#PFD1"));
    }
    Feature area = new Feature(meant.get(0).boundary(), List.of());
    return new FeatureTable(meant.get(0).name(), DeclaredCrs.LON_LAT, List.of(), List.of(area));
  }

  private static String list(List<PartField> fields) {
    return fields.stream()
        .limit(20)
        .map(field -> field.id() + " (" + field.name() + ")")
        .collect(Collectors.joining(", "));
  }
}
