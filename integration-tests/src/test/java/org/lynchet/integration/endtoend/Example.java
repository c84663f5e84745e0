package org.lynchet.integration.endtoend;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lynchet.integration.program.Program;

/**
 * The shipped example, copied so that nothing is written beside the original.
 *
 * @param folder the copy
 */
record Example(Path folder) {
  private static final String NAME = "sandhill-east";

  /** Copies the example into a folder. */
  static Example copyInto(Path folder) throws IOException {
    Path original = Program.examples().resolve(NAME);
    return new Example(Folders.copy(original, folder.resolve(NAME)));
  }

  /** The plan file. */
  Path plan() {
    return folder.resolve("plan.yaml");
  }

  /** The boundary that the plan names. */
  Path boundary() throws IOException {
    Matcher name = Pattern.compile("boundary: *(\\S+)").matcher(Files.readString(plan()));
    if (!name.find()) {
      throw new IOException("no boundary in " + plan());
    }
    return folder.resolve(name.group(1));
  }
}
