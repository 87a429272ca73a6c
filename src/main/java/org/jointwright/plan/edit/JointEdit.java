package org.jointwright.plan.edit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Path;

/** An edit of a slab's joints. */
public sealed interface JointEdit extends Edit {
  /** Puts freshly laid joints and box-outs in place of a slab's own. */
  record Lay(String slab, List<Joint> joints, List<BoxOut> boxOuts) implements JointEdit {
    /** Copies the lists. */
    public Lay {
      joints = List.copyOf(joints);
      boxOuts = List.copyOf(boxOuts);
    }

    @Override
    public Plan applyTo(Plan before) {
      return before.withSlab(slab, s -> s.withLaid(joints, boxOuts));
    }
  }

  /**
   * Puts a slab's joints and box-outs as a hand has mended them: a part of them moved, added or
   * taken out, the others as they were. Unlike what is laid, it was chosen and looked at.
   */
  record Mend(String slab, List<Joint> joints, List<BoxOut> boxOuts) implements JointEdit {
    /** Copies the lists. */
    public Mend {
      joints = List.copyOf(joints);
      boxOuts = List.copyOf(boxOuts);
    }

    @Override
    public Plan applyTo(Plan before) {
      return before.withSlab(slab, s -> s.withLaid(joints, boxOuts));
    }
  }

  /** Adds a joint and locks it; an id that is taken is made new. */
  record Add(String slab, Joint joint) implements JointEdit {
    @Override
    public Plan applyTo(Plan before) {
      return before.withSlab(
          slab,
          s -> {
            Set<String> taken = new HashSet<>();
            s.joints().forEach(j -> taken.add(j.id()));
            String id = joint.id();
            for (int n = 1; taken.contains(id); n++) {
              id = "J" + n;
            }
            List<Joint> joints = new ArrayList<>(s.joints());
            joints.add(joint.withId(id).withLocked(true));
            return s.withLaid(joints, s.boxOuts());
          });
    }
  }

  /**
   * Cuts the tip off a corner of a slab's outline: a straight contraction joint across it, locked,
   * in place of any other corner joint there.
   *
   * @param slab the slab's id
   * @param corner the number of the corner
   * @param legs how far from the corner both ends stand, inches along the edges; less than the
   *     shorter of the two
   */
  record AddCornerJoint(String slab, int corner, double legs) implements JointEdit {
    @Override
    public Plan applyTo(Plan before) {
      return CornerJoint.across(before, slab, corner, legs);
    }
  }

  /** Takes a joint out; the others stay, but what ended on it alone runs on to the next line. */
  record Remove(String slab, String joint) implements JointEdit {
    @Override
    public Plan applyTo(Plan before) {
      return before.withSlab(slab, s -> JointsByHand.without(s, joint));
    }
  }

  /**
   * Moves a joint by hand, which locks it. The others stay, but ends that stood on it go along with
   * it; what runs into an opening or a box-out is cut there and goes on behind it.
   *
   * @param slab the slab's id
   * @param joint the joint's id
   * @param to where it runs now
   * @param along where the other joints of its line run then, by their ids: a line is snapped as
   *     one, so it moves as one
   */
  record Move(String slab, String joint, Path to, Map<String, Path> along) implements JointEdit {
    /** Copies the map. */
    public Move {
      along = Map.copyOf(along);
    }

    /** Moves a joint alone. */
    public Move(String slab, String joint, Path to) {
      this(slab, joint, to, Map.of());
    }

    @Override
    public Plan applyTo(Plan before) {
      Map<String, Path> all = new HashMap<>(along);
      all.put(joint, to);
      return before.withSlab(slab, s -> JointsByHand.moved(s, all));
    }

    @Override
    public Optional<Edit> mergedWith(Edit later) {
      return later instanceof Move m && m.slab.equals(slab) && m.joint.equals(joint)
          ? Optional.of(later)
          : Optional.empty();
    }
  }

  /** Makes a joint one of another kind, which locks it. */
  record SetKind(String slab, String joint, JointKind kind) implements JointEdit {
    @Override
    public Plan applyTo(Plan before) {
      return changed(before, slab, joint, j -> j.withKind(kind).withLocked(true));
    }
  }

  /** Locks a joint where it is, or gives it back. */
  record Lock(String slab, String joint, boolean locked) implements JointEdit {
    @Override
    public Plan applyTo(Plan before) {
      return changed(before, slab, joint, j -> j.withLocked(locked));
    }
  }

  private static Plan changed(Plan before, String slab, String joint, UnaryOperator<Joint> change) {
    return before.withSlab(
        slab,
        s -> {
          if (s.joints().stream().noneMatch(j -> j.id().equals(joint))) {
            throw new IllegalArgumentException("slab " + slab + " has no joint " + joint);
          }
          return s.withLaid(
              s.joints().stream().map(j -> j.id().equals(joint) ? change.apply(j) : j).toList(),
              s.boxOuts());
        });
  }
}
