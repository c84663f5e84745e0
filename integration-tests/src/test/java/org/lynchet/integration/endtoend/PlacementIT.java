package org.lynchet.integration.endtoend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;

/**
 * The example with an AB line that was drawn badly, 12 m too far north and 1 degree off: the one
 * that is chosen, set by hand as a grower sets it on a terminal, gives the same field.
 */
class PlacementIT {
  private static final String AB = "{a: [-94.10210, 43.55120], b: [-94.09330, 43.55120]}";
  private static final String BAD = "{through: [-94.10210, 43.55131], heading: 89}";
  private static final String BEST = "\n  placement: best\n  headings: [88, 90, 92]";

  @TempDir static Path folder;
  private static JsonNode best = new ObjectMapper().createObjectNode();
  private static String readme = "";

  @BeforeAll
  static void planTheExample() throws IOException, InterruptedException {
    best = plan("best", BAD + BEST);
    readme = Files.readString(folder.resolve("best/out/README.txt"));
  }

  /** The summary of the example along another AB line. */
  private static JsonNode plan(String name, String abLine)
      throws IOException, InterruptedException {
    Example example = Example.copyInto(Files.createDirectories(folder.resolve(name)));
    String plan = Files.readString(example.plan());
    assertThat(plan).contains(AB);
    Files.writeString(example.plan(), plan.replace(AB, abLine));
    Path out = folder.resolve(name).resolve("out");
    Run run = Program.jar().run(folder, "plan", example.plan().toString(), "--out", out.toString());
    assertThat(run.exitCode()).as(run.toString()).isZero();
    assertThat(Program.jar().run(folder, "check", out.toString()).exitCode()).isZero();
    return new ObjectMapper().readTree(out.resolve("summary.json").toFile());
  }

  @Test
  void theTermsAddUpAndWhatIsChosenCostsLess() {
    JsonNode placement = best.path("placement");
    double fixed = 0;
    double chosen = 0;
    for (JsonNode term : placement.path("terms")) {
      fixed += term.path("fixed").asDouble() * term.path("weight_m2").asDouble();
      chosen += term.path("chosen").asDouble() * term.path("weight_m2").asDouble();
    }
    // six terms, each rounded to 4 decimals
    assertThat(placement.path("fixed_cost_m2").asDouble()).isCloseTo(fixed, within(1e-2));
    assertThat(placement.path("chosen_cost_m2").asDouble()).isCloseTo(chosen, within(1e-2));
    assertThat(chosen).isLessThan(fixed);
    assertThat(placement.path("headings_tried").asInt()).isEqualTo(4);
  }

  /** What was read off agrees with what was written: the summary measures the layout anew. */
  @Test
  void theLayoutIsTheOneThatWasChosen() {
    assertThat(term("partial-pass"))
        // but for small pieces that were joined across the edge of a partial pass
        .isCloseTo(best.path("partial_passes").path("area_m2").asDouble(), within(20.0));
    int turns = 0;
    for (JsonNode driving : best.path("driving")) {
      boolean plants = driving.path("machine").asText().endsWith("planter");
      turns += plants ? driving.path("turns").asInt() : 0;
    }
    assertThat(term("turn")).isEqualTo(turns);
  }

  private static double term(String name) {
    return StreamSupport.stream(best.path("placement").path("terms").spliterator(), false)
        .filter(term -> term.path("term").asText().equals(name))
        .findFirst()
        .orElseThrow()
        .path("chosen")
        .asDouble();
  }

  /** Set by hand, A and B to 9 decimals, the reported line gives the same areas and passes. */
  @Test
  void theReportedLineGivesTheSameField() throws IOException, InterruptedException {
    JsonNode line = best.path("placement").path("ab_line");
    JsonNode byHand = plan("by-hand", "{a: " + line.path("a") + ", b: " + line.path("b") + "}");
    assertThat(byHand.has("placement")).isFalse();
    for (int i = 0; i < best.path("crops").size(); i++) {
      JsonNode a = best.path("crops").get(i);
      JsonNode b = byHand.path("crops").get(i);
      assertThat(b.path("passes")).isEqualTo(a.path("passes"));
      assertThat(b.path("partial_passes")).isEqualTo(a.path("partial_passes"));
      // 0.1 mm at A and B, over strips of 800 m with two sides each
      assertThat(b.path("area_m2").asDouble())
          .isCloseTo(a.path("area_m2").asDouble(), within(10.0));
    }
    assertThat(byHand.path("ab_line_heading_degrees").asDouble())
        .isCloseTo(best.path("ab_line_heading_degrees").asDouble(), within(1e-3));
  }

  @Test
  void theReadmeTellsWhatToSetOnTheTerminal() {
    JsonNode line = best.path("placement").path("ab_line");
    assertThat(readme)
        .contains("Set this AB line on the terminal")
        .contains(String.format(Locale.ROOT, "%.9f", line.path("a").get(0).asDouble()))
        .contains(String.format(Locale.ROOT, "%.9f", line.path("b").get(1).asDouble()));
    assertThat(readme.lines()).allMatch(text -> text.length() <= 100);
  }
}
