package org.jointwright.app;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.jointwright.check.Finding;
import org.jointwright.check.Judgement;
import org.jointwright.check.judge.Checks;
import org.jointwright.file.LayoutWriter;
import org.jointwright.fix.Fix;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.layout.LayoutEngine;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Plan;
import org.jointwright.plan.edit.ByHand;
import org.jointwright.reason.Reason;
import org.jointwright.reason.Reasons;
import org.jointwright.text.Words;

/**
 * A layout and what the rules say of it.
 *
 * @param asked the plan that was given, with what its user locked
 * @param layout the plan with its joints, and its panels
 * @param judgement what every rule found
 */
public record Answer(Plan asked, Layout layout, Judgement judgement) {
  /** The joints of a plan laid anew. */
  public static Answer laid(Plan plan) {
    Layout layout = LayoutEngine.lay(plan);
    return new Answer(plan, layout, Checks.judge(plan, layout));
  }

  /**
   * The joints of a plan laid anew, by the pattern that was there where that is nearly as good.
   *
   * @param before the layout that was there; empty where there was none
   * @param goOn asked at each step
   * @return empty once {@code goOn} has said no
   */
  public static Optional<Answer> laid(Plan plan, Optional<Layout> before, BooleanSupplier goOn) {
    return laid(plan, before, ByHand.NONE, goOn);
  }

  /**
   * The same, but what a hand has laid stays.
   *
   * @param hand the slabs whose joints a hand has laid
   */
  public static Optional<Answer> laid(
      Plan plan, Optional<Layout> before, ByHand hand, BooleanSupplier goOn) {
    Optional<Layout> laid =
        before.isPresent()
            ? LayoutEngine.relay(before.get(), plan, hand, goOn)
            : LayoutEngine.lay(plan, hand.standing(), goOn);
    return judged(plan, laid, goOn);
  }

  /**
   * Joints as good as can be while a hand drags: the pattern that was there fitted to the plan, or,
   * where that does not fit any more, what is found with a fraction of the effort. Not where fixed
   * objects stand in the plan: choosing their box-outs takes most of either effort, so that a first
   * answer would come hardly sooner and keep the better one waiting.
   *
   * @return empty once {@code goOn} has said no, and where no answer comes sooner than the better
   *     one
   */
  public static Optional<Answer> first(Plan plan, Optional<Layout> before, BooleanSupplier goOn) {
    return first(plan, before, ByHand.NONE, goOn);
  }

  /**
   * The same, but what a hand has laid stays. Then nothing is shown first but a pattern that fits.
   *
   * @param hand the slabs whose joints a hand has laid
   */
  public static Optional<Answer> first(
      Plan plan, Optional<Layout> before, ByHand hand, BooleanSupplier goOn) {
    Optional<Layout> kept =
        hand.standing().isEmpty()
            ? before.flatMap(b -> LayoutEngine.refit(b, plan, hand))
            : Optional.empty();
    boolean isSoon = kept.isEmpty() && plan.fixed().isEmpty();
    return judged(plan, isSoon ? LayoutEngine.first(plan, hand.standing(), goOn) : kept, goOn);
  }

  private static Optional<Answer> judged(Plan plan, Optional<Layout> laid, BooleanSupplier goOn) {
    return laid.flatMap(l -> Checks.judge(plan, l, goOn).map(j -> new Answer(plan, l, j)));
  }

  /** The joints of a plan as they stand in it. */
  public static Answer asItStands(Plan plan) {
    Layout layout = Layouts.of(plan);
    return new Answer(plan, layout, Checks.judge(layout));
  }

  /** The plan with its joints. */
  public Plan plan() {
    return layout.plan();
  }

  /** What the rules found, by slab, then by rule. */
  public List<Finding> findings() {
    return judgement.findings();
  }

  /** Why each joint is where it is, by slab, in the order of its joints. */
  public List<Reason> reasons() {
    return layout.slabs().stream()
        .flatMap(s -> Reasons.of(asked, layout, s.slab().id()).stream())
        .toList();
  }

  /** Why some joints of a slab are where they are, in the slab's order. */
  public List<Reason> reasons(String slab, List<String> joints) {
    return Reasons.of(asked, layout, slab, joints);
  }

  /** Why one joint is where it is; empty where the slab has no joint of that id. */
  public Optional<Reason> reason(String slab, String joint) {
    return reasons(slab, List.of(joint)).stream().findFirst();
  }

  /** The layout output, its findings and reasons in English and in the plan's own measures. */
  public String json() {
    return json(f -> List.of());
  }

  /** The layout output with what can be done about each finding. */
  public String json(Function<Finding, List<Fix>> fixes) {
    Words words = Words.english(UnitSystem.of(plan().unit()));
    return LayoutWriter.write(layout, findings(), reasons(), words, fixes);
  }
}
