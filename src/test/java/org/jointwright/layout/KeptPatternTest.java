package org.jointwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jointwright.check.Severity;
import org.jointwright.check.judge.Checks;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Panel;
import org.jointwright.joint.SlabLayout;
import org.jointwright.layout.piece.Limits;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Ref;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws of a pattern that is kept while a corner moves a little. */
class KeptPatternTest {
  private static final List<String> CASES =
      List.of(
          "L_drive_36x44_4in",
          "T_pad_40x30_5in",
          "U_patio_34x26_4in",
          "approach_flares_16x6_6in",
          "edges_patio_in_house_corner_4in",
          "hammerhead_12x36_bar50_5in",
          "jog_1ft_18x30_4in",
          "jog_2in_20x36_4in",
          "multi_drive_approach_walk",
          "multi_patio_and_landing",
          "opening_round_planter_20x30_5in",
          "parallelogram_75deg_20x36_5in",
          "plus_pad_30x30_4in",
          "rect_drive_20x40_4in",
          "rect_slab_31x47_6in",
          "square_off_20_0x40_3_4in",
          "steps_four_of_4ft_4in",
          "trapezoid_16to28x30_4in",
          "units_inches_260x410",
          "units_mm_6000x9500",
          "user_locked_construction_28x24_5in",
          "walk_5ft_45deg_bend_4in");

  /** How far a corner moves at most each way, inches. */
  private static final double MOVE = 2;

  private static final int TIMES = 12;

  /** How much farther than the corner a joint may move: it may be longer than the edge. */
  private static final double FARTHER = 2;

  /** An end may go to the next whole inch besides, or to whole 10 mm. */
  private static final double MARK = 1.01;

  private static final Map<String, Layout> LAID = new TreeMap<>();

  /**
   * A move.
   *
   * @param name the case
   * @param seed draws the corner and the way
   */
  record Moved(String name, int seed) {
    Plan plan() {
      return Cases.plan(name);
    }

    /** The layout before the move. */
    Layout before() {
      return LAID.computeIfAbsent(name, n -> LayoutEngine.first(Cases.plan(n)));
    }

    Point by() {
      SplittableRandom random = new SplittableRandom(seed);
      return new Point(random.nextDouble(-MOVE, MOVE), random.nextDouble(-MOVE, MOVE));
    }

    /** The plan after the move. */
    Plan after() {
      Plan plan = plan();
      int n = Math.floorMod(31 * seed, plan.slabs().size());
      Slab slab = plan.slabs().get(n);
      int corner = Math.floorMod(17 * seed, slab.outline().vertices().size());
      Point to = slab.outline().vertices().get(corner).at().plus(by());
      return new SlabEdit.MoveCorner(Ref.outline(slab.id(), corner), to).applyTo(plan);
    }
  }

  static Stream<Moved> moves() {
    List<Moved> all = new ArrayList<>();
    CASES.forEach(
        c -> {
          for (int seed = 1; seed <= TIMES; seed++) {
            all.add(new Moved(c, seed));
          }
        });
    return all.stream();
  }

  @ParameterizedTest
  @MethodSource("moves")
  void whatIsFittedIsWholeAndBreaksNothing(Moved m) {
    Optional<Layout> fitted = LayoutEngine.refit(m.before(), m.after());
    if (fitted.isEmpty()) {
      return;
    }
    for (SlabLayout s : fitted.get().slabs()) {
      Slab slab = s.slab();
      double whole =
          Grounds.of(slab, slab.boxOuts(), Limits.of(slab), Bench.at(slab.outline().ring().box()))
              .area();
      double sum = s.panels().stream().mapToDouble(Panel::area).sum();
      assertThat(sum).isCloseTo(whole, within(1.0));
      assertThat(s.loose()).isEmpty();
      assertThat(s.panels()).hasSameSizeAs(m.before().slab(slab.id()).orElseThrow().panels());
    }
    assertThat(Checks.judge(m.after(), fitted.get()).findings())
        // A corner pulled over the slab beside it is no matter of joints.
        .filteredOn(f -> f.severity() == Severity.MUST && !f.rule().equals("M11"))
        .isEmpty();
  }

  @ParameterizedTest
  @MethodSource("moves")
  void jointsMoveLittleMoreThanTheCorner(Moved m) {
    LayoutEngine.refit(m.before(), m.after())
        .ifPresent(
            fitted ->
                assertThat(farthest(m.before(), fitted))
                    .isLessThanOrEqualTo(FARTHER * m.by().norm() + MARK));
  }

  @ParameterizedTest
  @MethodSource("moves")
  void movingBackBringsTheJointsBack(Moved m) {
    Optional<Layout> fitted = LayoutEngine.refit(m.before(), m.after());
    // Under the hand the layout from before the drag is asked again, and comes back to the byte.
    assertThat(LayoutEngine.refit(m.before(), m.plan())).contains(m.before());
    fitted.ifPresent(
        f -> {
          // From the moved layout it may not fit where it only just did: marks leave less room.
          LayoutEngine.refit(f, m.plan())
              .ifPresent(
                  back -> assertThat(farthest(m.before(), back)).isLessThanOrEqualTo(1.5 * MARK));
        });
  }

  /** How far the farthest joint has moved. */
  private static double farthest(Layout before, Layout now) {
    double most = 0;
    for (SlabLayout s : now.slabs()) {
      List<Joint> old = cuts(before.slab(s.slab().id()).orElseThrow());
      assertThat(cuts(s)).hasSameSizeAs(old);
      for (Joint j : cuts(s)) {
        most =
            Math.max(
                most, old.stream().mapToDouble(o -> apart(o.path(), j.path())).min().orElseThrow());
      }
    }
    return most;
  }

  private static List<Joint> cuts(SlabLayout slab) {
    return slab.joints().stream().filter(j -> j.kind() == JointKind.CONTRACTION).toList();
  }

  private static double apart(Path a, Path b) {
    return Math.min(
        Math.max(a.start().distance(b.start()), a.end().distance(b.end())),
        Math.max(a.start().distance(b.end()), a.end().distance(b.start())));
  }
}
