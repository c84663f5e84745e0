package org.lynchet.prescription.handoff;

import java.nio.file.Path;
import java.util.List;
import org.lynchet.formats.Fault;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FileFormat;
import org.lynchet.formats.FormatException;

/** Reads a file of one table again. */
public final class TableCheck {
  private TableCheck() {}

  /** The differences from the table that a file must say; empty for none. */
  public static List<String> differences(FileFormat format, FeatureTable meant, Path file) {
    boolean exactNumbers = format.limits().fixedWidth() == null;
    try {
      return ReadBack.differences(meant, format.reader("").read(file), exactNumbers);
    } catch (FormatException e) {
      return e.faults().stream().map(Fault::what).toList();
    }
  }
}
