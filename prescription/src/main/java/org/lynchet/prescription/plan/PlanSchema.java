package org.lynchet.prescription.plan;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/**
 * Gives the JSON Schema (draft 2020-12) of plan files: each key with its description, default and,
 * as {@code x-unit}, its units. Editors check plans with it and the key reference is made of it;
 * {@link PlanFile} does not use it and checks more than a schema can say.
 */
public final class PlanSchema {
  private static final String RESOURCE = "plan.schema.json";

  private PlanSchema() {}

  /** The schema as JSON text. */
  public static String text() {
    try (InputStream in = PlanSchema.class.getResourceAsStream(RESOURCE)) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("the program's own schema cannot be read", e);
    }
  }
}
