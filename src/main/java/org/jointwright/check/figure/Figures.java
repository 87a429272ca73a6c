package org.jointwright.check.figure;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import org.jointwright.check.evidence.Judged;
import org.jointwright.joint.Layout;
import org.jointwright.plan.Plan;

/**
 * The figures of a layout, slab by slab and in all.
 *
 * @param slabs one for each slab, in the layout's order
 */
public record Figures(List<SlabFigures> slabs) {
  /** Copies the list. */
  public Figures {
    slabs = List.copyOf(slabs);
  }

  /** The figures of the joints that are in a plan. */
  public static Figures of(Layout layout) {
    return of(layout.plan(), layout);
  }

  /**
   * The figures of a layout.
   *
   * @param asked the plan that was given, with the corner joints its user marked
   * @param layout what was laid for it
   */
  public static Figures of(Plan asked, Layout layout) {
    return new Figures(
        layout.slabs().stream()
            .map(slab -> SlabFigures.of(new Judged(asked, layout, slab)))
            .toList());
  }

  /** The figures of the slab of that name. */
  public Optional<SlabFigures> slab(String id) {
    return slabs.stream().filter(s -> s.slab().equals(id)).findFirst();
  }

  /** Contraction joint in all, feet; corner joints left out. */
  public double feet() {
    return sum(SlabFigures::feet);
  }

  /** Tees in all. */
  public int tees() {
    return count(SlabFigures::tees);
  }

  /** Meetings of three joints, none running through, in all. */
  public int ys() {
    return count(SlabFigures::ys);
  }

  /** Panels in all, tips of corners left out. */
  public int panels() {
    return count(SlabFigures::panels);
  }

  /** Tips in all that corner joints cut off. */
  public int tips() {
    return count(SlabFigures::tips);
  }

  /** Joints in all that miss the neighbouring slab's across a shared edge. */
  public int missed() {
    return count(SlabFigures::missed);
  }

  /** The spread of panel areas in the slab where it is largest: slabs may differ in size. */
  public double cv() {
    return slabs.stream().mapToDouble(SlabFigures::cv).max().orElse(0);
  }

  /** The mean over all panels of longer side over shorter; 1 without panels. */
  public double meanAspect() {
    int panels = panels();
    return panels == 0 ? 1 : sum(s -> s.meanAspect() * s.panels()) / panels;
  }

  /** The share of joint ends on edges that are square to the edge; 1 without ends. */
  public double squareShare() {
    return share(e -> e.ends().square(), e -> e.ends().onEdges());
  }

  /** The share of joint ends on straight edges that stand on whole marks; 1 without ends. */
  public double wholeShare() {
    return share(e -> e.ends().whole(), e -> e.ends().onStraight());
  }

  /** What it costs, feet: the slabs' costs added up. */
  public double cost() {
    return sum(SlabFigures::cost);
  }

  private double share(ToIntFunction<SlabFigures> part, ToIntFunction<SlabFigures> whole) {
    return EndCount.share(count(part), count(whole));
  }

  private double sum(ToDoubleFunction<SlabFigures> figure) {
    return slabs.stream().mapToDouble(figure).sum();
  }

  private int count(ToIntFunction<SlabFigures> figure) {
    return slabs.stream().mapToInt(figure).sum();
  }
}
