package org.lynchet.prescription.plan;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.lynchet.prescription.plan.PlanNode.Scalar;
import org.lynchet.prescription.plan.PlanNode.ScalarKind;

/** Reads names: printable text without blanks at its ends. */
final class NameText {
  private static final int LONGEST_NAME = 64;
  private static final int LONGEST_FILE = 1024;

  /** What fits the product column of a shapefile. */
  private static final int LONGEST_PRODUCT_BYTES = 40;

  private static final Pattern CROP = Pattern.compile("[a-z0-9][a-z0-9-]{0,31}");

  /** Names that Windows keeps for devices, with any ending. */
  private static final Pattern DEVICE = Pattern.compile("con|prn|aux|nul|(com|lpt)[0-9]");

  private NameText() {}

  /** Reads a name of 1 to 64 characters. */
  static Optional<String> name(PlanNode node, PlanFaults faults) {
    return text(node, LONGEST_NAME, faults);
  }

  /** Reads the path of a file: 1 to 1024 characters. */
  static Optional<String> file(PlanNode node, PlanFaults faults) {
    return text(node, LONGEST_FILE, faults);
  }

  /** Reads a product's name: 1 to 40 bytes of UTF-8. */
  static Optional<String> product(PlanNode node, PlanFaults faults) {
    Optional<String> name = name(node, faults);
    int bytes = name.map(n -> n.getBytes(StandardCharsets.UTF_8).length).orElse(0);
    if (bytes > LONGEST_PRODUCT_BYTES) {
      faults.add(
          node.place(),
          node.kind() + " has " + bytes + " bytes, more than a shapefile's product column holds",
          "1 to " + LONGEST_PRODUCT_BYTES + " bytes of UTF-8; a to z and digits take one each",
          "shorten it");
      return Optional.empty();
    }
    return name;
  }

  /**
   * Reads one of some names.
   *
   * @param form reads a name as such
   * @param none what stands before a name that is none of them
   * @param known what they are together
   */
  static ValueReader<String> oneOf(
      ValueReader<String> form, Set<String> names, String none, String known) {
    return (node, faults) -> {
      Optional<String> name = form.read(node, faults);
      if (name.isEmpty() || names.contains(name.get())) {
        return name;
      }
      faults.add(
          node.place(),
          none + Shown.quoted(name.get()) + NearName.hint(names, name.get()),
          known + ": " + String.join(", ", names),
          "correct or remove it");
      return Optional.empty();
    };
  }

  /** Reads a crop, whose name becomes the name of a file. */
  static Optional<String> crop(PlanNode node, PlanFaults faults) {
    Optional<String> crop = name(node, faults);
    if (crop.isPresent() && isNoFileName(crop.get())) {
      faults.add(
          node.place(),
          node.kind() + " cannot be a crop: its name becomes the name of a file",
          "1 to 32 lower-case letters a to z, digits and dashes, no dash first; not the name of a"
              + " device such as con or nul",
          "write it in lower case, with dashes for blanks");
      return Optional.empty();
    }
    return crop;
  }

  private static boolean isNoFileName(String crop) {
    return !CROP.matcher(crop).matches() || DEVICE.matcher(crop).matches();
  }

  private static Optional<String> text(PlanNode node, int longest, PlanFaults faults) {
    Optional<String> wrong =
        node instanceof Scalar scalar
            ? whatIsWrong(scalar, longest)
            : Optional.of("stands where a name is wanted");
    if (wrong.isEmpty()) {
      return Optional.of(((Scalar) node).text());
    }
    faults.add(
        node.place(),
        node.kind() + " " + wrong.get(),
        "1 to " + longest + " printable characters, no blank at either end",
        wrong.get().contains("yes or no") ? "put it in quotes" : "correct it");
    return Optional.empty();
  }

  private static Optional<String> whatIsWrong(Scalar scalar, int longest) {
    String text = scalar.text();
    if (scalar.scalarKind() == ScalarKind.TRUE || scalar.scalarKind() == ScalarKind.FALSE) {
      return Optional.of("means yes or no in YAML, where a name is wanted");
    }
    if (scalar.scalarKind() == ScalarKind.NOTHING) {
      return Optional.of("stands where a name is wanted");
    }
    if (text.isBlank()) {
      return Optional.of("is an empty name");
    }
    if (!text.codePoints().allMatch(Shown::isPrintable)) {
      return Optional.of("has a character that cannot be printed");
    }
    if (!text.equals(text.strip())) {
      return Optional.of("begins or ends with a blank");
    }
    return text.codePointCount(0, text.length()) > longest
        ? Optional.of("is too long")
        : Optional.empty();
  }
}
