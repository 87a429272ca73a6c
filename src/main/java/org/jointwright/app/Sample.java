package org.jointwright.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import org.jointwright.file.PlanReading;

/** The sample that comes with the program: a drive, its approach by the street, and a walk. */
public final class Sample {
  private static final String NAME =
      "/org/jointwright/samples/drive-approach-walk.jointwright.json";

  private Sample() {}

  /** The sample's plan. */
  public static PlanReading read() {
    try (InputStream in = Objects.requireNonNull(Sample.class.getResourceAsStream(NAME))) {
      return PlanFiles.open(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
