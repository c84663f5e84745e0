package org.lynchet.prescription.cli;

import java.util.Arrays;
import java.util.ListResourceBundle;
import java.util.stream.Collectors;
import org.lynchet.prescription.intake.InputTable;
import org.lynchet.prescription.plan.HandoffChoices.Format;

/** What help texts say of formats, for {@code ${bundle:...}}. */
public final class FormatWords extends ListResourceBundle {
  @Override
  protected Object[][] getContents() {
    String written =
        Arrays.stream(Format.values())
            .map(format -> format.file().ending())
            .collect(Collectors.joining(", "));
    return new Object[][] {
      {"formats.read", InputTable.endings()}, {"formats.written", written},
    };
  }
}
