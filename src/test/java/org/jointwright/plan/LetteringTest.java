package org.jointwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

class LetteringTest {
  private static final Slab DRIVE = slab("drive", 0, 0, 240, 0, 240, 120, 0, 120);

  private static Slab slab(String id, double... xy) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Point(xy[i], xy[i + 1]));
    }
    return Slab.of(id, Outline.of(points));
  }

  private static Lettering lettering(Slab... slabs) {
    return Lettering.of(Plan.EMPTY.withSlabs(List.of(slabs)));
  }

  @Test
  void lettersGoRoundFromTheLowerLeftCorner() {
    assertThat(lettering(DRIVE).corners())
        .extracting(LetteredCorner::letter)
        .containsExactly("A", "B", "C", "D");
    assertThat(lettering(DRIVE).cornerAt(new Point(240, 120)).orElseThrow().letter())
        .isEqualTo("C");
  }

  @Test
  void oppositeSidesAreTapedTheSameWay() {
    assertThat(lettering(DRIVE).tapes())
        .extracting(Tape::name)
        .containsExactly("A–B", "B–C", "D–C", "A–D");
  }

  @Test
  void noLetterReadsAsAFigure() {
    List<String> letters = new ArrayList<>();
    for (int i = 0; i < 50; i++) {
      letters.add(Lettering.letter(i));
    }
    assertThat(letters).noneMatch(l -> l.contains("I") || l.contains("O"));
    assertThat(letters.subList(22, 26)).containsExactly("Y", "Z", "AA", "AB");
    assertThat(letters).doesNotHaveDuplicates();
  }

  @Test
  void slabsShareTheLetterOfASharedCorner() {
    Slab walk = slab("walk", 240, 0, 300, 0, 300, 120, 240, 120);
    assertThat(lettering(DRIVE, walk).corners()).hasSize(6);
    assertThat(lettering(DRIVE, walk).tapes()).hasSize(7);
  }

  @Test
  void sideOnALongerSideOfAnotherSlabIsTapedWithIt() {
    Slab walk = slab("walk", 60, 120, 108, 120, 108, 240, 60, 240);
    Lettering lettering = lettering(DRIVE, walk);
    Tape top = lettering.tapes().stream().filter(t -> t.name().equals("D–C")).findFirst().get();
    assertThat(lettering.between(top)).extracting(LetteredCorner::letter).containsExactly("E", "F");
    assertThat(top.distanceTo(new Point(60, 120))).isCloseTo(60, within(1e-9));
    assertThat(lettering.tapes()).hasSize(7);
  }

  @Test
  void turnOfFiveDegreesIsNoCornerAndOneOfSixIs() {
    double flat = 120 * Math.tan(Math.toRadians(4.9));
    double bent = 120 * Math.tan(Math.toRadians(6));
    assertThat(lettering(slab("a", 0, 0, 120, 0, 240, flat, 240, 120, 0, 120)).corners())
        .hasSize(4);
    assertThat(lettering(slab("a", 0, 0, 120, 0, 240, bent, 240, 120, 0, 120)).corners())
        .hasSize(5);
  }

  @Test
  void arcBeginsAndEndsAtCornersEvenWithoutATurn() {
    Outline slot =
        new Outline(
            List.of(
                Vertex.at(new Point(0, 0)),
                Vertex.arc(new Point(240, 0), new Point(300, 60)),
                Vertex.at(new Point(240, 120)),
                Vertex.at(new Point(0, 120))));
    Lettering lettering = lettering(Slab.of("slot", slot));
    assertThat(lettering.corners()).hasSize(4);
    Tape arc = lettering.tapes().get(1);
    assertThat(arc.isStraight()).isFalse();
    assertThat(arc.distanceTo(new Point(300, 60))).isCloseTo(30 * Math.PI, within(1e-6));
  }

  @Test
  void lineTracedInSmallTurnsHasACornerEveryFiveDegrees() {
    List<Point> round = new ArrayList<>();
    for (int i = 0; i < 120; i++) {
      round.add(new Point(100, 0).turned(2 * Math.PI * i / 120));
    }
    Lettering lettering = lettering(Slab.of("round", Outline.of(round)));
    assertThat(lettering.corners()).hasSize(60);
  }

  @Test
  void openingIsLetteredAfterItsSlab() {
    Opening well =
        new Opening(
            Outline.of(
                List.of(
                    new Point(50, 50), new Point(80, 50), new Point(80, 80), new Point(50, 80))),
            Map.of(),
            Kept.NOTHING);
    Lettering lettering = lettering(DRIVE.withOpenings(List.of(well)));
    assertThat(lettering.corners()).hasSize(8);
    assertThat(lettering.cornerAt(new Point(50, 50)).orElseThrow().letter()).isEqualTo("E");
  }
}
