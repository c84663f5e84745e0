package org.lynchet.prescription.intake;

import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.lynchet.prescription.plan.HandoffChoices.Format;

/**
 * A file as a plan names it, and one part of it where the file holds several: {@code
 * taskdata.zip#PFD1}.
 *
 * @param file the file
 * @param part what is behind the #; empty for nothing
 */
record NamedPart(String file, String part) {
  private static final Pattern PART =
      Pattern.compile(
          Arrays.stream(Format.values())
              .filter(format -> format.file().hasParts())
              .flatMap(format -> format.file().readEndings().stream())
              .map(Pattern::quote)
              .collect(Collectors.joining("|", "(?i)(.+(?:", "))#([^#]*)")));

  /** Takes a name apart; a # elsewhere belongs to the file's name. */
  static NamedPart of(String name) {
    Matcher parts = PART.matcher(name);
    return parts.matches()
        ? new NamedPart(parts.group(1), parts.group(2))
        : new NamedPart(name, "");
  }

  /** The file's ending with its dot, in lower case; empty for none. */
  String ending() {
    int dot = file.lastIndexOf('.');
    return dot < 0 ? "" : file.substring(dot).toLowerCase(Locale.ROOT);
  }
}
