package org.lynchet.prescription.handoff;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.lynchet.formats.LayeredFormat;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.plan.HandoffChoices.Format;
import org.lynchet.prescription.zone.FieldLayout;

/** A whole plan in one format, where that holds more than one crop's zones in one table. */
interface WholePlan {

  /** The plan as task data or in layers; nothing in a format of one table. */
  static List<WholePlan> of(FieldLayout layout, Format format) throws RejectedException {
    if (format == Format.ISOXML) {
      return List.of(TaskDataFiles.of(layout));
    }
    return format.file() instanceof LayeredFormat layered
        ? List.of(LayeredFile.of(layout, layered))
        : List.of();
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
