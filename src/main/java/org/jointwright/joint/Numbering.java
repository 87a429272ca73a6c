package org.jointwright.joint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/**
 * The numbers of the joints, one run for the whole job: joints to cut first, in cutting order, then
 * formed ones, in the order of the pour, then filler, then box-outs with the filler round them.
 *
 * @param items in the order of their numbers, from 1
 */
public record Numbering(List<Item> items) {
  /** Paths whose ends and middles are no farther apart than this are one joint; inches. */
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
   * @param joints the joints: one, or several in one straight line, or those round a box-out, which
   *     may be none
   * @param path where it runs; the box-out's edge for {@link Work#BOX_OUT}
   * @param boxOut the box-out, for {@link Work#BOX_OUT} only
   */
  public record Item(
      int number, Work work, String slab, List<Joint> joints, Path path, Optional<BoxOut> boxOut) {
    /** Copies the list. */
    public Item {
      joints = List.copyOf(joints);
    }

    private Item numbered(int n) {
      return new Item(n, work, slab, joints, path, boxOut);
    }
  }

  /** The numbers for the joints and box-outs of {@code plan}. */
  public static Numbering of(Plan plan) {
    List<Item> all = new ArrayList<>();
    for (Work work : Work.values()) {
      List<Item> some = new ArrayList<>();
      for (Slab slab : plan.slabs()) {
        some.addAll(work == Work.BOX_OUT ? boxOuts(slab) : joints(slab, work));
      }
      for (int i = 0; i < some.size(); i++) {
        if (!covered(i, some)) {
          all.add(some.get(i).numbered(all.size() + 1));
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
                i.joints().stream().anyMatch(j -> i.slab().equals(slab) && isSame(j, joint))
                    || (i.boxOut().isEmpty()
                        && i.joints().getFirst().kind() == joint.kind()
                        && covers(i.path(), joint.path())))
        .findFirst();
  }

  /** The ids first: to compare all that joints have takes long where there are thousands. */
  private static boolean isSame(Joint one, Joint other) {
    return one.id().equals(other.id()) && one.equals(other);
  }

  /**
   * The number of a joint.
   *
   * @param slab the slab's id
   * @param joint the joint's id within it
   * @return empty where the slab has no such joint, or the joint no number
   */
  public Optional<Integer> of(Plan plan, String slab, String joint) {
    return plan.slab(slab).stream()
        .flatMap(s -> s.joints().stream())
        .filter(j -> j.id().equals(joint))
        .findFirst()
        .flatMap(j -> of(slab, j))
        .map(Item::number);
  }

  private static List<Item> joints(Slab slab, Work work) {
    List<Joint> mine =
        slab.joints().stream()
            .filter(j -> workOf(j.kind()) == work)
            .filter(j -> slab.boxOuts().stream().noneMatch(b -> round(b, j)))
            .toList();
    List<Straights.Run> runs =
        work == Work.SET
            ? mine.stream().map(j -> new Straights.Run(j.path(), List.of(j))).toList()
            : Straights.of(mine);
    // What is formed goes in the order of the pour, from one end of the slab to the other.
    List<Straights.Run> ordered = work == Work.SET ? runs : CuttingOrder.of(slab, runs);
    return ordered.stream()
        .map(r -> new Item(0, work, slab.id(), r.joints(), r.path(), Optional.empty()))
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
    Set<Ring> known = new HashSet<>();
    return slab.boxOuts().stream()
        .sorted(Comparator.comparing(BoxOut::fixed))
        // Objects that stand close together may share one, which is formed once.
        .filter(b -> known.add(b.outline().ring()))
        .map(
            b ->
                new Item(
                    0,
                    Work.BOX_OUT,
                    slab.id(),
                    slab.joints().stream()
                        .filter(j -> j.kind() == JointKind.ISOLATION && round(b, j))
                        .toList(),
                    new Path(b.outline().ring().edges()),
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

  /** Whether another of {@code items} runs along all of one: the same line listed twice. */
  private static boolean covered(int i, List<Item> items) {
    Item item = items.get(i);
    for (int k = 0; k < items.size(); k++) {
      Item other = items.get(k);
      boolean first = k < i || !covers(item.path(), other.path());
      if (k != i && item.boxOut().isEmpty() && first && covers(other.path(), item.path())) {
        return true;
      }
    }
    return false;
  }

  private static boolean covers(Path outer, Path inner) {
    for (Edge e : inner.edges()) {
      boolean isAlong =
          outer.isNear(e.start(), SAME)
              && outer.isNear(e.at(0.5), SAME)
              && outer.isNear(e.end(), SAME);
      if (!isAlong) {
        return false;
      }
    }
    return true;
  }
}
