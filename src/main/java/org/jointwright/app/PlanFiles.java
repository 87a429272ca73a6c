package org.jointwright.app;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Optional;
import org.jointwright.file.PlanReader;
import org.jointwright.file.PlanReading;
import org.jointwright.file.PlanWriter;
import org.jointwright.file.save.SafeSave;
import org.jointwright.plan.Plan;

/** Opens and saves plans. */
public final class PlanFiles {
  private static final int MOST_BYTES_OF_A_SHEET = 64 * 1024 * 1024;

  private PlanFiles() {}

  /** The plan in a file of its own or in a printed sheet's, or what is wrong with it. */
  public static PlanReading open(Path file) {
    return PlanReader.read(file, PlanFiles::open);
  }

  /**
   * The plan that a stream gives, in a sheet or by itself, or what is wrong with it.
   *
   * @throws IOException when the stream breaks off
   */
  public static PlanReading open(InputStream in) throws IOException {
    // A sheet may be larger than any plan: its drawing comes on top.
    byte[] bytes = in.readNBytes(MOST_BYTES_OF_A_SHEET);
    Optional<PlanReading> inSheet = PlanInSheet.read(bytes);
    return inSheet.isPresent() ? inSheet.get() : PlanReader.read(new ByteArrayInputStream(bytes));
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
