package org.jointwright.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;

/** Small pictures for tests: the left half red, the right half blue, white along the top. */
public final class Pictures {
  private Pictures() {}

  /** A PNG of so many pixels. */
  public static byte[] png(int width, int height) {
    return written("png", width, height);
  }

  /** A JPEG of so many pixels. */
  public static byte[] jpeg(int width, int height) {
    return written("jpg", width, height);
  }

  private static byte[] written(String format, int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(Color.RED);
    pen.fillRect(0, 0, width, height);
    pen.setColor(Color.BLUE);
    pen.fillRect(width / 2, 0, width, height);
    pen.setColor(Color.WHITE);
    pen.fillRect(0, 0, width, height / 4);
    pen.dispose();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, format, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /** The JPEG with a word about how its camera was held, as Exif has it. */
  public static byte[] held(byte[] jpeg, int orientation, boolean littleEndian) {
    ByteArrayOutputStream tiff = new ByteArrayOutputStream();
    tiff.writeBytes((littleEndian ? "II" : "MM").getBytes(StandardCharsets.US_ASCII));
    number(tiff, 42, 2, littleEndian);
    number(tiff, 8, 4, littleEndian);
    number(tiff, 1, 2, littleEndian);
    number(tiff, 274, 2, littleEndian);
    number(tiff, 3, 2, littleEndian);
    number(tiff, 1, 4, littleEndian);
    number(tiff, orientation, 2, littleEndian);
    number(tiff, 0, 2, littleEndian);
    number(tiff, 0, 4, littleEndian);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(jpeg, 0, 2);
    out.writeBytes(new byte[] {(byte) 0xFF, (byte) 0xE1});
    number(out, tiff.size() + 8, 2, false);
    out.writeBytes("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
    out.writeBytes(tiff.toByteArray());
    out.write(jpeg, 2, jpeg.length - 2);
    return out.toByteArray();
  }

  private static void number(
      ByteArrayOutputStream out, int value, int bytes, boolean littleEndian) {
    for (int i = 0; i < bytes; i++) {
      out.write(value >> 8 * (littleEndian ? i : bytes - 1 - i));
    }
  }
}
