package org.jointwright.app;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jointwright.picture.Picture;
import org.jointwright.picture.PictureException;

/** Opens pictures. */
public final class PictureFiles {
  private PictureFiles() {}

  /**
   * The picture in a file.
   *
   * @throws IOException when the file cannot be read
   * @throws PictureException when it holds no picture for a plan
   */
  public static Picture open(Path file) throws IOException, PictureException {
    try (InputStream in = Files.newInputStream(file)) {
      // One byte more than the most tells that there is more, however large the file.
      return Picture.of(in.readNBytes(Picture.MOST_BYTES + 1));
    }
  }
}
