package org.jointwright.check.evidence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jointwright.check.face.Face;
import org.jointwright.check.face.Faces;
import org.jointwright.check.face.RoundBoxOuts;
import org.jointwright.joint.Cutout;
import org.jointwright.joint.Cutouts;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.joint.SlabLayout;
import org.jointwright.measure.Length;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.practice.Spacing;
import org.jointwright.practice.Tolerance;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Traced;
import org.jointwright.shape.jts.InscribedCircle;

/** One slab of a layout with all that the rules ask of it, each worked out when it is asked for. */
public final class Judged {
  private final Plan asked;
  private final Layout layout;
  private final SlabLayout laid;
  private final Once<Concrete> concrete;
  private final Once<List<Face>> faces;
  private final Once<CornerJoints> corners;
  private final Once<Length> spacing;

  /**
   * A slab to judge.
   *
   * @param asked the plan that was given: what the user locked and marked
   * @param layout what was laid
   * @param laid the slab's part of it
   */
  public Judged(Plan asked, Layout layout, SlabLayout laid) {
    this.asked = asked;
    this.layout = layout;
    this.laid = laid;
    concrete = new Once<>(this::findConcrete);
    faces = new Once<>(this::findFaces);
    corners = new Once<>(this::findCorners);
    spacing = new Once<>(this::findSpacing);
  }

  /** The slab with the joints and box-outs that were laid. */
  public Slab slab() {
    return laid.slab();
  }

  /** The slab as it was laid: its panels and what cut them. */
  public SlabLayout laid() {
    return laid;
  }

  /** The same slab with one joint left out. */
  public Judged without(String joint) {
    return withOnly(slab().joints().stream().filter(j -> !j.id().equals(joint)).toList());
  }

  /** The same slab with these joints and no others. */
  public Judged withOnly(List<Joint> others) {
    Layout bare = Layouts.of(plan().withSlab(slab().id(), s -> s.withLaid(others, s.boxOuts())));
    return new Judged(asked, bare, bare.slab(slab().id()).orElseThrow());
  }

  /** The plan that was laid. */
  public Plan plan() {
    return layout.plan();
  }

  /** The joints that the user locked in the plan that was given. */
  public List<Joint> locked() {
    return asked.slab(slab().id()).map(Slab::lockedJoints).orElse(List.of());
  }

  /** Where the slab has concrete. */
  public Concrete concrete() {
    return concrete.get();
  }

  /** The panels as the rules see them; hairs between lines that were meant as one left out. */
  public List<Face> faces() {
    return faces.get();
  }

  /** Its corner joints and the tips they cut off. */
  public CornerJoints corners() {
    return corners.get();
  }

  /** Whether a panel is a tip that a corner joint cuts off. */
  public boolean isTip(Face face) {
    return corners().tips().contains(face.id());
  }

  /** The panels that are no tips. */
  public List<Face> panels() {
    return faces().stream().filter(f -> !isTip(f)).toList();
  }

  /** The largest panel that is no tip; empty where there is none. */
  public Optional<Face> largestPanel() {
    return panels().stream().max(Comparator.comparingDouble(f -> f.measures().area()));
  }

  /** The longest a panel may be. */
  public Length spacing() {
    return spacing.get();
  }

  /** Where contraction joints end on each other, corner joints left out. */
  public List<Meetings.Meeting> meetings() {
    Set<String> contraction =
        slab().joints().stream()
            .filter(j -> j.kind() == JointKind.CONTRACTION)
            .map(Joint::id)
            .collect(Collectors.toSet());
    return Meetings.of(faces(), contraction).stream()
        .filter(m -> !corners().joints().contains(m.joint()))
        .toList();
  }

  /** Where its joints end on edges that it shares with other slabs. */
  public List<LineUps.End> lineUps() {
    return new LineUps(layout, fillerOfAllSlabs()).of(laid);
  }

  /** The slab's joints that have a length, arcs that came as chords found again. */
  public List<Joint> joints() {
    return slab().joints().stream()
        .map(j -> j.withPath(Traced.path(j.path())))
        .filter(j -> j.path().length() >= Tolerance.LENGTH_INCHES)
        .toList();
  }

  /** The edges of this slab's joints of one kind. */
  public List<Edge> edgesOf(JointKind kind) {
    return joints().stream()
        .filter(j -> j.kind() == kind)
        .flatMap(j -> j.path().edges().stream())
        .toList();
  }

  /** The isolation joints of every slab: those of a neighbour serve a shared edge too. */
  public List<Edge> fillerOfAllSlabs() {
    return layout.slabs().stream()
        .flatMap(s -> s.joints().stream())
        .filter(j -> j.kind() == JointKind.ISOLATION)
        .flatMap(j -> Traced.path(j.path()).edges().stream())
        .toList();
  }

  /** The edges of the other slabs and their openings. */
  public List<Edge> edgesOfOtherSlabs() {
    List<Edge> edges = new ArrayList<>();
    for (Slab s : plan().slabs()) {
      if (!s.id().equals(slab().id())) {
        edges.addAll(new Concrete(s.region(), List.of()).edges());
      }
    }
    return edges;
  }

  private Concrete findConcrete() {
    return Concrete.of(slab(), Cutouts.of(plan(), slab()));
  }

  private List<Face> findFaces() {
    Set<String> filler =
        slab().joints().stream()
            .filter(j -> j.kind() == JointKind.ISOLATION)
            .map(Joint::id)
            .collect(Collectors.toSet());
    List<Edge> edges = concrete().edges();
    Set<String> round =
        concrete().cutouts().stream()
            .filter(c -> RoundBoxOuts.isRound(c.ring(), edges))
            .map(Cutout::fixed)
            .collect(Collectors.toSet());
    return new Faces(filler, round).of(laid.panels());
  }

  private CornerJoints findCorners() {
    List<Joint> marks =
        asked.slab(slab().id()).map(Slab::joints).orElse(List.of()).stream()
            .filter(j -> j.purpose() == Purpose.CORNER)
            .toList();
    return CornerJoints.of(slab(), marks, faces());
  }

  private Length findSpacing() {
    double width =
        Spacing.needsWidth(slab().jointing()) ? InscribedCircle.of(slab().region()).diameter() : 0;
    return Spacing.longest(slab().thickness(), slab().jointing(), width);
  }
}
