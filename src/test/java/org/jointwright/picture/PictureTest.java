package org.jointwright.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pictures by what they say of themselves. */
class PictureTest {
  private static PictureException.Why why(byte[] bytes) {
    return catchThrowableOfType(PictureException.class, () -> Picture.of(bytes)).why();
  }

  @Test
  void aPngSaysItsSize() throws PictureException {
    Picture picture = Picture.of(Pictures.png(40, 30));
    assertThat(picture.width()).isEqualTo(40);
    assertThat(picture.height()).isEqualTo(30);
    assertThat(picture.upright()).isZero();
  }

  @Test
  void aJpegSaysItsSize() throws PictureException {
    Picture picture = Picture.of(Pictures.jpeg(64, 48));
    assertThat(picture.width()).isEqualTo(64);
    assertThat(picture.height()).isEqualTo(48);
    assertThat(picture.upright()).isZero();
  }

  @ParameterizedTest
  @CsvSource({"1,0", "3,180", "6,-90", "8,90", "0,0", "99,0"})
  void aCameraHeldUprightIsHeeded(int orientation, int degrees) throws PictureException {
    byte[] jpeg = Pictures.jpeg(64, 48);
    assertThat(Picture.of(Pictures.held(jpeg, orientation, true)).upright()).isEqualTo(degrees);
    assertThat(Picture.of(Pictures.held(jpeg, orientation, false)).upright()).isEqualTo(degrees);
  }

  @Test
  void theBytesStayAsTheyAre() throws PictureException {
    byte[] bytes = Pictures.png(5, 5);
    Picture picture = Picture.of(bytes);
    byte[] before = bytes.clone();
    bytes[20] ^= 1;
    picture.bytes()[21] ^= 1;
    assertThat(picture.bytes()).isEqualTo(before);
    assertThat(picture).isEqualTo(Picture.of(before)).isNotEqualTo(Picture.of(Pictures.png(5, 6)));
  }

  @Test
  void whatIsNoPictureIsRefused() {
    assertThat(why(new byte[0])).isEqualTo(PictureException.Why.NO_PICTURE);
    assertThat(why(new byte[] {(byte) 0xFF})).isEqualTo(PictureException.Why.NO_PICTURE);
    assertThat(why("GIF89a, says the file".getBytes(StandardCharsets.US_ASCII)))
        .isEqualTo(PictureException.Why.NO_PICTURE);
  }

  @Test
  void whatIsCutOffAnywhereIsRefused() {
    for (byte[] whole : new byte[][] {Pictures.png(30, 20), Pictures.jpeg(30, 20)}) {
      for (int length = 0; length < whole.length; length++) {
        PictureException.Why why = why(Arrays.copyOf(whole, length));
        assertThat(why)
            .as("%d bytes", length)
            .isIn(PictureException.Why.NO_PICTURE, PictureException.Why.BROKEN);
      }
    }
  }

  @Test
  void whateverIsSpoiltItIsAPictureOrRefused() {
    long seed = 20261126;
    SplittableRandom random = new SplittableRandom(seed);
    for (byte[] whole :
        new byte[][] {Pictures.png(9, 7), Pictures.held(Pictures.jpeg(9, 7), 6, true)}) {
      for (int i = 0; i < 5_000; i++) {
        byte[] spoilt = whole.clone();
        for (int k = 0; k <= random.nextInt(3); k++) {
          spoilt[random.nextInt(Math.min(120, spoilt.length))] = (byte) random.nextInt();
        }
        try {
          Picture picture = Picture.of(spoilt);
          assertThat((long) picture.width() * picture.height())
              .as("seed %d, try %d", seed, i)
              .isBetween(1L, Picture.MOST_PIXELS);
        } catch (PictureException e) {
          assertThat(e.why()).isNotNull();
        }
      }
    }
  }

  @Test
  void aPictureOfTooMuchIsRefused() {
    byte[] png = Pictures.png(10, 10);
    byte[] wide = png.clone();
    // 10,000 by 10,000 pixels just pass; one column more does not.
    size(wide, 10_000, 10_000);
    assertThat(catchThrowableOfType(PictureException.class, () -> Picture.of(wide))).isNull();
    size(wide, 10_001, 10_000);
    assertThat(why(wide)).isEqualTo(PictureException.Why.TOO_MANY_PIXELS);
    assertThat(why(Arrays.copyOf(png, Picture.MOST_BYTES + 1)))
        .isEqualTo(PictureException.Why.TOO_BIG);
  }

  @Test
  void aPictureOfJustTheMostBytesPasses() throws PictureException {
    byte[] jpeg = Pictures.jpeg(10, 10);
    assertThat(Picture.of(Arrays.copyOf(jpeg, Picture.MOST_BYTES)).width()).isEqualTo(10);
  }

  private static void size(byte[] png, int width, int height) {
    java.nio.ByteBuffer.wrap(png).putInt(16, width).putInt(20, height);
  }
}
