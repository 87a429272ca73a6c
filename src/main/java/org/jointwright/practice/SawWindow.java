package org.jointwright.practice;

/**
 * When joints can be cut.
 *
 * @param fromHours the first hour
 * @param toHours the last hour
 * @param since what the hours are counted from
 * @param source where it is published
 */
public record SawWindow(double fromHours, double toHours, Since since, Cited source) {
  /** What a window is counted from; the documents differ, so the datum stays with the number. */
  public enum Since {
    /** Placing the concrete. */
    PLACING,
    /** Finishing its surface. */
    FINISHING
  }

  /** An ordinary saw. */
  public static final SawWindow SAWN = new SawWindow(4, 12, Since.FINISHING, Documents.CIP_6_TEXT);

  /** An ordinary saw on pavement. */
  public static final SawWindow SAWN_PAVEMENT =
      new SawWindow(
          2,
          6,
          Since.PLACING,
          Cited.secondHand("ACI 325.12R", "2002", "as quoted by an ACI question and answer"));

  /** An early-entry saw; about one hour in hot weather, four in cold. */
  public static final SawWindow EARLY_ENTRY =
      new SawWindow(1, 4, Since.FINISHING, Documents.CIP_6_TEXT);
}
