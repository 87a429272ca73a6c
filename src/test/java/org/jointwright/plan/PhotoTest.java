package org.jointwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.jointwright.picture.Picture;
import org.jointwright.picture.PictureException;
import org.jointwright.picture.Pictures;
import org.jointwright.plan.edit.History;
import org.jointwright.plan.edit.PhotoEdit;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** A photo laid, moved, turned and scaled. */
class PhotoTest {
  private static Photo photo() {
    try {
      return Photo.laid("a.png", Picture.of(Pictures.png(40, 20)), new Point(100, 50), 80);
    } catch (PictureException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void itCoversItsWidthAndTheHeightThatFollows() {
    assertThat(photo().box()).isEqualTo(new Box(60, 30, 140, 70));
  }

  @Test
  void turnedAQuarterItIsHighInsteadOfWide() {
    Box box = photo().withTurn(90).box();
    assertThat(box.width()).isCloseTo(40, within(1e-9));
    assertThat(box.height()).isCloseTo(80, within(1e-9));
    assertThat(box.centre().distance(new Point(100, 50))).isLessThan(1e-9);
  }

  @Test
  void scaledByTwoPlacesTheyAreAsFarApartAsWasTyped() {
    Point a = new Point(70, 40);
    Point b = new Point(110, 40);
    Photo scaled = photo().withTurn(30).scaled(a, b, 120);
    // What lay at b is three times as far from a as it was, in the same direction.
    Point before = photo().middle().minus(a);
    assertThat(scaled.middle().minus(a).distance(before.times(3))).isLessThan(1e-9);
    assertThat(scaled.width()).isCloseTo(240, within(1e-9));
    assertThat(scaled.turn()).isEqualTo(30);
  }

  @Test
  void oneplaceIsNoMeasure() {
    Point a = new Point(1, 1);
    assertThatThrownBy(() -> photo().scaled(a, a, 120))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> photo().scaled(a, new Point(2, 1), 0))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aCameraHeldUprightGivesAPhotoThatStands() throws PictureException {
    Picture lying = Picture.of(Pictures.held(Pictures.jpeg(40, 20), 6, true));
    Box box = Photo.laid("b.jpg", lying, new Point(0, 0), 80).box();
    assertThat(box.height()).isCloseTo(80, within(1e-9));
  }

  @Test
  void movingItIsOneStepAndTakingItOutAnother() {
    History laid = History.begun(Plan.EMPTY).done(PhotoEdit.of(photo()));
    History moved =
        laid.done(PhotoEdit.of(photo().movedBy(new Point(1, 0))))
            .continued(PhotoEdit.of(photo().movedBy(new Point(2, 0))));
    assertThat(moved.past()).hasSize(2);
    History out = moved.continued(new PhotoEdit(Optional.empty()));
    assertThat(out.now().photo()).isEmpty();
    assertThat(out.undone().now().photo()).contains(photo().movedBy(new Point(2, 0)));
    assertThat(out.undone().undone().now().photo()).contains(photo());
    assertThat(out.undone().undone().undone().now()).isEqualTo(Plan.EMPTY);
  }
}
