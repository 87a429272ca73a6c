package org.jointwright.picture;

import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * Reads the header of a JPEG and sees whether it is whole. Sources: ITU-T T.81 (1992), annex B:
 * segments of marker and length, the frame's size in SOF, the end in EOI; for how it stands, Exif
 * 2.32, tag 274, Orientation. Both from memory.
 */
final class Jpeg {
  private static final int START = 0xD8;
  private static final int END = 0xD9;
  private static final int SCAN = 0xDA;
  private static final int EXIF = 0xE1;
  private static final int ORIENTATION = 274;

  private final ByteBuffer in;
  private int width;
  private int height;
  private int upright;

  private Jpeg(byte[] bytes) {
    in = ByteBuffer.wrap(bytes);
  }

  static Picture.Header header(byte[] bytes) throws PictureException {
    if (bytes.length < 4 || (bytes[1] & 0xFF) != START || (bytes[2] & 0xFF) != 0xFF) {
      throw new PictureException(PictureException.Why.NO_PICTURE);
    }
    Jpeg jpeg = new Jpeg(bytes);
    try {
      jpeg.segments();
    } catch (BufferUnderflowException | IllegalArgumentException | IndexOutOfBoundsException e) {
      throw new PictureException(PictureException.Why.BROKEN);
    }
    if (!jpeg.ends()) {
      throw new PictureException(PictureException.Why.BROKEN);
    }
    return new Picture.Header(jpeg.width, jpeg.height, jpeg.upright);
  }

  /** From the first segment to the first scan. */
  private void segments() {
    in.position(2);
    int marker = marker();
    while (marker != SCAN) {
      int at = in.position();
      int length = in.getShort() & 0xFFFF;
      if (length < 2) {
        throw new IllegalArgumentException("no length");
      }
      if (isFrame(marker)) {
        height = in.getShort(at + 3) & 0xFFFF;
        width = in.getShort(at + 5) & 0xFFFF;
      } else if (marker == EXIF && length > 16) {
        upright = exif(in.slice(at + 2, length - 2));
      }
      in.position(at + length);
      marker = marker();
    }
  }

  private int marker() {
    int b = in.get() & 0xFF;
    if (b != 0xFF) {
      throw new IllegalArgumentException("no marker");
    }
    while (b == 0xFF) {
      b = in.get() & 0xFF;
    }
    return b;
  }

  /** SOF0 to SOF15, without the tables that stand among them. */
  private static boolean isFrame(int marker) {
    return marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
  }

  /** Whether the end is marked; some cameras write more behind it. */
  private boolean ends() {
    for (int i = in.limit() - 2; i >= in.position(); i--) {
      if ((in.get(i) & 0xFF) == 0xFF && (in.get(i + 1) & 0xFF) == END) {
        return true;
      }
    }
    return false;
  }

  /** What is odd in it costs the turn only: the picture is shown as it is stored. */
  private static int exif(ByteBuffer data) {
    try {
      if (data.getInt(0) != 0x45786966) {
        return 0;
      }
      ByteBuffer tiff = data.slice(6, data.limit() - 6);
      tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
      int at = tiff.getInt(4);
      int count = tiff.getShort(at) & 0xFFFF;
      for (int i = 0; i < count; i++) {
        int entry = at + 2 + 12 * i;
        if ((tiff.getShort(entry) & 0xFFFF) == ORIENTATION) {
          return degrees(tiff.getShort(entry + 8));
        }
      }
      return 0;
    } catch (IndexOutOfBoundsException e) {
      return 0;
    }
  }

  private static int degrees(int orientation) {
    return switch (orientation) {
      case 3 -> 180;
      case 6 -> -90;
      case 8 -> 90;
      default -> 0;
    };
  }
}
