package org.jointwright.designer.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.designer.sketch.Sentence;
import org.jointwright.designer.sketch.Vocabulary;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Drafting;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.measure.LengthUnit;
import org.jointwright.measure.UnitSystem;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sentence being typed does not lie on the side that it speaks of. */
class SentenceMarksTest {
  private static final Words WORDS = Words.english(UnitSystem.FEET_INCHES);
  private static final Vocabulary ENGLISH = new Vocabulary(WORDS);

  /** A drive that fills the paper of a window of 1280 by 800. */
  @ParameterizedTest
  @ValueSource(strings = {"24' left", "6' up 4' left", "9' right", "30' on"})
  void theSideBeingTypedIsToBeSeen(String sentence) {
    Desk desk = Desk.blank().resized(744, 760);
    for (String s : List.of("20' right", "12' down", "6' down 4' right", "12' down")) {
      desk = Drafting.type(desk, s);
      desk = Drafting.enter(desk, Sentence.read(s, ENGLISH, LengthUnit.FOOT), "slab");
    }
    desk = Drafting.type(desk, sentence);
    Mark side =
        LiveMarks.of(desk, held(desk), WORDS, ENGLISH).stream()
            .filter(m -> m instanceof Mark.Line l && l.width() == 4 && l.role() == Role.SELECTED)
            .findFirst()
            .orElseThrow();
    Mark frame =
        LiveMarks.of(desk, held(desk), WORDS, ENGLISH).stream()
            .filter(m -> m instanceof Mark.Area a && a.role() == Role.ON_MUST)
            .findFirst()
            .orElseThrow();
    Box typed = ((Mark.Area) frame).rings().getFirst().box();
    assertThat(typed.meets(((Mark.Line) side).path().edges().getFirst().box())).isFalse();
    assertThat(new Box(0, 0, 744, 760).holds(new Point(typed.maxX(), typed.maxY()))).isTrue();
  }

  private static List<Mark> held(Desk desk) {
    return HoldMarks.of(desk, Known.of(desk), FlagMarks.of(desk), WORDS);
  }
}
