package org.jointwright.layout.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** What the search makes of a solver's answers: giving up is no proof. */
class BranchingTest {
  private static final List<Tile> TILES =
      List.of(new Tile(0, 0, 1, 1, 10, 100), new Tile(1, 0, 2, 1, 10, 100));

  /** Costs 5 by halves of both tiles, 8 without the first; with it, whatever is answered. */
  private static Function<List<Program.Held>, Program.Answer> program(Program.Answer withFirst) {
    return held -> {
      if (held.isEmpty()) {
        return new Program.Relaxed(5, List.of(0.5, 0.5));
      }
      return held.getFirst().whole() ? withFirst : new Program.Relaxed(8, List.of(0.0, 1.0));
    };
  }

  private static Branching.Found find(Program.Answer withFirst) {
    return new Branching(TILES, program(withFirst), new Tries(100, () -> true)).find(20);
  }

  @Test
  void cheaperCoverWins() {
    Branching.Found found = find(new Program.Relaxed(7, List.of(1.0, 0.0)));
    assertThat(found.bound()).isEqualTo(7);
    assertThat(found.cover()).containsExactly(TILES.getFirst());
  }

  @Test
  void whatCannotBeIsLeftAside() {
    Branching.Found found = find(new Program.Impossible());
    assertThat(found.bound()).isEqualTo(8);
    assertThat(found.cover()).containsExactly(TILES.getLast());
  }

  @Test
  void whatTheSolverGaveUpOnMayBeCheaperStill() {
    Branching.Found found = find(new Program.Unsettled());
    assertThat(found.bound()).isEqualTo(5);
    assertThat(found.cover()).containsExactly(TILES.getLast());
  }
}
