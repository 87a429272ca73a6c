package org.jointwright.check.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jointwright.check.Finding;
import org.jointwright.check.Judgement;
import org.jointwright.check.Verified;
import org.jointwright.joint.Layouts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** An independent verifier and the checks name the same broken rules; see the folders' README. */
class AgainstTheVerifierTest {
  private static final Verified BROKEN = new Verified("broken");
  private static final Verified LAID = new Verified("laid");

  static Stream<String> brokenPlans() {
    return BROKEN.expected().keySet().stream();
  }

  static Stream<String> laidPlans() {
    return LAID.expected().keySet().stream();
  }

  private static Judgement judge(Verified folder, String name) {
    return Checks.judge(folder.asked(name), Layouts.of(folder.plan(name)));
  }

  @ParameterizedTest
  @MethodSource("brokenPlans")
  void theSameRulesAreBrokenOnTheSameSlabs(String name) {
    Judgement judgement = judge(BROKEN, name);
    assertThat(judgement.crashed()).isEmpty();
    assertThat(Verified.broken(judgement)).isEqualTo(BROKEN.expected().get(name));
  }

  @ParameterizedTest
  @MethodSource("laidPlans")
  void soundLayoutsAreClean(String name) {
    Judgement judgement = judge(LAID, name);
    assertThat(judgement.crashed()).isEmpty();
    assertThat(Verified.broken(judgement)).isEqualTo(LAID.expected().get(name));
  }

  @Test
  void teesAndYsAreTheSame() {
    for (List<String> row : LAID.rows("tees.csv")) {
      List<Finding> found =
          judge(LAID, row.get(0)).findings().stream().filter(f -> f.rule().equals("S1")).toList();
      assertThat(found.stream().filter(f -> f.key().equals("check.s1.tee")))
          .as("tees of " + row.get(0))
          .hasSize(Integer.parseInt(row.get(1)));
      assertThat(found.stream().filter(f -> f.key().equals("check.s1.y")))
          .as("Ys of " + row.get(0))
          .hasSize(Integer.parseInt(row.get(2)));
    }
  }

  @Test
  void theBrokenPlansBreakEveryRule() {
    assertThat(BROKEN.expected().values().stream().flatMap(Set::stream))
        .extracting(s -> s.substring(s.indexOf(' ') + 1))
        .contains("M1", "M2", "M3", "M4", "M5", "M6", "M7", "M8", "M9");
    assertThat(BROKEN.expected()).hasSizeGreaterThan(40);
  }
}
