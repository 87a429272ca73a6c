package org.jointwright.app;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import org.jointwright.file.PlanReader;
import org.jointwright.file.PlanReading;
import org.jointwright.file.PlanWriter;
import org.jointwright.file.save.SafeSave;
import org.jointwright.plan.Plan;

/** Opens and saves plans. */
public final class PlanFiles {
  private PlanFiles() {}

  /** The plan in a file, or what is wrong with it. */
  public static PlanReading open(Path file) {
    return PlanReader.read(file);
  }

  /**
   * The plan that a stream gives, or what is wrong with it.
   *
   * @throws IOException when the stream breaks off
   */
  public static PlanReading open(InputStream in) throws IOException {
    return PlanReader.read(in);
  }

  /**
   * Saves a plan; the version before is kept beside it.
   *
   * @throws IOException when it cannot be written; the file is then as it was
   */
  public static void save(Plan plan, Path file) throws IOException {
    SafeSave.saveWithBackup(file, PlanWriter.bytes(plan));
  }

  /** The plan as the text of a file. */
  public static String text(Plan plan) {
    return PlanWriter.write(plan);
  }
}
