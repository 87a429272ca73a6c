package org.jointwright.sheet.pdf;

/** A file of a printed sheet, not written yet. */
public final class SheetFile {
  private final String name;
  private final byte[] bytes;

  SheetFile(String name, byte[] bytes) {
    this.name = name;
    this.bytes = bytes.clone();
  }

  /** Its name, {@code cut-sheet.pdf} for example. */
  public String name() {
    return name;
  }

  /** A copy of what is in it. */
  public byte[] bytes() {
    return bytes.clone();
  }
}
