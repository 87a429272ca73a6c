package org.jointwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.jointwright.app.PlanSchema;
import org.jointwright.picture.Picture;
import org.jointwright.picture.PictureException;
import org.jointwright.picture.Pictures;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Photo;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** The photo beneath, in and out of the file. */
class PhotoFileTest {
  private static final String PNG = Base64.getEncoder().encodeToString(Pictures.png(40, 30));

  private static PlanReading reading(String photo) {
    return PlanReader.read(
        "{\"format\": \"jointwright-plan\", \"version\": 1, \"slabs\": [], \"photo\": "
            + photo
            + "}");
  }

  private static Plan read(String photo) {
    return ((PlanReading.ReadPlan) reading(photo)).plan();
  }

  private static Remark refused(String photo) {
    List<Remark> problems = ((PlanReading.Refused) reading(photo)).problems();
    assertThat(problems).hasSize(1);
    return problems.getFirst();
  }

  private static String with(String middle, String width, String picture) {
    return "{\"middle\": " + middle + ", \"width\": " + width + ", \"picture\": " + picture + "}";
  }

  @Test
  void allThatIsSaidOfItIsRead() throws PictureException {
    Photo photo =
        read("{\"name\": \"yard.png\", \"middle\": [10, \"5 ft\"], \"width\": \"40 ft\","
                + " \"turn\": 12.5, \"opacity\": 0.25, \"picture\": [\""
                + PNG
                + "\"], \"by\": \"me\"}")
            .photo()
            .orElseThrow();
    assertThat(photo.name()).isEqualTo("yard.png");
    assertThat(photo.middle()).isEqualTo(new Point(120, 60));
    assertThat(photo.width()).isEqualTo(480);
    assertThat(photo.height()).isEqualTo(360);
    assertThat(photo.turn()).isEqualTo(12.5);
    assertThat(photo.opacity()).isEqualTo(0.25);
    assertThat(photo.picture()).isEqualTo(Picture.of(Pictures.png(40, 30)));
    assertThat(photo.kept().unknown()).containsEntry("by", "\"me\"");
  }

  @Test
  void whatIsNotSaidIsAsUsual() {
    Photo photo = read(with("[0, 0]", "1", "\"" + PNG + "\"")).photo().orElseThrow();
    assertThat(photo.name()).isEmpty();
    assertThat(photo.turn()).isZero();
    assertThat(photo.opacity()).isEqualTo(Photo.USUAL_OPACITY);
    assertThat(read("null").photo()).isEmpty();
  }

  @Test
  void whatIsWrittenIsReadBackAndWrittenTheSame() throws PictureException {
    // Noise does not pack, so that the picture takes several lines of the file.
    byte[] bytes = Arrays.copyOf(Pictures.jpeg(64, 48), 10_000);
    new Random(20261126).nextBytes(bytes);
    byte[] jpeg = Pictures.jpeg(64, 48);
    System.arraycopy(jpeg, 0, bytes, 0, jpeg.length);
    Photo photo =
        new Photo(
            "côté “rue”.jpg",
            Picture.of(bytes),
            new Point(1.0 / 3, -7.25),
            481.0 / 7,
            -33.3,
            0.5,
            Kept.NOTHING);
    String written = PlanWriter.write(Plan.EMPTY.withPhoto(Optional.of(photo)));
    Plan again = PlanRoundTripTest.read(written);
    assertThat(again.photo().orElseThrow())
        .usingRecursiveComparison()
        .ignoringFields("kept")
        .isEqualTo(photo);
    assertThat(PlanWriter.write(again)).isEqualTo(written);
    assertThat(
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(PlanSchema.text(), InputFormat.JSON)
                .validate(written, InputFormat.JSON))
        .isEmpty();
  }

  @Test
  void lengthsAndKeysOfOthersStayAsTheyWereTyped() {
    String text =
        PlanWriter.write(
            read(
                "{\"middle\": [\"10' 6\\\"\", 5], \"width\": \"40 ft 3 in\", \"picture\": \""
                    + PNG
                    + "\", \"by\": [1, 2]}"));
    assertThat(text).contains("10' 6\\\"", "\"40 ft 3 in\"", "\"by\"");
    assertThat(PlanWriter.write(PlanRoundTripTest.read(text))).isEqualTo(text);
  }

  @Test
  void whatIsWrongIsToldWithItsPlace() {
    String png = "\"" + PNG + "\"";
    assertThat(refused(with("[0, 0]", "40", "[]")).key()).isEqualTo("file.photoNoPicture");
    assertThat(refused(with("[0, 0]", "40", "\"%%\"")).key()).isEqualTo("file.photoNoBase64");
    assertThat(refused(with("[0, 0]", "40", "[\"AAAA\", 7]")).key())
        .isEqualTo("file.photoNoBase64");
    assertThat(refused(with("[0, 0]", "40", "7")).key()).isEqualTo("file.photoNoBase64");
    Remark cut = refused(with("[0, 0]", "40", "\"" + PNG.substring(0, 60) + "\""));
    assertThat(cut.key()).isEqualTo("file.photoBroken");
    assertThat(cut.place()).isEqualTo("photo.picture");
    assertThat(refused(with("[0]", "40", png)).place()).isEqualTo("photo.middle");
    assertThat(refused(with("[0, 0]", "\"0.99 in\"", png)).key())
        .isEqualTo("file.photoOutOfBounds");
    assertThat(read(with("[0, 0]", "\"1 in\"", png)).photo()).isPresent();
    assertThat(read(with("[0, 0]", "\"5280 ft\"", png)).photo()).isPresent();
    assertThat(refused(with("[0, 0]", "\"5281 ft\"", png)).place()).isEqualTo("photo.width");
    assertThat(refused("{\"width\": 40, \"picture\": " + png + "}").key())
        .isEqualTo("file.missing");
    assertThat(refused("{\"middle\": [0, 0], \"picture\": " + png + "}").key())
        .isEqualTo("file.missing");
    assertThat(refused("{\"middle\": [0, 0], \"width\": 40}").key()).isEqualTo("file.missing");
    assertThat(refused("[1]").key()).isEqualTo("file.notAnObject");
  }
}
