package org.lynchet.prescription.plan;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.lynchet.formats.isoxml.TaskSet.Version;

/**
 * How ISO 11783-10 task data is written.
 *
 * @param version the version of the standard
 * @param customer whose field it is, or null for the field's name
 * @param farm the farm that it belongs to, or null for the field's name
 */
public record TaskDataChoices(Version version, @Nullable String customer, @Nullable String farm)
    implements Serializable {

  /** What holds for a plan that says nothing. */
  public static final TaskDataChoices DEFAULT = new TaskDataChoices(Version.V4_3, null, null);
}
