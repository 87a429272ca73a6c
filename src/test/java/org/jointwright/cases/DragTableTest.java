package org.jointwright.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.layout.LayoutEngine;
import org.jointwright.plan.Plan;
import org.jointwright.plan.edit.Ref;
import org.junit.jupiter.api.Test;

/** The page of drags tells of every case, and says what fitting gives today. */
class DragTableTest {
  private static Plan plan(String name) {
    return named(name).plan();
  }

  private static OpenCase named(String name) {
    return OpenCase.all().stream().filter(c -> c.name().equals(name)).findFirst().orElseThrow();
  }

  private static List<String> rows() throws IOException {
    return Files.readString(DragTable.PAGE)
        .replace("\r", "")
        .lines()
        .dropWhile(l -> !l.equals("## By case"))
        .filter(l -> l.startsWith("| ") && !l.startsWith("| |"))
        .toList();
  }

  @Test
  void everyCaseHasItsRow() throws IOException {
    assertThat(rows())
        .extracting(r -> r.split("\\|", -1)[1].strip())
        .containsExactlyElementsOf(OpenCase.all().stream().map(OpenCase::name).toList());
  }

  @Test
  void figuresOfARectangleAreThoseOfThePage() throws IOException {
    String row = DragPage.row(DragTable.row(named("rect_patio_13x17_4in")));
    assertThat(rows()).contains(row);
  }

  @Test
  void everyCornerIsPulledBothWays() {
    List<Drag> drags = Drag.all(plan("opening_tree_well_24x24_4in"));
    // Four corners of the slab, four of the opening.
    assertThat(drags).hasSize(16);
    Drag first = drags.getFirst();
    assertThat(first.corner()).isEqualTo(Ref.outline("slab", 0));
    assertThat(first.plans()).hasSize(Drag.STEPS);
  }

  @Test
  void anotherPatternIsAChangeAndTheOldOneAgainAChangeBack() {
    Layout few = LayoutEngine.first(plan("rect_patio_13x17_4in"));
    Plan bare =
        few.plan()
            .withSlab(few.plan().slabs().getFirst().id(), s -> s.withLaid(List.of(), List.of()));
    Layout none = Layouts.of(bare);
    Steadiness steady = new Steadiness();
    steady.add(List.of(few, few, none, few));

    assertThat(steady.steps()).isEqualTo(3);
    assertThat(steady.changes()).isEqualTo(2);
    assertThat(steady.back()).isEqualTo(1);
    // Two joints that did not move, and two that were not there before.
    assertThat(steady.moved()).isEqualTo(0.5);
  }
}
