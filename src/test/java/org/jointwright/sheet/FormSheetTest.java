package org.jointwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jointwright.drawing.Mark;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.measure.Length;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Against;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;
import org.jointwright.sheet.page.Page;
import org.jointwright.sheet.page.Paper;
import org.jointwright.sheet.page.SheetOptions;
import org.jointwright.sheet.page.SheetSet;
import org.jointwright.takeoff.Takeoff;
import org.jointwright.text.Words;
import org.junit.jupiter.api.Test;

/** What is set up before there is any concrete, on the form sheet. */
class FormSheetTest {
  private static final SheetOptions OPTIONS =
      new SheetOptions("", Words.english(UnitSystem.FEET_INCHES), Paper.LETTER);

  private static String texts(Plan plan) {
    return texts(plan, OPTIONS);
  }

  private static String texts(Plan plan, SheetOptions options) {
    Layout layout = Layouts.of(plan);
    Takeoff takeoff = Takeoff.of(layout, options.words().units());
    List<Page> pages =
        SheetSet.of(List.of(FormSheet.sheet(layout, takeoff, options)), plan.job(), options)
            .pages();
    return pages.stream()
        .flatMap(p -> PageTexts.of(p).stream())
        .collect(java.util.stream.Collectors.joining(" | "));
  }

  private static Plan with(EdgeSetting first) {
    Plan plan = LaidPlans.plan("rect_drive_20x40_4in");
    Slab slab = plan.slabs().getFirst().withEdges(Map.of(0, first));
    return plan.withSlabs(List.of(slab.withLaid(List.of(), List.of())));
  }

  @Test
  void everySideHasItsLengthAndItsBoard() {
    assertThat(texts(LaidPlans.plan("rect_drive_20x40_4in")))
        .contains("A–B | 20′-0″ | board 4″", "A–D | 40′-0″ | board 4″");
  }

  @Test
  void sideAgainstAWallHasNone() {
    assertThat(texts(with(EdgeSetting.against(Against.BUILDING))))
        .contains("A–B | 20′-0″ | none: building")
        .contains("B–C | 40′-0″ | board 4″");
  }

  @Test
  void oneBoardStandsBetweenTwoSlabs() {
    assertThat(texts(LaidPlans.plan("multi_drive_approach_walk")))
        .contains("board 6″, between | two slabs");
  }

  /** A pad of 6 by 8 ft with an opening of 2 by 2 ft, 2 ft from its left and 3 ft from its foot. */
  @Test
  void anOpeningIsPlacedFromTheSidesThatStand() {
    Outline pad = box(0, 0, 72, 96);
    Opening hole = new Opening(box(24, 36, 24, 24), Map.of(), Kept.NOTHING);
    Plan plan = Plan.EMPTY.withSlabs(List.of(Slab.of("pad", pad).withOpenings(List.of(hole))));
    assertThat(texts(plan).replaceAll(" \\| |\\h", " "))
        .contains("Opening: E 3′-0″ A–D, right 2′-0″; F 3′-0″ B–C, left 2′-0″.");
  }

  private static Outline box(double x, double y, double wide, double high) {
    return Outline.of(
        List.of(
            new Point(x, y),
            new Point(x + wide, y),
            new Point(x + wide, y + high),
            new Point(x, y + high)));
  }

  @Test
  void slabAndBaseAddUpToWhatIsDug() {
    assertThat(texts(LaidPlans.plan("rect_drive_20x40_4in"))).contains("4″ | 4″ | 8″");
    SheetOptions metric = new SheetOptions("", Words.english(UnitSystem.METRIC), Paper.A4);
    assertThat(texts(LaidPlans.plan("rect_drive_20x40_4in"), metric))
        .contains("100 mm | 100 mm | 200 mm");
  }

  @Test
  void thickenedEdgeIsToldWithWhatIsDugThere() {
    EdgeSetting.Thickened edge =
        new EdgeSetting.Thickened(
            Optional.of(Length.inches(12)), Optional.of(Length.feet(2)), Kept.NOTHING);
    String said = texts(with(EdgeSetting.OPEN.withThickened(Optional.of(edge))));
    assertThat(said).contains("Thicker at A–B: 1′-0″ at the edge, back to 4″ within 2′-0″");
    assertThat(said).contains("dig 1′-4″");
  }

  @Test
  void jointsThatAreCutAreLeftOut() {
    String said = texts(LaidPlans.plan("rect_drive_20x40_4in"));
    assertThat(said).doesNotContain("contraction").doesNotContain("Saw");
  }

  @Test
  void trafficIsMindedOnlyAtTheStreet() {
    assertThat(texts(with(EdgeSetting.against(Against.STREET)))).contains("Mind traffic");
    assertThat(texts(with(EdgeSetting.against(Against.BUILDING)))).doesNotContain("Mind traffic");
  }

  /** The side D–E of the drive has the pad along a part of it. */
  @Test
  void noChainRunsThroughTheSlabBesideItsSide() {
    List<String> groups = new ArrayList<>();
    groups(
        LaidPlans.pages(
                "drive-walk-and-pad.jointwright",
                LaidPlans.Kind.FORMS,
                Words.english(UnitSystem.FEET_INCHES),
                Paper.LETTER)
            .getFirst()
            .marks(),
        groups);
    assertThat(groups).contains("side-B–C").doesNotContain("side-D–E");
  }

  private static void groups(List<Mark> marks, List<String> into) {
    for (Mark mark : marks) {
      if (mark instanceof Mark.Group g) {
        into.add(g.name());
        groups(g.marks(), into);
      }
    }
  }
}
