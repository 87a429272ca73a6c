package org.jointwright.designer.state;

import java.util.Comparator;
import java.util.Optional;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Feature;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.Ref;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/** Finds what is picked in a plan, and finds it again after the plan has changed. */
public final class Picks {
  /** A joint laid anew within this distance of the one that was picked is the same; inches. */
  private static final double SAME_JOINT = 1;

  /** One of the same name that runs so near was moved by a hand: twice 2 ft, inches. */
  private static final double MOVED = 48.5;

  private Picks() {}

  /**
   * What {@code pick} is in {@code plan}, or nothing where it is gone. A joint is found again by
   * where it runs, since joints laid anew may have other names.
   *
   * @param before the plan in which it was picked
   */
  public static Pick still(Plan plan, Pick pick, Plan before) {
    return switch (pick) {
      case Pick.Nothing n -> n;
      case Pick.WholeSlab s -> plan.slab(s.slab()).isPresent() ? s : Pick.NOTHING;
      case Pick.AtCorner c -> vertex(plan, c.corner()).isPresent() ? c : Pick.NOTHING;
      case Pick.AtEdge e -> vertex(plan, e.edge()).isPresent() ? e : Pick.NOTHING;
      case Pick.AtFixed f -> plan.fixedObject(f.id()).isPresent() ? f : Pick.NOTHING;
      case Pick.AtOpening o ->
          plan.slab(o.slab()).filter(s -> o.opening() < s.openings().size()).isPresent()
              ? o
              : Pick.NOTHING;
      case Pick.AtFeature f -> feature(plan, f).isPresent() ? f : Pick.NOTHING;
      case Pick.AtZone z ->
          plan.slab(z.slab()).filter(s -> z.zone() < s.keepClear().size()).isPresent()
              ? z
              : Pick.NOTHING;
      case Pick.AtGiven g -> g.joint() < plan.given().size() ? g : Pick.NOTHING;
      case Pick.Several s -> Things.pick(s.things().stream().filter(t -> t.isIn(plan)).toList());
      case Pick.AtPhoto p -> plan.photo().isPresent() ? p : Pick.NOTHING;
      case Pick.Scaling s -> plan.photo().isPresent() ? s : Pick.NOTHING;
      case Pick.AtJoint j ->
          joint(before, j)
              .flatMap(was -> same(plan, j.slab(), was).or(() -> moved(plan, j, was)))
              .orElse(Pick.NOTHING);
    };
  }

  /** What {@code pick} is in a plan that one edit made: joints keep their names there. */
  public static Pick named(Plan plan, Pick pick) {
    return pick instanceof Pick.AtJoint j
        ? (joint(plan, j).isPresent() ? j : Pick.NOTHING)
        : still(plan, pick, plan);
  }

  /** What stays picked at another step: what has facts there. At the section it is a slab. */
  public static Pick at(Step step, Plan plan, Pick pick) {
    Optional<String> slab =
        switch (pick) {
          case Pick.Nothing n -> Optional.empty();
          case Pick.WholeSlab s -> Optional.of(s.slab());
          case Pick.AtCorner c -> Optional.of(c.corner().slab());
          case Pick.AtEdge e -> Optional.of(e.edge().slab());
          case Pick.AtJoint j -> Optional.of(j.slab());
          case Pick.AtFixed f -> plan.fixedObject(f.id()).map(x -> x.slab());
          case Pick.AtOpening o -> Optional.of(o.slab());
          case Pick.AtFeature f -> Optional.of(f.edge().slab());
          case Pick.AtZone z -> Optional.of(z.slab());
          case Pick.AtGiven g -> Optional.empty();
          case Pick.Several s -> Optional.empty();
          case Pick.AtPhoto p -> Optional.empty();
          case Pick.Scaling s -> Optional.empty();
        };
    return switch (step) {
      case OUTLINE -> pick instanceof Pick.AtJoint ? Pick.NOTHING : pick;
      case SECTION ->
          slab.or(() -> plan.slabs().stream().map(Slab::id).findFirst())
              .<Pick>map(Pick.WholeSlab::new)
              .orElse(Pick.NOTHING);
      case JOINTS -> pick instanceof Pick.AtJoint ? pick : Pick.NOTHING;
      case ORDER, SHEETS -> Pick.NOTHING;
    };
  }

  private static Optional<Pick> same(Plan plan, String slab, Joint was) {
    return plan.slab(slab).stream()
        .flatMap(s -> s.joints().stream())
        .filter(j -> j.kind() == was.kind() && apart(j, was) <= SAME_JOINT)
        .min(Comparator.comparingDouble(j -> apart(j, was)))
        .map(j -> new Pick.AtJoint(slab, j.id()));
  }

  /** The joint of the same name, where a hand has moved it: undo gives it back as it was. */
  private static Optional<Pick> moved(Plan plan, Pick.AtJoint pick, Joint was) {
    return joint(plan, pick)
        .filter(j -> j.kind() == was.kind() && apart(j, was) <= MOVED)
        .map(j -> pick);
  }

  private static double apart(Joint a, Joint b) {
    return a.path().distance(b.path().edges().getFirst().at(0.5))
        + Math.min(a.path().distance(b.path().start()), a.path().distance(b.path().end()));
  }

  /** The joint that is picked. */
  public static Optional<Joint> joint(Plan plan, Pick.AtJoint pick) {
    return plan.slab(pick.slab()).stream()
        .flatMap(s -> s.joints().stream())
        .filter(j -> j.id().equals(pick.joint()))
        .findFirst();
  }

  /** The ring that a vertex belongs to. */
  public static Optional<Outline> outline(Plan plan, Ref ref) {
    Optional<Slab> slab = plan.slab(ref.slab());
    return ref.ring() == Ref.OUTLINE
        ? slab.map(Slab::outline)
        : slab.filter(s -> ref.ring() < s.openings().size())
            .map(s -> s.openings().get(ref.ring()).outline());
  }

  /** The edge that leaves a vertex. */
  public static Optional<Edge> edge(Plan plan, Ref ref) {
    return outline(plan, ref)
        .filter(o -> ref.index() < o.vertices().size())
        .map(o -> o.ring().edges().get(ref.index()));
  }

  /** What is known of the edge that leaves a vertex. */
  public static Optional<EdgeSetting> setting(Plan plan, Ref ref) {
    return edge(plan, ref)
        .flatMap(e -> plan.slab(ref.slab()))
        .map(
            s ->
                ref.ring() == Ref.OUTLINE
                    ? s.edge(ref.index())
                    : s.openings().get(ref.ring()).edge(ref.index()));
  }

  /** A point that stands for what is picked: a corner, or the middle; empty where it is gone. */
  public static Optional<Point> place(Plan plan, Pick pick) {
    return switch (pick) {
      case Pick.AtCorner c -> vertex(plan, c.corner());
      case Pick.AtEdge e -> edge(plan, e.edge()).map(x -> x.at(0.5));
      case Pick.AtJoint j -> joint(plan, j).map(x -> x.path().edges().getFirst().at(0.5));
      case Pick.AtFeature f -> along(plan, f).map(x -> x.at(0.5));
      default -> Things.box(plan, Things.of(pick)).map(Box::centre);
    };
  }

  /** The room that what is picked takes; empty where nothing is, and for a corner. */
  public static Optional<Box> room(Plan plan, Pick pick) {
    return switch (pick) {
      case Pick.AtCorner c -> Optional.empty();
      case Pick.AtEdge e -> edge(plan, e.edge()).map(Edge::box);
      case Pick.AtJoint j ->
          joint(plan, j).flatMap(x -> x.path().edges().stream().map(Edge::box).reduce(Box::with));
      case Pick.AtFeature f -> along(plan, f).map(Edge::box);
      default -> Things.box(plan, Things.of(pick));
    };
  }

  /** What is marked on a side. */
  public static Optional<Feature> feature(Plan plan, Pick.AtFeature pick) {
    return setting(plan, pick.edge())
        .map(EdgeSetting::features)
        .filter(all -> pick.feature() < all.size())
        .map(all -> all.get(pick.feature()));
  }

  /** Where what is marked on a side lies; shorter where the side has become so. */
  public static Optional<Edge> along(Plan plan, Pick.AtFeature pick) {
    return edge(plan, pick.edge())
        .flatMap(
            e ->
                feature(plan, pick)
                    .map(
                        f ->
                            e.part(
                                Math.min(1, f.from() / e.length()),
                                Math.min(1, f.to() / e.length()))));
  }

  /** Where a vertex stands. */
  public static Optional<Point> vertex(Plan plan, Ref ref) {
    return outline(plan, ref)
        .filter(o -> ref.index() < o.vertices().size())
        .map(o -> o.vertices().get(ref.index()).at());
  }
}
