package org.jointwright.check.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.check.Check;
import org.jointwright.check.Finding;
import org.jointwright.check.Judgement;
import org.jointwright.check.Severity;
import org.jointwright.check.Sketch;
import org.jointwright.check.evidence.Judged;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.plan.Plan;
import org.jointwright.practice.Cited;
import org.junit.jupiter.api.Test;

class ChecksTest {
  private static final Plan LONG = Sketch.rectangle(200, 100).plan();

  private static final Check THROWS =
      new Check() {
        @Override
        public String rule() {
          return "X1";
        }

        @Override
        public Severity severity() {
          return Severity.MUST;
        }

        @Override
        public List<Cited> sources() {
          return List.of(Cited.plan());
        }

        @Override
        public List<Finding> findings(Judged slab) {
          throw new IllegalStateException("this rule is broken");
        }
      };

  @Test
  void aCheckThatThrowsIsReportedAndTheOthersStillJudge() {
    List<Check> checks = new ArrayList<>(List.of(THROWS));
    checks.addAll(Checks.ALL);
    Judgement judgement = Checks.judge(LONG, Layouts.of(LONG), checks);
    assertThat(judgement.crashed())
        .singleElement()
        .satisfies(
            c -> {
              assertThat(c.rule()).isEqualTo("X1");
              assertThat(c.slab()).isEqualTo("slab");
              assertThat(c.fault()).hasMessage("this rule is broken");
            });
    assertThat(judgement.findings()).isEqualTo(Checks.judge(Layouts.of(LONG)).findings());
    assertThat(judgement.findings()).isNotEmpty();
  }

  @Test
  void aJudgementWithACrashIsNeitherCompleteNorClean() {
    Plan small = Sketch.rectangle(100, 100).plan();
    Judgement judgement = Checks.judge(small, Layouts.of(small), List.of(THROWS));
    assertThat(judgement.isComplete()).isFalse();
    assertThat(judgement.isClean()).isFalse();
    assertThat(Checks.judge(Layouts.of(small)).isClean()).isTrue();
  }

  @Test
  void theSameLayoutGivesTheSameFindingsInTheSameOrder() {
    Layout layout = Layouts.of(LONG);
    assertThat(Checks.judge(layout)).isEqualTo(Checks.judge(layout));
  }

  @Test
  void aPlanWithoutSlabsHasNothingToFind() {
    assertThat(Checks.judge(Layouts.of(Plan.EMPTY)).isClean()).isTrue();
  }

  @Test
  void aJudgementThatIsToldToStopIsNone() {
    Layout layout = Layouts.of(LONG);
    assertThat(Checks.judge(LONG, layout, () -> false)).isEmpty();
    assertThat(Checks.judge(LONG, layout, () -> true)).contains(Checks.judge(layout));
    int[] asked = {0};
    assertThat(Checks.judge(LONG, layout, () -> ++asked[0] < 4)).isEmpty();
    assertThat(asked[0]).isEqualTo(4);
  }

  @Test
  void oneSlabIsJudgedAsInItsLayout() {
    Layout layout = Layouts.of(LONG);
    assertThat(Checks.judge(new Judged(LONG, layout, layout.slabs().getFirst())))
        .isEqualTo(Checks.judge(layout));
  }
}
