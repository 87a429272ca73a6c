package org.jointwright.picture;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/**
 * Reads the header of a PNG and sees whether it is whole. Source: Portable Network Graphics (PNG)
 * Specification, second edition (ISO/IEC 15948:2004), 5.2 and 5.3: signature, and chunks of length,
 * type, data and checksum from IHDR to IEND. From memory.
 */
final class Png {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};

  /** Length, type and checksum of a chunk. */
  private static final int FRAME = 12;

  private Png() {}

  static Picture.Header header(byte[] bytes) throws PictureException {
    ByteBuffer in = ByteBuffer.wrap(bytes);
    for (byte b : SIGNATURE) {
      if (!in.hasRemaining() || in.get() != b) {
        throw new PictureException(PictureException.Why.NO_PICTURE);
      }
    }
    Picture.Header header = null;
    while (in.remaining() >= FRAME) {
      int length = in.getInt();
      byte[] type = new byte[4];
      in.get(type);
      String name = new String(type, StandardCharsets.ISO_8859_1);
      if (length < 0 || length > in.remaining() - 4) {
        break;
      }
      if (header == null) {
        if (!name.equals("IHDR") || length < 8) {
          break;
        }
        header = new Picture.Header(in.getInt(in.position()), in.getInt(in.position() + 4), 0);
      }
      if (name.equals("IEND")) {
        return header;
      }
      in.position(in.position() + length + 4);
    }
    throw new PictureException(PictureException.Why.BROKEN);
  }
}
