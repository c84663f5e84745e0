package org.lynchet.prescription.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;
import org.lynchet.formats.Fault;
import org.lynchet.prescription.fault.RejectedException;

/** Whatever a file holds, it is a plan or it has faults that say where; never anything else. */
class PlanFilePropertyTest {
  private static Path folder = Path.of("");

  @BeforeContainer
  static void makeFolder() throws IOException {
    folder = Files.createTempDirectory("plans");
  }

  @AfterContainer
  static void removeFolder() throws IOException {
    Files.deleteIfExists(folder.resolve("plan.yaml"));
    Files.deleteIfExists(folder);
  }

  @Property(seed = "1804", tries = 1000)
  void randomText(@ForAll String text) throws IOException {
    readOrRefuse(text.getBytes(StandardCharsets.UTF_8));
  }

  @Property(seed = "1804", tries = 500)
  void randomBytes(@ForAll byte[] bytes) throws IOException {
    readOrRefuse(bytes);
  }

  @Property(seed = "1804", tries = 1500)
  void tokensOfPlansInAnyOrder(@ForAll("tokens") List<String> tokens) throws IOException {
    readOrRefuse(String.join("", tokens).getBytes(StandardCharsets.UTF_8));
  }

  @Property(seed = "1804", tries = 2000)
  void plansWithAPieceReplaced(@ForAll("changes") Change change) throws IOException {
    readOrRefuse(change.applyTo(PlanTexts.FULL).getBytes(StandardCharsets.UTF_8));
  }

  /** Leaving a line out never makes the reader stumble, whether or not the line was needed. */
  @Property(seed = "1804")
  void plansWithALineLeftOut(@ForAll("lineNumbers") int line) throws IOException {
    List<String> lines = PlanTexts.FULL.lines().collect(Collectors.toList());
    lines.remove(line);
    readOrRefuse(String.join("\n", lines).getBytes(StandardCharsets.UTF_8));
  }

  private static void readOrRefuse(byte[] bytes) throws IOException {
    Path file = Files.write(folder.resolve("plan.yaml"), bytes);
    try {
      Plan plan = PlanFile.read(file);
      assertThat(plan.strips()).isNotEmpty();
      assertThat(plan.machines()).isNotEmpty();
    } catch (RejectedException rejected) {
      assertThat(rejected.faults()).isNotEmpty();
      for (Fault fault : rejected.faults()) {
        assertThat(fault.where()).startsWith(file.toString());
        assertThat(List.of(fault.what(), fault.allowed(), fault.next()))
            .allSatisfy(text -> assertThat(text).isNotBlank());
      }
    }
  }

  @Provide
  Arbitrary<List<String>> tokens() {
    return token().list().ofMaxSize(40);
  }

  private static Arbitrary<String> token() {
    List<String> words = Arrays.asList(PlanTexts.FULL.split("(?<=[\\s,:{}\\[\\]])"));
    return Arbitraries.oneOf(
        Arbitraries.of(words),
        Arbitraries.of(
            "\n", "  ", "- ", ": ", "{", "}", "[", "]", ", ", "'", "\"", "&a ", "*a ", "|\n"),
        Arbitraries.of(
            "~", "null", "yes", "1e9", "-0", ".nan", "0x1F", "!!int ", "<<: ", "---\n", "# "));
  }

  /** Replaces the characters {@code from} to {@code to}. */
  record Change(int from, int to, String with) {
    String applyTo(String text) {
      return text.substring(0, from) + with + text.substring(to);
    }
  }

  @Provide
  Arbitrary<Change> changes() {
    int length = PlanTexts.FULL.length();
    return Combinators.combine(
            Arbitraries.integers().between(0, length),
            Arbitraries.integers().between(0, 20),
            Arbitraries.oneOf(token(), Arbitraries.strings().ofMaxLength(5)))
        .as((from, cut, with) -> new Change(from, Math.min(length, from + cut), with));
  }

  @Provide
  Arbitrary<Integer> lineNumbers() {
    return Arbitraries.integers().between(0, (int) PlanTexts.FULL.lines().count() - 1);
  }
}
