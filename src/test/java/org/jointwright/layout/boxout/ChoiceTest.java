package org.jointwright.layout.boxout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Outline;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

class ChoiceTest {
  private static BoxOut box(String object, double size) {
    return new BoxOut(
        object,
        Outline.of(List.of(new Point(0, 0), new Point(size, 0), new Point(0, size))),
        Kept.NOTHING);
  }

  private static final List<BoxOut> A = List.of(box("a", 10), box("a", 11), box("a", 12));
  private static final List<BoxOut> B = List.of(box("b", 10), box("b", 11));

  private static List<Around> each(List<BoxOut> boxes) {
    return boxes.stream().map(Around::one).toList();
  }

  @Test
  void ofTwoAsGoodTheSmallerIsMade() {
    assertThat(new Choice(List.of(each(A.reversed())), 8).best(b -> 100))
        .containsExactly(A.getFirst());
  }

  @Test
  void oneObjectAtATimeIsTriedToo() {
    List<BoxOut> wanted = List.of(A.get(2), B.get(0));
    assertThat(new Choice(List.of(each(A), each(B)), 8).best(b -> b.equals(wanted) ? 1 : 100))
        .isEqualTo(wanted);
  }

  @Test
  void noMoreLayoutsAreTriedThanAllowedAndNoneTwice() {
    List<List<BoxOut>> seen = new ArrayList<>();
    new Choice(List.of(each(A), each(B)), 4)
        .best(
            b -> {
              seen.add(b);
              return 100 - seen.size();
            });
    assertThat(seen).hasSize(4).doesNotHaveDuplicates();
  }

  @Test
  void withoutAChoiceNothingIsTried() {
    assertThat(
            new Choice(List.of(each(List.of(A.getFirst()))), 8)
                .best(
                    b -> {
                      throw new AssertionError("tried " + b);
                    }))
        .containsExactly(A.getFirst());
  }

  @Test
  void objectsThatStandTogetherAreChosenTogetherAndTheirSharedBoxOutCountsOnce() {
    BoxOut a = box("a", 10);
    Around shared = new Around(List.of(a, new BoxOut("b", a.outline(), Kept.NOTHING)));
    // Two of nine are longer than one of ten.
    Around apart = new Around(List.of(box("a", 9), box("b", 8)));
    assertThat(new Choice(List.of(List.of(apart, shared)), 8).best(b -> 100))
        .isEqualTo(shared.boxes());
  }
}
