package org.jointwright.plan.edit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Path;

/**
 * The slabs whose joints a hand has changed since they were laid. Whoever did that has looked at
 * all of them, so what is done to the plan later lays none of them elsewhere.
 *
 * @param standing slabs whose shape is as it was before the last step: their joints stay
 * @param following slabs whose shape the last step has changed: their joints go along with it
 */
public record ByHand(Set<String> standing, Set<String> following) {
  /** No slab. */
  public static final ByHand NONE = new ByHand(Set.of(), Set.of());

  /** Copies the sets. */
  public ByHand {
    standing = Set.copyOf(standing);
    following = Set.copyOf(following);
  }

  /** The slabs of the plan as it is now. */
  public static ByHand of(History history) {
    Plan first = history.past().isEmpty() ? history.now() : history.past().getFirst().before();
    Set<String> touched = new TreeSet<>();
    for (Slab s : first.slabs()) {
      if (cut(s).stream().anyMatch(Joint::locked)) {
        touched.add(s.id());
      }
    }
    for (History.Step step : history.past()) {
      for (Edit e : parts(step.edit())) {
        look(e, step, touched);
      }
    }
    Set<String> standing = new TreeSet<>();
    Set<String> following = new TreeSet<>();
    for (Slab s : history.now().slabs()) {
      if (touched.contains(s.id())) {
        (isAsItWas(history, s) ? standing : following).add(s.id());
      }
    }
    return new ByHand(standing, following);
  }

  /**
   * The plan as it is now, the locked joints of slabs whose shape has changed run on or cut off
   * where their rim is: they are to be laid there.
   */
  public Plan alongIn(History history) {
    Plan plan = history.now();
    for (Slab now : history.now().slabs()) {
      Optional<Slab> was =
          following.contains(now.id()) && history.canUndo()
              ? history.past().getLast().before().slab(now.id())
              : Optional.empty();
      plan = was.isEmpty() ? plan : plan.withSlab(now.id(), s -> JointsByHand.along(was.get(), s));
    }
    return plan;
  }

  /**
   * The same while what was done before is not laid yet: a slab that goes along with another shape
   * then goes along still.
   *
   * @param isReshaped whether a slab of that name has another shape than the one it is laid in;
   *     what a hand has done to any other since stays as it is
   */
  public ByHand after(ByHand before, Predicate<String> isReshaped) {
    Set<String> going = new HashSet<>(following);
    standing.stream()
        .filter(s -> !before.standing.contains(s) && isReshaped.test(s))
        .forEach(going::add);
    Set<String> left = new HashSet<>(standing);
    left.removeAll(going);
    return new ByHand(left, going);
  }

  private static List<Edit> parts(Edit edit) {
    return switch (edit) {
      case Named n -> parts(n.edit());
      case Together t -> t.edits().stream().flatMap(e -> parts(e).stream()).toList();
      default -> List.of(edit);
    };
  }

  private static void look(Edit edit, History.Step step, Set<String> touched) {
    switch (edit) {
      case JointEdit.Mend mend -> {
        if (!isSame(cut(step.before(), mend.slab()), cut(mend.joints()))) {
          touched.add(mend.slab());
        }
      }
      case JointEdit.Lay lay -> look(lay, step.before(), touched);
      case JointEdit.Lock l -> {
        // Whoever has unlocked the last one has given all of them back.
        if (step.after()
            .slab(l.slab())
            .filter(s -> cut(s).stream().anyMatch(Joint::locked))
            .isEmpty()) {
          touched.remove(l.slab());
        }
      }
      case JointEdit.Add a -> touched.add(a.slab());
      case JointEdit.AddCornerJoint a -> touched.add(a.slab());
      case JointEdit.Remove r -> touched.add(r.slab());
      case JointEdit.Move m -> touched.add(m.slab());
      case JointEdit.SetKind k -> touched.add(k.slab());
      case SlabEdit.Rename r -> {
        if (touched.remove(r.id())) {
          touched.add(r.to());
        }
      }
      case SlabEdit.Remove r -> touched.remove(r.id());
      default -> {}
    }
  }

  /**
   * Joints put in place of a slab’s own: those changed here and there, or all of them laid anew.
   */
  private static void look(JointEdit.Lay lay, Plan before, Set<String> touched) {
    List<Joint> were = cut(before, lay.slab());
    List<Joint> are = cut(lay.joints());
    Set<Path> stood = new HashSet<>();
    Set<Path> held = new HashSet<>();
    for (Joint j : were) {
      stood.add(j.path());
      if (j.locked()) {
        held.add(j.path());
      }
    }
    boolean isSame = isSame(were, are);
    boolean isHeldAnew = are.stream().anyMatch(j -> j.locked() && !held.contains(j.path()));
    boolean isLessOne =
        are.stream().allMatch(j -> stood.contains(j.path()))
            && are.stream().anyMatch(j -> !j.locked());
    if (isHeldAnew || (isLessOne && !isSame)) {
      touched.add(lay.slab());
    } else if (!isSame) {
      touched.remove(lay.slab());
    }
  }

  private static boolean isSame(List<Joint> were, List<Joint> are) {
    Set<Path> stood = new HashSet<>();
    were.forEach(j -> stood.add(j.path()));
    return were.size() == are.size() && are.stream().allMatch(j -> stood.contains(j.path()));
  }

  private static List<Joint> cut(Plan plan, String slab) {
    return plan.slab(slab).map(ByHand::cut).orElse(List.of());
  }

  private static List<Joint> cut(Slab slab) {
    return cut(slab.joints());
  }

  private static List<Joint> cut(List<Joint> joints) {
    return joints.stream().filter(ByHand::isCut).toList();
  }

  private static boolean isCut(Joint joint) {
    return joint.kind() != JointKind.ISOLATION;
  }

  /** Whether the last step has left alone what a slab’s joints stand on and were asked for. */
  private static boolean isAsItWas(History history, Slab slab) {
    if (history.past().isEmpty()) {
      return true;
    }
    History.Step last = history.past().getLast();
    String id =
        parts(last.edit()).stream()
            .filter(e -> e instanceof SlabEdit.Rename r && r.to().equals(slab.id()))
            .map(e -> ((SlabEdit.Rename) e).id())
            .findFirst()
            .orElse(slab.id());
    return last.before()
        .slab(id)
        .filter(
            was ->
                was.outline().equals(slab.outline())
                    && was.openings().stream()
                        .map(o -> o.outline())
                        .toList()
                        .equals(slab.openings().stream().map(o -> o.outline()).toList())
                    && was.jointing().preference().equals(slab.jointing().preference())
                    && shapes(last.before().fixedIn(id))
                        .equals(shapes(history.now().fixedIn(slab.id()))))
        .isPresent();
  }

  private static List<FixedShape> shapes(List<FixedObject> objects) {
    List<FixedShape> shapes = new ArrayList<>();
    objects.forEach(o -> shapes.add(o.shape()));
    return shapes;
  }
}
