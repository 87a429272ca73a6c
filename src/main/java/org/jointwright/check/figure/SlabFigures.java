package org.jointwright.check.figure;

import java.util.List;
import org.jointwright.check.evidence.JointEnds;
import org.jointwright.check.evidence.Judged;
import org.jointwright.check.evidence.LineUps;
import org.jointwright.check.evidence.Meetings.Meeting;
import org.jointwright.check.face.Face;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.JointKind;
import org.jointwright.practice.Cost;

/**
 * The figures of one slab's layout. Tips that corner joints cut off, and those joints, are left
 * out.
 *
 * @param slab the slab's id
 * @param feet contraction joint, feet
 * @param tees joints that end on the side of another with none going on from the far side
 * @param ys meetings of three joints of which none runs through
 * @param cv the spread of panel areas: population standard deviation over mean; 0 without panels
 * @param meanAspect the panels' mean of longer side over shorter; 1 without panels
 * @param ends how joints end on edges
 * @param missed joint ends that miss the neighbouring slab's across a shared edge
 * @param panels how many panels
 * @param tips how many tips
 */
public record SlabFigures(
    String slab,
    double feet,
    int tees,
    int ys,
    double cv,
    double meanAspect,
    EndCount ends,
    int missed,
    int panels,
    int tips) {
  private static final double INCHES = 12;

  /** The figures of a slab. */
  public static SlabFigures of(Judged slab) {
    List<Face> panels = slab.panels();
    List<Meeting> meetings = slab.meetings();
    int ys = (int) meetings.stream().filter(Meeting::isY).count();
    return new SlabFigures(
        slab.slab().id(),
        inches(slab) / INCHES,
        meetings.size() - ys,
        ys,
        spread(slab),
        panels.stream().mapToDouble(f -> f.measures().aspect()).average().orElse(1),
        EndCount.of(JointEnds.of(slab), UnitSystem.of(slab.plan().unit())),
        (int) slab.lineUps().stream().filter(LineUps.End::misses).count(),
        panels.size(),
        slab.faces().size() - panels.size());
  }

  private static double inches(Judged slab) {
    return slab.joints().stream()
        .filter(j -> j.kind() == JointKind.CONTRACTION)
        .filter(j -> !slab.corners().joints().contains(j.id()))
        .mapToDouble(j -> j.path().length())
        .sum();
  }

  /** The spread of a slab's panel areas: population standard deviation over mean, tips left out. */
  public static double spread(Judged slab) {
    List<Face> panels = slab.panels();
    double mean = panels.stream().mapToDouble(f -> f.measures().area()).average().orElse(0);
    double variance =
        panels.stream()
            .mapToDouble(f -> Math.pow(f.measures().area() - mean, 2))
            .average()
            .orElse(0);
    return mean == 0 ? 0 : Math.sqrt(variance) / mean;
  }

  /** What it costs, feet: the joints, and more for tees, missed neighbours and uneven panels. */
  public double cost() {
    return feet
        + tees * Cost.TEE.value().feet()
        + ys * Cost.Y.value().feet()
        + missed * Cost.MISSED.value().feet()
        + Cost.UNEVEN.value() * feet * Math.max(0, cv - Cost.EVEN.value());
  }
}
