package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import org.jointwright.designer.state.Notice;
import org.jointwright.designer.state.Pick;
import org.jointwright.picture.Pictures;
import org.jointwright.plan.Photo;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A photo beneath the plan, by mouse and keys in the real window. */
@ExtendWith(NeedsWindow.class)
class PhotoInTheWindowTest {
  private static final Point MIDDLE = new Point(144, 96);

  @TempDir private Path folder;
  private Rig rig;

  @BeforeEach
  void open() {
    rig = new Rig();
  }

  @AfterEach
  void close() {
    rig.close();
  }

  private Path file(String name, byte[] bytes) throws IOException {
    return Files.write(folder.resolve(name), bytes);
  }

  private void drop(Path file) {
    rig.act(() -> rig.designer().job().dropped(file, Optional.of(MIDDLE)));
  }

  private Photo dropped() throws IOException {
    drop(file("yard.png", Pictures.png(400, 200)));
    rig.until(() -> rig.designer().board().desk().plan().photo().isPresent());
    return photo();
  }

  private Photo photo() {
    return rig.plan().photo().orElseThrow();
  }

  private Color seen(Point plan) {
    return Rig.get(
        () -> {
          rig.designer().pane().plan().paint();
          Point at = rig.designer().board().desk().viewport().toPaper(plan);
          var paper = rig.designer().pane().plan();
          WritableImage picture = paper.snapshot(null, null);
          return picture.getPixelReader().getColor((int) at.x(), (int) at.y());
        });
  }

  @Test
  void aPhotoThatIsDroppedLiesWhereItFellAndIsSeen() throws IOException {
    Photo photo = dropped();
    assertThat(photo.middle()).isEqualTo(MIDDLE);
    assertThat(photo.name()).isEqualTo("yard.png");
    assertThat(rig.desk().picked()).isEqualTo(new Pick.AtPhoto());
    assertThat(rig.title()).contains("not saved");
    // At its usual strength over the paper, red on the left and blue on the right of its lower
    // part.
    Color left = seen(MIDDLE.plus(new Point(-photo.width() / 4, -photo.height() / 8)));
    Color right = seen(MIDDLE.plus(new Point(photo.width() / 4, -photo.height() / 8)));
    assertThat(left.getRed() - left.getBlue()).isGreaterThan(0.4);
    assertThat(right.getBlue() - right.getRed()).isGreaterThan(0.4);
    rig.fill("photo-opacity", "0");
    assertThat(seen(MIDDLE.plus(new Point(-photo.width() / 4, 0))).getBlue()).isGreaterThan(0.9);
  }

  @Test
  void turnedAQuarterItsTopLiesToTheLeft() throws IOException {
    Photo photo = dropped();
    rig.fill("photo-turn", "90");
    assertThat(photo().turn()).isEqualTo(90);
    // White is along its top, which a quarter counter-clockwise brings to the left.
    Color left = seen(MIDDLE.plus(new Point(-photo.height() * 0.45, photo.width() / 4)));
    assertThat(Math.min(left.getRed(), left.getBlue())).isGreaterThan(0.9);
  }

  @Test
  void itIsDraggedAndPutDownByAClickAndAllOfItUndoes() throws IOException {
    Photo before = dropped();
    Point from = MIDDLE.plus(new Point(10, 10));
    rig.drag(from, from.plus(new Point(20, 5)), from.plus(new Point(36, -24)));
    assertThat(photo().middle().distance(MIDDLE.plus(new Point(36, -24)))).isLessThan(1.5);
    rig.click(MIDDLE);
    assertThat(rig.desk().picked()).isEqualTo(Pick.NOTHING);
    rig.key(KeyCode.CONTROL, KeyCode.Z);
    assertThat(photo()).isEqualTo(before);
    rig.key(KeyCode.CONTROL, KeyCode.Z);
    assertThat(rig.plan().photo()).isEmpty();
    rig.key(KeyCode.CONTROL, KeyCode.Y);
    assertThat(photo()).isEqualTo(before);
  }

  @Test
  void twoPlacesAndATypedDistanceSetItsScale() throws IOException {
    Photo before = dropped();
    Point a = MIDDLE.plus(new Point(-60, 0));
    Point b = MIDDLE.plus(new Point(60, 0));
    rig.clickOn("deed-photo-scale").click(a).click(b);
    Point clicked = ((Pick.Scaling) rig.desk().picked()).from().orElseThrow();
    assertThat(clicked.distance(a)).isLessThan(1);
    double apart = clicked.distance(((Pick.Scaling) rig.desk().picked()).to().orElseThrow());
    rig.click(new Point(before.ring().box().maxX() + 8, before.middle().y()));
    assertThat(((Pick.Scaling) rig.desk().picked()).to()).as("beside the photo").isPresent();
    rig.type("20'").key(KeyCode.ENTER);
    assertThat(photo().width()).isCloseTo(before.width() * 240 / apart, within(1e-6));
    Point held = photo().middle().minus(clicked);
    Point was = before.middle().minus(clicked);
    assertThat(held.distance(was.times(240 / apart))).as("the first place stays").isLessThan(1e-6);
    assertThat(rig.desk().picked()).as("ready to draw").isEqualTo(Pick.NOTHING);
    rig.key(KeyCode.CONTROL, KeyCode.Z);
    assertThat(photo()).isEqualTo(before);
  }

  @Test
  void theSamePlaceTwiceIsNoScaleAndSaysSo() throws IOException {
    Photo before = dropped();
    rig.clickOn("deed-photo-scale").click(MIDDLE).click(MIDDLE);
    assertThat(rig.has("row-photo-distance")).isFalse();
    rig.key(KeyCode.ESCAPE);
    assertThat(photo()).isEqualTo(before);
  }

  @Test
  void whatCannotLieBeneathIsRefusedInWords() throws IOException {
    drop(file("notes.jpg", "no picture at all".getBytes(java.nio.charset.StandardCharsets.UTF_8)));
    assertThat(refusal()).contains("neither a PNG nor a JPEG");
    drop(file("cut.png", Arrays.copyOf(Pictures.png(400, 200), 100)));
    assertThat(refusal()).contains("cut off");
    drop(file("huge.jpg", Arrays.copyOf(Pictures.jpeg(40, 20), 9 * 1024 * 1024)));
    assertThat(refusal()).contains("8 MB");
    drop(folder.resolve("gone.png"));
    assertThat(refusal()).contains("could not be read");
    assertThat(rig.plan().photo()).isEmpty();
    assertThat(rig.desk().isKept()).isTrue();
  }

  private String refusal() {
    rig.until(() -> rig.designer().board().desk().notice().isPresent());
    Notice notice = rig.desk().notice().orElseThrow();
    assertThat(notice.isTrouble()).isTrue();
    rig.clickOn("notice-putAway");
    return notice.lines().getFirst();
  }

  @Test
  void itIsChosenByTheMenuKeptInTheFileAndThereAgain() throws IOException {
    rig.nextPlace(file("porch.jpg", Pictures.jpeg(200, 100)));
    rig.clickOn("deed-photo").until(() -> rig.designer().board().desk().plan().photo().isPresent());
    Photo laid = photo();
    Path plan = folder.resolve("mine.jointwright.json");
    rig.nextPlace(plan);
    rig.key(KeyCode.CONTROL, KeyCode.S)
        .until(() -> rig.designer().board().desk().papers().isKept());
    rig.key(KeyCode.CONTROL, KeyCode.N);
    assertThat(rig.plan().photo()).isEmpty();
    rig.act(() -> rig.designer().job().dropped(plan, Optional.empty()));
    rig.until(() -> rig.designer().board().desk().plan().photo().isPresent());
    assertThat(photo().picture()).isEqualTo(laid.picture());
    assertThat(photo().middle()).isEqualTo(laid.middle());
    assertThat(photo().width()).isEqualTo(laid.width());
  }

  @Test
  void aPlanIsDrawnOverIt() throws IOException {
    dropped();
    rig.click(MIDDLE).type("20'").key(KeyCode.ENTER).drawn("12' turn left", "20' turn left");
    assertThat(rig.plan().slabs()).hasSize(1);
    assertThat(rig.plan().photo()).isPresent();
    rig.clickOn("step-outline").act(() -> rig.designer().job().photo());
    rig.clickOn("deed-take-out");
    assertThat(rig.plan().photo()).isEmpty();
    assertThat(rig.plan().slabs()).hasSize(1);
  }
}
