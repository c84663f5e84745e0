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

  /** Sorghum in a third strip, with what a forecast and a budget ask for. */
  static void addThirdCropTo(Path folder) throws IOException {
    String plan = Files.readString(folder.resolve(PLAN));
    Files.writeString(
        folder.resolve(PLAN),
        plan.replace(
                "\nhandoff:\n",
                """
                  - crop: sorghum
                    planted-by: corn-planter
                    passes: 1
                    centre: {product: sorghum-71, rate: 60000 seeds/ac}

                handoff:
                """)
            .replace(
                "  canopies:\n",
                """
                  response: {sorghum: {low: 0.3, typical: 0.6, high: 0.9}}
                  canopies:
                    sorghum: {height: 48 in, leaf-area-index: 4, extinction: 0.5,
                      planting: 2026-05-20, maturity: 2026-09-20}
                """)
            .replace(
                "    soybean:\n      price",
                """
                    sorghum:
                      price: {low: 3.50 /bu, typical: 4.00 /bu, high: 4.60 /bu}
                      yield: {low: 80 bu/ac, typical: 100 bu/ac, high: 120 bu/ac}
                    soybean:
                      price"""
                    .indent(4)
                    .stripTrailing()));
  }

  static String[] words(String... arguments) {
    List<String> words = new ArrayList<>(List.of("compare", PLAN));
    words.addAll(List.of(arguments));
    return words.toArray(String[]::new);
  }
}
