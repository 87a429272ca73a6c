package org.jointwright.reason.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.check.Sketch;
import org.jointwright.joint.Layouts;
import org.jointwright.measure.UnitSystem;
import org.jointwright.reason.Reasons;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

/** What is said of hand-made slabs is true of them, figure by figure; inches. */
class ReasonWordsTest {
  private static List<String> said(Sketch sketch, String joint) {
    ReasonWords words = ReasonWords.byNumber(sketch.plan(), Words.english(UnitSystem.FEET_INCHES));
    var reasons = Reasons.of(sketch.plan(), Layouts.of(sketch.plan()), "slab", List.of(joint));
    return words.origins(reasons.getFirst());
  }

  @Test
  void halfWayIsSaidOnlyWhereBothFiguresAreOne() {
    assertThat(said(Sketch.rectangle(288, 100).joint(144, 0, 144, 100), "J1"))
        .contains("It stands half way between side A–D and side B–C, 12′-0″ from each.");
    assertThat(said(Sketch.rectangle(288, 100).joint(143, 0, 143, 100), "J1"))
        .contains(
            "It stands nearly half way between side A–D and side B–C: 11′-11″ from the one,"
                + " 12′-1″ from the other.");
  }

  @Test
  void equalPartsThatAreNotQuiteAreSaidToBeNearly() {
    Sketch exact = Sketch.rectangle(300, 90).joint(100, 0, 100, 90).joint(200, 0, 200, 90);
    assertThat(said(exact, "J1").getFirst()).contains("3 equal parts of 8′-4″");
    Sketch near = Sketch.rectangle(300, 90).joint(99, 0, 99, 90).joint(200, 0, 200, 90);
    assertThat(said(near, "J1").getFirst()).contains("3 nearly equal parts of about 8′-4″");
  }

  @Test
  void aLineOfPiecesIsNotSaidToGoOnInItself() {
    Sketch pieces = Sketch.rectangle(200, 100).joint(0, 50, 100, 50).joint(100, 50, 200, 50);
    assertThat(said(pieces, "J1")).noneMatch(s -> s.startsWith("It goes on"));
  }

  @Test
  void aBendIsSaidToBeOne() {
    Sketch bent = Sketch.rectangle(200, 100).joint(0, 50, 100, 50).joint(100, 50, 200, 60);
    assertThat(said(bent, "J1"))
        .contains("It goes on beyond its end as joint 2, with a bend of 5.7 degrees.");
  }
}
