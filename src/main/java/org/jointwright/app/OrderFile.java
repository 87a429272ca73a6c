package org.jointwright.app;

import org.jointwright.file.order.OrderWriter;
import org.jointwright.takeoff.Takeoff;
import org.jointwright.text.Words;

/** What a plan takes, as a file for other programs. */
public final class OrderFile {
  private OrderFile() {}

  /** The text of the file; names and steps in these words, figures in plain units. */
  public static String write(Takeoff takeoff, Words words) {
    return OrderWriter.write(takeoff, words);
  }
}
