package org.lynchet.formats.geojson;

import java.time.LocalDate;
import java.util.List;
import org.lynchet.formats.Characters;
import org.lynchet.formats.FeatureReader;
import org.lynchet.formats.FeatureWriter;
import org.lynchet.formats.FileFormat;
import org.lynchet.formats.TableLimits;
import org.lynchet.formats.TableLimits.Kinds;

/** What there is to know of GeoJSON. */
final class GeoJsonFormat implements FileFormat {
  @Override
  public List<String> endings() {
    return List.of(".geojson");
  }

  @Override
  public List<String> readEndings() {
    return List.of(".geojson", ".json");
  }

  @Override
  public FeatureReader reader(String part) {
    return GeoJson.reader();
  }

  @Override
  public FeatureWriter writer(LocalDate date) {
    return GeoJson.writer();
  }

  @Override
  public TableLimits limits() {
    return TableLimits.of(Characters.ALL).withKinds(Kinds.ONE_IN_EACH);
  }
}
