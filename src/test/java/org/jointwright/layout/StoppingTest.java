package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** A search that is told to stop gives nothing, and leaves nothing behind. */
class StoppingTest {
  private static final Plan PLAN =
      Plan.EMPTY.withSlabs(
          List.of(
              Slab.of(
                  "drive",
                  Outline.of(
                      List.of(
                          new Point(0, 0),
                          new Point(360, 0),
                          new Point(360, 130),
                          new Point(170, 130),
                          new Point(170, 300),
                          new Point(0, 300))))));

  /** Says no from the question of that number on, and counts. */
  private record UpTo(int asks, AtomicInteger asked) implements BooleanSupplier {
    UpTo(int asks) {
      this(asks, new AtomicInteger());
    }

    @Override
    public boolean getAsBoolean() {
      return asked.incrementAndGet() < asks;
    }
  }

  @Test
  void nothingComesOfASearchThatIsToldToStop() {
    UpTo all = new UpTo(Integer.MAX_VALUE);
    assertThat(LayoutEngine.lay(PLAN, all)).contains(LayoutEngine.lay(PLAN));
    int asks = all.asked().get();
    assertThat(asks).as("steps at which it can stop").isGreaterThan(100);
    for (int at : new int[] {1, 2, asks / 3, asks - 1, asks}) {
      UpTo some = new UpTo(at);
      assertThat(LayoutEngine.lay(PLAN, some)).as("stopped at %d", at).isEmpty();
      assertThat(some.asked().get()).as("no step is made after the no").isEqualTo(at);
    }
  }

  @Test
  void aSearchThatWasStoppedLeavesTheNextAsItWas() {
    var before = LayoutEngine.lay(PLAN);
    assertThat(LayoutEngine.lay(PLAN, new UpTo(50))).isEmpty();
    assertThat(LayoutEngine.first(PLAN, new UpTo(50))).isEmpty();
    assertThat(LayoutEngine.lay(PLAN)).isEqualTo(before);
  }

  @Test
  void theFirstAnswerIsTheSameHoweverItIsAskedFor() {
    assertThat(LayoutEngine.first(PLAN, () -> true)).contains(LayoutEngine.first(PLAN));
  }

  @Test
  void choicesStopWithThoseThatWereFound() {
    assertThat(LayoutEngine.choices(PLAN, "drive", new UpTo(1))).isEmpty();
    UpTo all = new UpTo(Integer.MAX_VALUE);
    var offers = LayoutEngine.choices(PLAN, "drive", all);
    UpTo some = new UpTo(all.asked().get());
    assertThat(offers).startsWith(LayoutEngine.choices(PLAN, "drive", some).toArray(Offer[]::new));
    assertThat(some.asked().get()).as("it stopped").isGreaterThanOrEqualTo(all.asked().get());
  }
}
