package org.jointwright.designer.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jointwright.check.Finding;
import org.jointwright.check.Judgement;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.designer.findings.FindingFacts;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Laid;
import org.jointwright.designer.state.Pick;
import org.jointwright.drawing.Flags;
import org.jointwright.drawing.Mark;
import org.jointwright.joint.Layouts;
import org.jointwright.joint.Numbering;
import org.jointwright.measure.Length;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

/** Findings that are close together share a flag, and none is left without one. */
class FlagMarksTest {
  private static final Words WORDS = Words.english(UnitSystem.FEET_INCHES);
  private static final Slab PAD =
      Slab.of(
          "pad",
          Outline.of(
              List.of(new Point(0, 0), new Point(240, 0), new Point(240, 240), new Point(0, 240))));

  private static Finding finding(Severity severity, double x, double y) {
    return new Finding(
        "S3",
        severity,
        "pad",
        new Subject.OnSlab(),
        new Point(x, y),
        0.6,
        0.5,
        "check.s3.uneven",
        List.of("pad", 60.0, 0.5, "P1"),
        List.of());
  }

  private static Desk desk(Finding... findings) {
    Plan plan = Plan.EMPTY.withSlabs(List.of(PAD));
    Judgement judged = new Judgement(List.of(findings), List.of());
    return Desk.begun(plan).answered(new Laid(1, plan, Layouts.of(plan), judged)).fitted();
  }

  /** So many findings in a row, each so many pixels beside the one before. */
  private static Desk row(int many, double pixels) {
    Desk one = desk();
    double by = one.viewport().inches(pixels);
    return desk(
        IntStream.range(0, many)
            .mapToObj(i -> finding(Severity.SHOULD, 60 + i * by, 120))
            .toArray(Finding[]::new));
  }

  private static List<String> texts(Desk desk) {
    List<String> texts = new ArrayList<>();
    for (Mark.Group g : FlagMarks.of(desk).marks(new Places())) {
      for (Mark m : g.marks()) {
        if (m instanceof Mark.Words w) {
          texts.add(w.text());
        }
      }
    }
    return texts;
  }

  private static Point middle(Box box) {
    return box.centre();
  }

  @Test
  void thoseApartHaveOneEach() {
    assertThat(texts(row(3, 60))).containsExactly("1", "2", "3");
  }

  @Test
  void thoseTogetherShareOneAndManyAreCounted() {
    assertThat(texts(row(3, 8))).containsExactly("1,2,3");
    assertThat(texts(row(4, 8))).containsExactly("1 +3");
    assertThat(texts(row(2, 25))).as("just near enough").containsExactly("1,2");
    assertThat(texts(row(2, 27))).as("just too far for one stake").hasSize(2);
  }

  @Test
  void aPlanThatIsPushedTakesItsFlagsAlong() {
    Desk desk = row(9, 14);
    FlagMarks before = FlagMarks.of(desk);
    Desk pushed = desk.withSight(v -> v.with(v.viewport().pushed(31, -12), false));
    List<Box> after = before.or(pushed).cloths();
    assertThat(after).hasSameSizeAs(before.cloths());
    for (int i = 0; i < after.size(); i++) {
      Point by = after.get(i).centre().minus(before.cloths().get(i).centre());
      assertThat(by.distance(new Point(31, -12))).isLessThan(1e-6);
    }
    Desk gone = desk.withSight(v -> v.with(v.viewport().pushed(5000, 0), false));
    assertThat(before.or(gone).cloths()).isEmpty();
    assertThat(before.or(gone).or(desk).cloths()).isEqualTo(before.cloths());
    Desk closer = desk.withSight(v -> v.with(v.viewport().zoomed(new Point(300, 300), 1.3), false));
    assertThat(before.or(closer).cloths()).isEqualTo(FlagMarks.of(closer).cloths());
  }

  @Test
  void aClickGoesThroughThemRoundAndRound() {
    Desk desk = row(3, 8);
    Point cloth = middle(FlagMarks.of(desk).cloths().getFirst());
    List<Integer> shared = FlagMarks.of(desk).at(cloth);
    assertThat(shared).containsExactly(1, 2, 3);
    List<Integer> gone = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      desk = FindingFacts.through(desk, shared);
      gone.add(desk.sight().finding().orElseThrow());
    }
    assertThat(gone).containsExactly(1, 2, 3, 1);
    assertThat(FlagMarks.of(desk).at(new Point(2, 2))).isEmpty();
    assertThat(FindingFacts.through(desk, List.of())).isSameAs(desk);
  }

  @Test
  void aSharedFlagIsOfTheShapeOfTheWorst() {
    Desk desk = desk(finding(Severity.NOTE, 100, 100), finding(Severity.MUST, 101, 101));
    Mark.Group flag = FlagMarks.of(desk).marks(new Places()).getFirst();
    Mark.Group alone = Flags.flag(new Point(0, 0), "1,2", Flags.Shape.MUST, 19);
    assertThat(flag.marks()).hasSameSizeAs(alone.marks());
    assertThat(PlanMarks.shape(desk.laying().laid().orElseThrow().findings().getFirst()))
        .isEqualTo(Flags.Shape.MUST);
  }

  @Test
  void noFlagLiesOnAnotherAndEveryFindingHasOne() {
    for (double apart = 4; apart < 80; apart += 3) {
      Desk desk = row(12, apart);
      List<Box> cloths = FlagMarks.of(desk).cloths();
      for (int i = 0; i < cloths.size(); i++) {
        for (int k = 0; k < i; k++) {
          assertThat(cloths.get(i).meets(cloths.get(k))).as("%s px apart", apart).isFalse();
        }
      }
      Box paper = desk.viewport().paper();
      long seen =
          desk.laying().laid().orElseThrow().findings().stream()
              .filter(f -> paper.holds(desk.viewport().toPaper(f.at())))
              .count();
      List<Integer> found = new ArrayList<>();
      for (Box c : cloths) {
        found.addAll(FlagMarks.of(desk).at(middle(c)));
      }
      assertThat(found).as("%s px apart", apart).doesNotHaveDuplicates();
      assertThat((long) found.size()).as("%s px apart", apart).isGreaterThanOrEqualTo(seen);
    }
  }

  /** A hand that moves over a large plan asks at each move. */
  @Test
  void theyAreWorkedOutAnewOnlyWhereSomethingOfThemIsOther() {
    Desk desk = row(3, 60);
    FlagMarks flags = FlagMarks.of(desk);
    Pick pad = new Pick.WholeSlab("pad");
    assertThat(flags.or(desk.withSight(s -> s.pointingAt(pad)).picking(pad))).isSameAs(flags);
    Desk pushed = desk.withSight(s -> s.with(s.viewport().pushed(40, 0), false));
    Point there = middle(flags.cloths().getFirst()).plus(new Point(40, 0));
    assertThat(flags.or(pushed).at(there)).containsExactly(1);
    Desk other = desk.edited(new SlabEdit.SetThickness("pad", Length.inches(6)));
    assertThat(flags.or(other)).isNotSameAs(flags);
    Laid laid = desk.laying().laid().orElseThrow();
    Judgement nothing = new Judgement(List.of(), List.of());
    Desk mended = desk.answered(new Laid(1, laid.asked(), laid.layout(), nothing));
    assertThat(flags.or(mended).cloths()).isEmpty();
  }

  @Test
  void aLineSaysWhatIsFoundInOneSentence() {
    Desk desk = row(2, 60);
    assertThat(FindingFacts.lines(desk, List.of(2), WORDS, Numbering::of))
        .singleElement()
        .asString()
        .startsWith("2  The panels of pad differ much in size")
        .endsWith("is the most.")
        .doesNotContain("Move joints");
    assertThat(FindingFacts.lines(desk, List.of(9), WORDS, Numbering::of)).isEmpty();
  }

  @Test
  void onANarrowWalkEveryStakeStandsOnTheWalk() {
    Slab walk =
        Slab.of(
            "pad",
            Outline.of(
                List.of(new Point(0, 0), new Point(480, 0), new Point(480, 24), new Point(0, 24))));
    Plan plan = Plan.EMPTY.withSlabs(List.of(walk));
    Desk bare = Desk.begun(plan).fitted();
    double apart = bare.viewport().inches(27);
    Finding[] found =
        IntStream.range(0, 12)
            .mapToObj(i -> finding(Severity.values()[i % 3], 40 + i * apart, 12 + i % 2 * 4))
            .toArray(Finding[]::new);
    Judgement judged = new Judgement(List.of(found), List.of());
    Desk desk = bare.answered(new Laid(1, plan, Layouts.of(plan), judged)).fitted();
    List<Mark.Group> flags = FlagMarks.of(desk).marks(new Places());
    assertThat(flags).hasSizeGreaterThan(4);
    for (Mark.Group flag : flags) {
      Mark.Line stake = (Mark.Line) flag.marks().getFirst();
      Point foot = desk.viewport().toPlan(stake.path().start());
      assertThat(walk.region().contains(foot)).as("stake at %s", foot).isTrue();
    }
  }
}
