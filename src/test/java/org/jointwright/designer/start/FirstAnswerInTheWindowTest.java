package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.designer.state.Laid;
import org.jointwright.measure.Length;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** A T-shaped slab changed in the real window: a first layout at once, a better one at rest. */
@ExtendWith(NeedsWindow.class)
class FirstAnswerInTheWindowTest {
  private Rig rig;

  /** Every layout that the window showed, in order. */
  private final List<Laid> shown = new ArrayList<>();

  @BeforeEach
  void drawASlab() {
    rig =
        new Rig()
            .drawn(
                "40'",
                "14' turn left",
                "14' turn left",
                "20' turn right",
                "12' turn left",
                "20' turn left",
                "14' turn right");
    rig.act(
        () ->
            rig.designer()
                .board()
                .watch(
                    d -> {
                      Optional<Laid> laid = d.laying().laid();
                      if (laid.isPresent() && !shown.contains(laid.get())) {
                        shown.add(laid.get());
                      }
                    }));
    Rig.get(
        () -> {
          shown.clear();
          return true;
        });
  }

  @AfterEach
  void close() {
    rig.close();
  }

  private long lastWish() {
    return rig.desk().laying().wish().orElseThrow().generation();
  }

  @Test
  void aDraggedCornerIsFollowedByAFirstLayoutThenABetterOne() {
    Point corner = new Point(480, 0);
    rig.drag(corner, new Point(470, 0), new Point(455, 0), new Point(432, 0)).laid();
    List<Laid> last =
        Rig.get(() -> List.copyOf(shown)).stream()
            .filter(l -> l.generation() == lastWish())
            .toList();
    assertThat(last).extracting(Laid::isFirst).containsExactly(true, false);
    assertThat(rig.desk().laying().laid()).contains(last.getLast());
    assertThat(rig.plan().slabs().getFirst().joints())
        .isEqualTo(last.getLast().layout().plan().slabs().getFirst().joints());
  }

  @Test
  void aNewerWishEndsTheWorkOnAnOlder() {
    long before = lastWish();
    rig.act(
        () -> {
          for (int sixteenths = 65; sixteenths <= 80; sixteenths++) {
            Length t = Length.inches(sixteenths / 16.0);
            String id = rig.designer().board().desk().plan().slabs().getFirst().id();
            rig.designer().board().change(d -> d.edited(new SlabEdit.SetThickness(id, t)));
          }
        });
    rig.laid();
    assertThat(lastWish()).isEqualTo(before + 16);
    List<Laid> seen = Rig.get(() -> List.copyOf(shown));
    assertThat(seen.getLast().generation()).isEqualTo(lastWish());
    assertThat(seen)
        .filteredOn(l -> !l.isFirst())
        .as("of 16 wishes in one breath most are left off")
        .hasSizeLessThan(8);
  }
}
