package org.jointwright.designer.start;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javafx.scene.image.Image;
import javafx.scene.image.PixelReader;

/**
 * An image as a PNG file (W3C Portable Network Graphics, second edition): 8 bits of red, green and
 * blue, no filter. Written here because the JDK's own writer would bring a second window toolkit.
 */
final class Png {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10};

  private Png() {}

  static byte[] bytes(Image image) throws IOException {
    int width = (int) image.getWidth();
    int height = (int) image.getHeight();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(SIGNATURE);
    ByteArrayOutputStream head = new ByteArrayOutputStream();
    DataOutputStream data = new DataOutputStream(head);
    data.writeInt(width);
    data.writeInt(height);
    data.write(new byte[] {8, 2, 0, 0, 0});
    chunk(out, "IHDR", head.toByteArray());
    chunk(out, "IDAT", pixels(image, width, height));
    chunk(out, "IEND", new byte[0]);
    return out.toByteArray();
  }

  private static byte[] pixels(Image image, int width, int height) throws IOException {
    PixelReader reader = image.getPixelReader();
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (DeflaterOutputStream out = new DeflaterOutputStream(packed)) {
      byte[] row = new byte[1 + 3 * width];
      for (int y = 0; y < height; y++) {
        for (int x = 0; x < width; x++) {
          int argb = reader.getArgb(x, y);
          row[1 + 3 * x] = (byte) (argb >> 16);
          row[2 + 3 * x] = (byte) (argb >> 8);
          row[3 + 3 * x] = (byte) argb;
        }
        out.write(row);
      }
    }
    return packed.toByteArray();
  }

  private static void chunk(OutputStream out, String name, byte[] content) throws IOException {
    byte[] type = name.getBytes(StandardCharsets.US_ASCII);
    CRC32 check = new CRC32();
    check.update(type);
    check.update(content);
    DataOutputStream data = new DataOutputStream(out);
    data.writeInt(content.length);
    data.write(type);
    data.write(content);
    data.writeInt((int) check.getValue());
    data.flush();
  }
}
