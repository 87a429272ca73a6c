package org.jointwright.designer.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.designer.sketch.Drawn;
import org.jointwright.designer.sketch.Said;
import org.jointwright.designer.sketch.Vocabulary;
import org.jointwright.designer.state.AlongSides;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Drafting;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.text.Language;
import org.jointwright.text.Words;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is written while a line is drawn is to be read. */
class DraftMarksTest {
  private static final Plan PAD =
      Plan.EMPTY.withSlabs(
          List.of(
              Slab.of(
                  "pad",
                  Outline.of(
                      List.of(
                          new Point(0, 0),
                          new Point(312, 0),
                          new Point(312, 120),
                          new Point(0, 120))))));

  @ParameterizedTest
  @EnumSource(Language.class)
  void theLengthOfALineCoversNoWordsOfTheStringAtItsEnd(Language language) {
    Words words = Words.of(language, UnitSystem.FEET_INCHES);
    List<Edge> sides = AlongSides.of(PAD);
    List<String> covered = new ArrayList<>();
    for (Edge from : sides) {
      Desk begun =
          AlongSides.led(
              Drafting.begin(Desk.begun(PAD).resized(744, 760).fitted(), Drawn.SPLIT), from, 96);
      Desk started = Drafting.enter(begun, new Said.Silent(), "slab");
      for (Edge to : sides) {
        for (double far : new double[] {24, 60, 100}) {
          Desk led = AlongSides.led(started, to, far);
          List<Mark.Words> all =
              LiveMarks.of(led, List.of(), words, new Vocabulary(words)).stream()
                  .filter(Mark.Words.class::isInstance)
                  .map(Mark.Words.class::cast)
                  .toList();
          all.stream()
              .filter(w -> w.role() == Role.SELECTED)
              .filter(
                  w ->
                      all.stream()
                          .filter(s -> s.role() == Role.STRING)
                          .anyMatch(s -> InSight.room(s).meets(InSight.room(w).grown(-4))))
              .forEach(w -> covered.add(from + " to " + far + " of " + to));
        }
      }
    }
    assertThat(covered).isEmpty();
  }
}
