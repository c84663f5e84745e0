package org.lynchet.prescription.plan;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.lynchet.formats.isoxml.TaskSet.Version;
import org.lynchet.prescription.plan.HandoffChoices.Format;
import org.lynchet.prescription.plan.PlanNode.Scalar;
import org.lynchet.prescription.quantity.Length;

/** Reads the section {@code handoff}. */
final class HandoffSection {
  private static final int MOST = 1_000_000;

  private HandoffSection() {}

  static HandoffChoices read(KeyReader plan) {
    return plan.find("handoff", KeyReader.keys(HandoffSection::choices))
        .orElse(new HandoffChoices(false, Format.DEFAULT));
  }

  private static Optional<HandoffChoices> choices(KeyReader keys) {
    boolean offZones = keys.find("off-zones", WordText::flag).orElse(false);
    List<Format> formats =
        keys.find("formats", ValueReader.listOf(WordText.oneOf(Format.class)))
            .orElse(Format.DEFAULT);
    if (new HashSet<>(formats).size() < formats.size()) {
      keys.fault("formats", "a format is there twice", "each format once", "remove one of them");
    }
    TaskDataChoices taskData =
        keys.find("task-data", KeyReader.keys(HandoffSection::taskData))
            .orElse(TaskDataChoices.DEFAULT);
    boolean papers = keys.find("papers", WordText::flag).orElse(false);
    TerminalLimits limits =
        keys.find("limits", KeyReader.keys(HandoffSection::limits)).orElse(TerminalLimits.NONE);
    Optional<Length> simplify = keys.find("simplify", QuantityText.TOLERANCE);
    return Optional.of(
        new HandoffChoices(offZones, formats, taskData, papers, limits, simplify.orElse(null)));
  }

  private static Optional<TerminalLimits> limits(KeyReader keys) {
    ValueReader<Integer> count = NumberText.count(1, MOST);
    return Optional.of(
        new TerminalLimits(
            keys.find("polygons", count).orElse(null),
            keys.find("vertices-per-polygon", count).orElse(null),
            keys.find("rates", count).orElse(null)));
  }

  private static Optional<TaskDataChoices> taskData(KeyReader keys) {
    return Optional.of(
        new TaskDataChoices(
            keys.find("version", HandoffSection::version).orElse(Version.V4_3),
            keys.find("customer", NameText::name).orElse(null),
            keys.find("farm", NameText::name).orElse(null)));
  }

  /** Reads the version, which YAML takes for a number. */
  private static Optional<Version> version(PlanNode node, PlanFaults faults) {
    String text = node instanceof Scalar scalar ? scalar.text() : "";
    return switch (text) {
      case "4.3" -> Optional.of(Version.V4_3);
      case "3.3" -> Optional.of(Version.V3_3);
      default -> {
        faults.add(
            node.place(),
            node.kind() + " is no version of task data that can be written",
            "4.3 or 3.3",
            "choose the one that the terminal reads");
        yield Optional.empty();
      }
    };
  }
}
