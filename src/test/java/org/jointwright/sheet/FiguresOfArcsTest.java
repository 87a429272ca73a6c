package org.jointwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Typeface;
import org.jointwright.joint.Layouts;
import org.jointwright.measure.UnitSystem;
import org.jointwright.shape.Point;
import org.jointwright.sheet.LaidPlans.Kind;
import org.jointwright.sheet.page.Page;
import org.jointwright.sheet.page.Paper;
import org.jointwright.sheet.page.SheetOptions;
import org.jointwright.text.Words;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A figure of an arc hugs the line that it stands beside, also where it is moved off its mark. */
class FiguresOfArcsTest {
  /** So near stands the middle of a figure beside its line; one on a leader stands farther off. */
  private static final double BESIDE = 4.3;

  private static final double ON_LEADER = 8;

  static List<String> plans() {
    return LaidPlans.names();
  }

  @ParameterizedTest
  @MethodSource("plans")
  void aFigureStandsAtItsLineOrOnALeader(String name) {
    for (UnitSystem units : UnitSystem.values()) {
      Words words = Words.english(units);
      Set<String> arcs = arcs(name, words);
      for (Page page : LaidPlans.pages(name, Kind.CUT, words, Paper.LETTER)) {
        assertThat(
                groups(page.marks())
                    .filter(g -> arcs.contains(g.name()))
                    .flatMap(FiguresOfArcsTest::off)
                    .filter(d -> d > BESIDE && d < ON_LEADER))
            .as("%s, %s", name, units)
            .isEmpty();
      }
    }
  }

  private static Set<String> arcs(String name, Words words) {
    SheetOptions options = new SheetOptions("", words, Paper.LETTER);
    return Facts.of(Layouts.of(LaidPlans.plan(name)), options).chains().stream()
        .filter(c -> !c.tape().isStraight())
        .map(c -> "side-" + c.tape().name())
        .collect(Collectors.toSet());
  }

  private static Stream<Mark.Group> groups(List<Mark> marks) {
    return marks.stream()
        .filter(Mark.Group.class::isInstance)
        .map(Mark.Group.class::cast)
        .flatMap(g -> Stream.concat(Stream.of(g), groups(g.marks())));
  }

  /** How far the middle of each figure is from the line of its chain, which is drawn first. */
  private static Stream<Double> off(Mark.Group chain) {
    Mark.Line line = (Mark.Line) chain.marks().getFirst();
    return chain.marks().stream()
        .filter(Mark.Words.class::isInstance)
        .map(Mark.Words.class::cast)
        .map(
            w -> {
              double up = w.size() * Typeface.CAPITAL / 2;
              Point middle = w.at().plus(new Point(0, -up).turned(-Math.toRadians(w.angle())));
              return line.path().distance(middle);
            });
  }
}
