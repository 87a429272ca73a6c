package org.jointwright.layout.keep;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jointwright.joint.Panel;
import org.jointwright.joint.Side;
import org.jointwright.joint.SlabLayout;
import org.jointwright.joint.Source;
import org.jointwright.layout.piece.Carriers;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Ground;
import org.jointwright.layout.piece.Laid;
import org.jointwright.layout.piece.Loop;
import org.jointwright.layout.piece.Move;
import org.jointwright.layout.piece.Piece;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/** A layout as the engine's own drafts are, so that both are measured with one measure. */
public final class AsDraft {
  /** An end no farther from a line stands on it, inches. */
  private static final double ON = 0.05;

  private final Ground ground;
  private final UnaryOperator<Edge> bench;
  private final Map<Source, Integer> tags = new HashMap<>();
  private final List<Joint> joints = new ArrayList<>();
  private final List<Edge> paths = new ArrayList<>();

  private AsDraft(SlabLayout layout, Ground ground, UnaryOperator<Edge> bench) {
    this.ground = ground;
    this.bench = bench;
    for (int h = 0; h < ground.sources().size(); h++) {
      tags.put(ground.sources().get(h), -1 - h);
    }
    Set<Source> sources = new HashSet<>();
    for (Panel p : layout.panels()) {
      p.outer().forEach(s -> sources.add(s.source()));
    }
    for (Joint j : layout.joints()) {
      if (sources.contains(new Source.OnJoint(j.id()))) {
        for (Edge e : j.path().edges()) {
          tags.putIfAbsent(new Source.OnJoint(j.id()), joints.size());
          joints.add(j);
          paths.add(bench.apply(e));
        }
      }
    }
  }

  /**
   * The pieces of a layout alone, for what they break.
   *
   * @param ground the slab's ground
   * @param bench brings an edge of the plan to where the ground stands
   */
  public static List<Piece> pieces(SlabLayout layout, Ground ground, UnaryOperator<Edge> bench) {
    return new AsDraft(layout, ground, bench).pieces(layout);
  }

  /** The whole of a layout, its joints' ends found again. */
  public static Draft of(SlabLayout layout, Ground ground, UnaryOperator<Edge> bench) {
    AsDraft made = new AsDraft(layout, ground, bench);
    return Draft.of(ground, made.pieces(layout), made.lines());
  }

  private List<Piece> pieces(SlabLayout layout) {
    List<Piece> found = new ArrayList<>();
    for (Panel p : layout.panels()) {
      found.add(new Piece(ground, loop(p.outer()), p.holes().stream().map(this::loop).toList()));
    }
    return found;
  }

  private Loop loop(List<Side> sides) {
    List<Edge> edges = new ArrayList<>(sides.size());
    List<Integer> along = new ArrayList<>(sides.size());
    for (Side s : sides) {
      edges.add(bench.apply(s.edge()));
      // What is no hard edge of the ground is a joint of whatever kind.
      along.add(tags.getOrDefault(s.source(), joints.size()));
    }
    return new Loop(edges, along);
  }

  private List<Laid> lines() {
    List<Laid> found = new ArrayList<>();
    for (int i = 0; i < joints.size(); i++) {
      Joint j = joints.get(i);
      Edge path = paths.get(i);
      Move move = new Move(Carriers.of(path), path.at(0.5), Move.Reach.PIECE);
      JointKind kind = Refit.isPattern(j) ? JointKind.CONTRACTION : j.kind();
      found.add(
          new Laid(
              move,
              path,
              tag(i, path.start()),
              tag(i, path.end()),
              kind,
              j.locked(),
              /* follows= */ false));
    }
    return found;
  }

  /** What an end of a joint stands on. */
  private int tag(int joint, Point end) {
    for (int h = 0; h < ground.edges().size(); h++) {
      if (isOn(ground.edges().get(h), end)) {
        return -1 - h;
      }
    }
    for (int k = 0; k < paths.size(); k++) {
      if (k != joint && isOn(paths.get(k), end)) {
        return k;
      }
    }
    return joint;
  }

  private static boolean isOn(Edge edge, Point p) {
    return edge.box().grown(ON).holds(p) && edge.distance(p) <= ON;
  }
}
