package org.lynchet.prescription.handoff;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.plan.HandoffChoices.Format;
import org.lynchet.prescription.zone.FieldLayout;

/** A whole plan in one format, where that holds more than one crop's zones in one table. */
interface WholePlan {

  /** The formats that hold whole plans, one line each; nothing for those of planting files. */
  static List<WholePlan> of(FieldLayout layout, Format format) throws RejectedException {
    return switch (format) {
      case SHAPEFILE, GEOJSON -> List.of();
      case GEOPACKAGE -> List.of(LayeredFile.geoPackage(layout));
      case KML -> List.of(LayeredFile.kml(layout));
      case ISOXML -> List.of(TaskDataFiles.of(layout));
    };
  }

  /** All whole plans that a plan asks for, in its order. */
  static List<WholePlan> all(FieldLayout layout) throws RejectedException {
    List<WholePlan> plans = new ArrayList<>();
    for (Format format : layout.plan().handoff().formats()) {
      plans.addAll(of(layout, format));
    }
    return plans;
  }

  /** Writes it, and the folders above its files. */
  void write(Path folder) throws IOException;

  /** Reads it again; the differences from what it must say, with the file's name. */
  List<String> differences(Path folder);

  /** What README.txt says of it: whole lines. */
  String readme();
}
