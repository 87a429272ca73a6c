package org.jointwright.designer.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.app.Answer;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Laid;
import org.jointwright.designer.state.Pick;
import org.jointwright.measure.Area;
import org.jointwright.measure.Length;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

/** The window says as much concrete as the paper does. */
class AreaFactsTest {
  private static final Words WORDS = Words.english(UnitSystem.FEET_INCHES);

  private static Plan plan() {
    Outline outline =
        Outline.of(
            List.of(new Point(0, 0), new Point(240, 0), new Point(240, 240), new Point(0, 240)));
    FixedShape shape = new FixedShape.Round(new Point(120, 120), Length.inches(12), Kept.NOTHING);
    return Plan.EMPTY
        .withSlabs(List.of(Slab.of("pad", outline)))
        .withFixed(List.of(new FixedObject("post", "pad", FixedKind.POST, shape, Kept.NOTHING)));
  }

  private static String shown(Desk desk, String row) {
    return FactsOf.desk(desk, WORDS).rows().stream()
        .filter(r -> r instanceof Row.Shown s && s.id().equals(row))
        .map(r -> ((Row.Shown) r).value())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void boxOutsAreLeftOutOfTheAreaOnceTheyAreLaid() {
    Desk bare = Desk.begun(plan()).picking(new Pick.WholeSlab("pad"));
    assertThat(shown(bare, "slab-area")).isEqualTo(WORDS.print(new Area(240 * 240)));
    Answer answer = Answer.laid(plan());
    long generation = bare.laying().wish().orElseThrow().generation();
    Desk laid =
        bare.answered(new Laid(generation, answer.asked(), answer.layout(), answer.judgement()));
    double out =
        answer.plan().slabs().getFirst().boxOuts().stream()
            .mapToDouble(b -> b.outline().ring().area())
            .sum();
    assertThat(out).isGreaterThan(144);
    String less = WORDS.print(new Area(240 * 240 - out));
    assertThat(shown(laid, "slab-area")).isEqualTo(less);
    assertThat(shown(laid.picking(Pick.NOTHING), "job-area")).isEqualTo(less);
    assertThat(WORDS.print(answer.layout().slabs().getFirst().concrete())).isEqualTo(less);
  }
}
