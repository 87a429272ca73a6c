package org.jointwright.picture;

import java.util.Arrays;

/**
 * A PNG or JPEG, whole, byte for byte as it was given. Two pictures of the same bytes are the same.
 */
public final class Picture {
  /** A picture of more bytes than this is none for a plan: a plan file must stay easy to send. */
  public static final int MOST_BYTES = 8 * 1024 * 1024;

  /** A picture of more pixels than this would fill the memory of a small machine. */
  public static final long MOST_PIXELS = 100_000_000;

  private final byte[] bytes;
  private final Header header;
  private final int hash;

  private Picture(byte[] bytes, Header header) {
    this.bytes = bytes;
    this.header = header;
    hash = Arrays.hashCode(bytes);
  }

  /**
   * The picture that {@code bytes} are.
   *
   * @throws PictureException when they are none, are cut off, or are too much
   */
  public static Picture of(byte[] bytes) throws PictureException {
    if (bytes.length > MOST_BYTES) {
      throw new PictureException(PictureException.Why.TOO_BIG);
    }
    byte[] own = bytes.clone();
    Header header = own.length > 1 && (own[0] & 0xFF) == 0xFF ? Jpeg.header(own) : Png.header(own);
    if (header.width() <= 0 || header.height() <= 0) {
      throw new PictureException(PictureException.Why.BROKEN);
    }
    if ((long) header.width() * header.height() > MOST_PIXELS) {
      throw new PictureException(PictureException.Why.TOO_MANY_PIXELS);
    }
    return new Picture(own, header);
  }

  /** A copy of its bytes. */
  public byte[] bytes() {
    return bytes.clone();
  }

  /** Pixels across, as they are stored. */
  public int width() {
    return header.width();
  }

  /** Pixels up, as they are stored. */
  public int height() {
    return header.height();
  }

  /**
   * How far it is to be turned to stand upright, degrees counter-clockwise: 0, 90, 180 or -90. A
   * camera held upright stores its picture lying and says so.
   */
  public int upright() {
    return header.upright();
  }

  /** What a picture says of itself before any pixel. */
  record Header(int width, int height, int upright) {}

  @Override
  public boolean equals(@org.jspecify.annotations.Nullable Object other) {
    return this == other
        || (other instanceof Picture p && hash == p.hash && Arrays.equals(bytes, p.bytes));
  }

  @Override
  public int hashCode() {
    return hash;
  }

  @Override
  public String toString() {
    return "Picture " + header.width() + " x " + header.height();
  }
}
