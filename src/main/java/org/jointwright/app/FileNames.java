package org.jointwright.app;

import java.util.Optional;
import org.jointwright.plan.Job;

/** What the files of a job are called. */
public final class FileNames {
  private FileNames() {}

  /** The start of a file's name after the job's, of letters and figures only; empty without any. */
  public static Optional<String> of(Job job) {
    return Optional.of(job.name().replaceAll("[^\\p{L}\\p{N} -]", "").strip())
        .filter(n -> !n.isEmpty());
  }
}
