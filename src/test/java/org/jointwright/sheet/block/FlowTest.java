package org.jointwright.sheet.block;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.shape.Box;
import org.junit.jupiter.api.Test;

/** Blocks down the columns of pages. */
class FlowTest {
  /** One column, 100 mm high. */
  private static final Box ROOM = new Box(0, 0, 90, 100);

  /** A block that stands whole. */
  private record Whole(String name, double height) implements Block {
    @Override
    public List<Mark> at(double x, double y, double width) {
      return List.of(Type.TABLE.at(x, y, name, Anchor.START));
    }
  }

  private static List<List<String>> pages(Block... blocks) {
    return Flow.pages(List.of(blocks), ROOM).stream()
        .map(p -> p.stream().map(m -> ((Mark.Group) m).name()).toList())
        .toList();
  }

  @Test
  void aSmallBlockFillsTheGapOfALargeOneWhereThatSparesAPage() {
    // 70 and 25 are 95 with the gap between them 99.5; the second 70 takes the other page.
    assertThat(pages(new Whole("a", 70), new Whole("b", 70), new Whole("c", 25)))
        .containsExactly(List.of("a"), List.of("b", "c"));
    assertThat(pages(new Whole("a", 70), new Whole("b", 80), new Whole("c", 25)))
        .containsExactly(List.of("a", "c"), List.of("b"));
  }

  @Test
  void itFillsNoneThatIsTooSmall() {
    assertThat(pages(new Whole("a", 70), new Whole("b", 80), new Whole("c", 26)))
        .containsExactly(List.of("a"), List.of("b"), List.of("c"));
  }

  @Test
  void whatIsSplitGoesOnFirst() {
    ListBlock list =
        new ListBlock(
            "list",
            "List",
            "",
            false,
            java.util.Collections.nCopies(20, new ListBlock.Row("row", "1")));
    assertThat(pages(new Whole("a", 40), list, new Whole("b", 60), new Whole("c", 5)).get(1))
        .startsWith("list");
  }
}
