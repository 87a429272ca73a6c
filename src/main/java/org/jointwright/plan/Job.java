package org.jointwright.plan;

/**
 * The job's facts for the title block.
 *
 * @param name the job's name
 * @param site where it is
 * @param client whom it is for
 * @param date the sheet's date, as ISO 8601 {@code yyyy-mm-dd}, or empty
 * @param revision the sheet's revision letter, or empty
 * @param notes anything
 * @param kept what the file said besides
 */
public record Job(
    String name,
    String site,
    String client,
    String date,
    String revision,
    String notes,
    Kept kept) {
  /** A job of which nothing is known. */
  public static final Job UNNAMED = new Job("", "", "", "", "", "", Kept.NOTHING);
}
