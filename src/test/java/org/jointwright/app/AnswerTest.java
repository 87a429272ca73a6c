package org.jointwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.jointwright.measure.Length;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

class AnswerTest {
  private static Plan pad(double wide) {
    return Plan.EMPTY.withSlabs(
        List.of(
            Slab.of(
                "pad",
                Outline.of(
                    List.of(
                        new Point(0, 0),
                        new Point(wide, 0),
                        new Point(wide, 204),
                        new Point(0, 204))))));
  }

  private static Plan withPost(Plan plan) {
    FixedShape post = new FixedShape.Round(new Point(70, 90), Length.inches(8), Kept.NOTHING);
    return plan.withFixed(
        List.of(new FixedObject("post", "pad", FixedKind.POST, post, Kept.NOTHING)));
  }

  @Test
  void theFirstAnswerFollowsThePatternThatWasThere() {
    Answer before = Answer.laid(pad(156));
    Answer first = Answer.first(pad(160), Optional.of(before.layout()), () -> true).orElseThrow();
    assertThat(first.layout().slabs().getFirst().panels())
        .hasSameSizeAs(before.layout().slabs().getFirst().panels());
    assertThat(first.asked()).isEqualTo(pad(160));
  }

  @Test
  void withoutAPatternItIsFoundQuicklyButNotRoundFixedObjects() {
    assertThat(Answer.first(pad(156), Optional.empty(), () -> true)).isPresent();
    assertThat(Answer.first(withPost(pad(156)), Optional.empty(), () -> true)).isEmpty();
    assertThat(Answer.laid(withPost(pad(156)), Optional.empty(), () -> true)).isPresent();
  }

  @Test
  void nothingComesOfItOnceItIsToldToStop() {
    Answer before = Answer.laid(pad(156));
    assertThat(Answer.first(pad(156), Optional.empty(), () -> false)).isEmpty();
    assertThat(Answer.first(pad(160), Optional.of(before.layout()), () -> false)).isEmpty();
    assertThat(Answer.laid(pad(160), Optional.of(before.layout()), () -> false)).isEmpty();
    assertThat(Answer.laid(pad(156), Optional.empty(), () -> true)).contains(before);
  }
}
