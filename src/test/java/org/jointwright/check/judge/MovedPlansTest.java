package org.jointwright.check.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.jointwright.check.Judgement;
import org.jointwright.check.Moved;
import org.jointwright.check.Verified;
import org.jointwright.joint.Layouts;
import org.jointwright.shape.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A plan lies where its author began to draw: the rules must not care. */
class MovedPlansTest {
  private static final Verified BROKEN = new Verified("broken");
  private static final Moved FAR = Moved.turnedBy(0.4321, new Point(4567.8, -12345.6));

  static Stream<String> plans() {
    return BROKEN.expected().keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("plans")
  void aPlanMovedAndTurnedBreaksTheSameRules(String name) {
    Judgement judgement =
        Checks.judge(FAR.plan(BROKEN.asked(name)), Layouts.of(FAR.plan(BROKEN.plan(name))));
    assertThat(judgement.crashed()).isEmpty();
    assertThat(Verified.broken(judgement)).isEqualTo(BROKEN.expected().get(name));
  }
}
