package org.jointwright.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** The JSON Schema of plan files. */
public final class PlanSchema {
  private static final String RESOURCE = "/org/jointwright/plan.schema.json";

  private PlanSchema() {}

  /** The schema as text. */
  public static String text() {
    try (InputStream in = PlanSchema.class.getResourceAsStream(RESOURCE)) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
