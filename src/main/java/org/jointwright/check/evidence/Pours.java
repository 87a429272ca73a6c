package org.jointwright.check.evidence;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jointwright.check.face.Border;
import org.jointwright.check.face.Face;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.shape.Hull;

/** What is poured in one go: the panels between which no concrete has to wait. */
public final class Pours {
  private Pours() {}

  /**
   * The panels of one pour.
   *
   * @param panels the panels, tips of corners among them, in the slab's order
   */
  public record Placed(List<Face> panels) {
    /** Copies the list. */
    public Placed {
      panels = List.copyOf(panels);
    }

    /** Its area, square inches. */
    public double area() {
      return panels.stream().mapToDouble(f -> f.measures().area()).sum();
    }

    /** The smallest distance between two parallel boards that hold it, inches. */
    public double width() {
      return Hull.of(
              panels.stream()
                  .flatMap(f -> f.panel().ring().edges().stream())
                  .flatMap(e -> Stream.of(e.start(), e.at(0.5)))
                  .toList())
          .width();
    }
  }

  /**
   * The pours of a slab: construction and isolation joints part them, contraction joints do not.
   */
  public static List<Placed> of(Judged slab) {
    Set<String> cut =
        slab.slab().joints().stream()
            .filter(j -> j.kind() == JointKind.CONTRACTION)
            .map(Joint::id)
            .collect(Collectors.toSet());
    List<Border> within =
        Border.of(slab.faces()).stream().filter(b -> cut.contains(b.joint())).toList();
    List<Placed> pours = new ArrayList<>();
    Set<Face> done = new HashSet<>();
    for (Face first : slab.faces()) {
      if (done.add(first)) {
        pours.add(new Placed(spread(first, within, done)));
      }
    }
    return pours;
  }

  private static List<Face> spread(Face first, List<Border> within, Set<Face> done) {
    List<Face> pour = new ArrayList<>(List.of(first));
    for (int i = 0; i < pour.size(); i++) {
      Face face = pour.get(i);
      for (Border b : within) {
        if (b.one().equals(face) && done.add(b.other())) {
          pour.add(b.other());
        } else if (b.other().equals(face) && done.add(b.one())) {
          pour.add(b.one());
        }
      }
    }
    return pour;
  }
}
