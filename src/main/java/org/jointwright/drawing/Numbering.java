package org.jointwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/**
 * The numbers of the joints, one run for the whole job: joints to cut first, in cutting order, then
 * formed ones, then filler, then box-outs with the filler round them.
 *
 * @param items in the order of their numbers, from 1
 */
public record Numbering(List<Item> items) {
  /** Paths whose ends and middles are nearer than this are one joint; inches. */
  private static final double SAME = 0.5;

  /** Copies the list. */
  public Numbering {
    items = List.copyOf(items);
  }

  /** What is done there. */
  public enum Work {
    /** Tooled or sawn. */
    CUT,
    /** Formed: one pour ends. */
    FORM,
    /** Filler is set. */
    SET,
    /** A box-out is formed and filler set round it. */
    BOX_OUT
  }

  /**
   * One number.
   *
   * @param number the number, from 1
   * @param work what is done there
   * @param slab the slab it belongs to
   * @param joints the joints: one, or those round a box-out, which may be none
   * @param boxOut the box-out, for {@link Work#BOX_OUT} only
   */
  public record Item(
      int number, Work work, String slab, List<Joint> joints, Optional<BoxOut> boxOut) {
    /** Copies the list. */
    public Item {
      joints = List.copyOf(joints);
    }

    private Item numbered(int n) {
      return new Item(n, work, slab, joints, boxOut);
    }
  }

  /** The numbers for the joints and box-outs of {@code plan}. */
  public static Numbering of(Plan plan) {
    List<Item> all = new ArrayList<>();
    for (Work work : Work.values()) {
      for (Slab slab : plan.slabs()) {
        for (Item item : work == Work.BOX_OUT ? boxOuts(slab) : joints(slab, work)) {
          if (all.stream().noneMatch(i -> same(i, item))) {
            all.add(item.numbered(all.size() + 1));
          }
        }
      }
    }
    return new Numbering(all);
  }

  /** The number under which a joint of a slab is found. */
  public Optional<Item> of(String slab, Joint joint) {
    return items.stream()
        .filter(
            i ->
                i.joints().stream()
                    .anyMatch(
                        j -> (i.slab().equals(slab) && j.equals(joint)) || samePath(j, joint)))
        .findFirst();
  }

  private static List<Item> joints(Slab slab, Work work) {
    List<Joint> mine =
        slab.joints().stream()
            .filter(j -> workOf(j.kind()) == work)
            .filter(j -> slab.boxOuts().stream().noneMatch(b -> round(b, j)))
            .toList();
    List<Joint> ordered = work == Work.CUT ? CuttingOrder.of(slab, mine) : mine;
    return ordered.stream()
        .map(j -> new Item(0, work, slab.id(), List.of(j), Optional.empty()))
        .toList();
  }

  private static Work workOf(JointKind kind) {
    return switch (kind) {
      case CONTRACTION -> Work.CUT;
      case CONSTRUCTION -> Work.FORM;
      case ISOLATION -> Work.SET;
    };
  }

  private static List<Item> boxOuts(Slab slab) {
    return slab.boxOuts().stream()
        .sorted(Comparator.comparing(BoxOut::fixed))
        .map(
            b ->
                new Item(
                    0,
                    Work.BOX_OUT,
                    slab.id(),
                    slab.joints().stream()
                        .filter(j -> j.kind() == JointKind.ISOLATION && round(b, j))
                        .toList(),
                    Optional.of(b)))
        .toList();
  }

  /** Whether an isolation joint runs round a box-out and nowhere else. */
  private static boolean round(BoxOut boxOut, Joint joint) {
    if (joint.kind() != JointKind.ISOLATION) {
      return false;
    }
    Ring ring = boxOut.outline().ring();
    for (Edge e : joint.path().edges()) {
      for (Point p : List.of(e.start(), e.at(0.5), e.end())) {
        if (ring.distance(p) > SAME) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean same(Item a, Item b) {
    return a.work() == b.work()
        && a.boxOut().isEmpty()
        && b.boxOut().isEmpty()
        && samePath(a.joints().getFirst(), b.joints().getFirst());
  }

  private static boolean samePath(Joint a, Joint b) {
    Point a1 = a.path().start();
    Point a2 = a.path().end();
    Point b1 = b.path().start();
    Point b2 = b.path().end();
    boolean ends =
        (a1.distance(b1) < SAME && a2.distance(b2) < SAME)
            || (a1.distance(b2) < SAME && a2.distance(b1) < SAME);
    return ends
        && a.kind() == b.kind()
        && a.path().edges().stream().allMatch(e -> b.path().distance(e.at(0.5)) < SAME);
  }
}
