package org.lynchet.prescription.spraying;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.lynchet.geometry.strip.Strip;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.machine.Sprayer;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.swath.Swaths;

/** Names the strips that a boom does not fit, those of one width and crop together. */
final class BoomWarnings {
  private static final int MOST_NAMED = 12;
  private final Map<Misfit, List<Integer>> strips = new LinkedHashMap<>();

  private record Misfit(String machine, String crop, Swaths swaths) {}

  void add(Sprayer sprayer, String crop, Strip strip, Swaths swaths) {
    strips
        .computeIfAbsent(new Misfit(sprayer.name(), crop, swaths), misfit -> new ArrayList<>())
        .add(strip.number());
  }

  List<Warning> list() {
    List<Warning> warnings = new ArrayList<>();
    strips.forEach((misfit, numbers) -> warnings.add(warning(misfit, numbers)));
    return warnings;
  }

  private static Warning warning(Misfit misfit, List<Integer> numbers) {
    Swaths swaths = misfit.swaths();
    String which =
        String.format(
            Locale.ROOT,
            "%s in %s, strips of %.2f m (%s)",
            misfit.machine(),
            misfit.crop(),
            swaths.stripWidth() / Length.TENTHS_IN_A_METRE,
            named(numbers));
    double off = Math.abs(swaths.mismatch()) / Length.TENTHS_IN_A_METRE;
    if (swaths.passes().size() > 1) {
      return new Warning(
          Warning.Code.SPRAY_OVERLAPS,
          String.format(
              Locale.ROOT,
              "%s: %d passes that reach over no other crop overlap by %.2f m together, where the"
                  + " product is put on twice; see 'fit' for strips that suit the boom",
              which,
              swaths.passes().size(),
              off));
    }
    return new Warning(
        Warning.Code.SPRAY_CANNOT_COVER,
        String.format(
            Locale.ROOT,
            swaths.mismatch() > 0
                ? "%s: one section alone reaches over the crop beside it by %.2f m, so no section"
                    + " may be open; see 'fit' for strips that suit the boom"
                : "%s: the boom cannot cover them without reaching over the crop beside; the"
                    + " sections that are open leave %.2f m of each strip; see 'fit' for strips that"
                    + " suit the boom",
            which,
            off));
  }

  private static String named(List<Integer> numbers) {
    String first =
        numbers.stream().limit(MOST_NAMED).map(String::valueOf).collect(Collectors.joining(", "));
    return numbers.size() > MOST_NAMED
        ? first + " and " + (numbers.size() - MOST_NAMED) + " more"
        : first;
  }
}
