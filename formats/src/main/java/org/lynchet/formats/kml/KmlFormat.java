package org.lynchet.formats.kml;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.lynchet.formats.Characters;
import org.lynchet.formats.FeatureReader;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.LayeredFormat;
import org.lynchet.formats.TableLimits;

/** What there is to know of KML. */
final class KmlFormat implements LayeredFormat {
  @Override
  public List<String> endings() {
    return List.of(".kml");
  }

  @Override
  public List<String> readEndings() {
    return List.of(".kml", ".kmz");
  }

  @Override
  public FeatureReader reader(String part) {
    return Kml.reader(part);
  }

  @Override
  public void write(List<FeatureTable> tables, LocalDate date, Path file) throws IOException {
    Kml.write(tables, file);
  }

  @Override
  public String use() {
    return "for phones (KML)";
  }

  @Override
  public TableLimits limits() {
    return TableLimits.of(Characters.XML);
  }
}
