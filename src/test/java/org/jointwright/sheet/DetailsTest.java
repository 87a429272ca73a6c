package org.jointwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.sheet.page.Page;
import org.junit.jupiter.api.Test;

/** A small crowded slab beside a large one is drawn larger by itself. */
class DetailsTest {
  /** A pad of 8 by 6 ft with an opening of 2 by 2 ft amid it, and joints from its corners. */
  private static Slab pad(double x, double y) {
    Opening hole = new Opening(Outline.of(box(x + 36, y + 24, 24, 24)), Map.of(), Kept.NOTHING);
    List<Joint> joints =
        List.of(
            joint(x + 36, y, x + 36, y + 24),
            joint(x + 60, y, x + 60, y + 24),
            joint(x + 36, y + 48, x + 36, y + 72),
            joint(x + 60, y + 48, x + 60, y + 72),
            joint(x, y + 36, x + 36, y + 36),
            joint(x + 60, y + 36, x + 96, y + 36));
    return Slab.of("pad", Outline.of(box(x, y, 96, 72)))
        .withOpenings(List.of(hole))
        .withLaid(joints, List.of());
  }

  private static List<Point> box(double x, double y, double width, double height) {
    return List.of(
        new Point(x, y),
        new Point(x + width, y),
        new Point(x + width, y + height),
        new Point(x, y + height));
  }

  private static Joint joint(double x, double y, double toX, double toY) {
    String id = "J" + x + "-" + y;
    Path path = Path.straight(new Point(x, y), new Point(toX, toY));
    return Joint.of(id, JointKind.CONTRACTION, path, Purpose.SPACING);
  }

  private static List<Page> pages(Slab... slabs) {
    return LaidPlans.pages(Plan.EMPTY.withSlabs(List.of(slabs)));
  }

  private static final Slab DRIVE = Slab.of("drive", Outline.of(box(0, 0, 800, 480)));

  @Test
  void crowdedPadHasADetailAndAPointerToIt() {
    List<Page> pages = LaidPlans.pages("drive-walk-and-pad.jointwright");
    assertThat(PageTexts.of(pages.getFirst())).contains("detail 1");
    assertThat(PageTexts.of(pages.get(1))).contains("Detail 1: pad");
  }

  @Test
  void itsCornersAreLetteredOnThePlanToo() {
    List<Page> pages = pages(DRIVE, pad(800, 200));
    assertThat(PageTexts.of(pages.getFirst())).contains("J", "K", "L", "M");
  }

  @Test
  void padAloneHasRoomAndNoDetail() {
    assertThat(pages(pad(0, 0)).stream().flatMap(p -> PageTexts.of(p).stream()))
        .noneMatch(t -> t.startsWith("Detail "));
  }
}
