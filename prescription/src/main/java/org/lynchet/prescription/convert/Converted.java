package org.lynchet.prescription.convert;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** What a file is to say in its new format, which can hold all of it. */
interface Converted {

  /** How many features are taken over. */
  int count();

  /** Writes the file and those beside it. */
  void write(Path file) throws IOException;

  /** Reads the file again: the differences from what it must say; empty for none. */
  List<String> differences(Path file);
}
