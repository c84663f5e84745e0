package org.lynchet.integration.endtoend;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.lynchet.integration.program.Program;

/** The example in strips of one pass each, which are compared in a moment. */
final class ComparedExample {
  private static final String PLAN = "plan.yaml";

  private ComparedExample() {}

  static void copyTo(Path folder) throws IOException {
    Path example = Program.examples().resolve("sandhill-east");
    try (var files = Files.list(example)) {
      for (Path file : files.toList()) {
        Files.copy(file, folder.resolve(file.getFileName().toString()));
      }
    }
    String plan = Files.readString(folder.resolve(PLAN));
    Files.writeString(folder.resolve(PLAN), plan + "\nfit: {max-strip-width: 30 ft}\n");
  }

  static String[] words(String... arguments) {
    List<String> words = new ArrayList<>(List.of("compare", PLAN));
    words.addAll(List.of(arguments));
    return words.toArray(String[]::new);
  }
}
