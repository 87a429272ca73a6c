package org.jointwright.check.face;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jointwright.joint.Panel;
import org.jointwright.joint.PanelMeasures;
import org.jointwright.joint.Side;
import org.jointwright.joint.Source;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/** Makes faces of panels: measures them and tells edges of concrete from joints. */
public final class Faces {
  /** A piece with less area is a hair between two lines that were meant as one, square inches. */
  private static final double HAIR_AREA = 0.144;

  /** A piece narrower than this is such a hair too, inches. */
  private static final double HAIR_WIDTH = 1.0 / 16;

  private static final double SAME = 0.1;

  private final Map<Point, List<Edge>> leaving = new HashMap<>();
  private final Set<String> filler;
  private final Set<String> round;

  /**
   * Ready to make faces.
   *
   * @param filler the ids of the isolation joints
   * @param round the fixed objects whose box-out is round though made of straight pieces
   */
  public Faces(Set<String> filler, Set<String> round) {
    this.filler = filler;
    this.round = round;
  }

  /** The faces of these panels, hairs left out. */
  public List<Face> of(List<Panel> panels) {
    Map<Panel, PanelMeasures> kept = new java.util.LinkedHashMap<>();
    for (Panel p : panels) {
      PanelMeasures m = PanelMeasures.of(p);
      if (m.area() >= HAIR_AREA && m.width() >= HAIR_WIDTH) {
        kept.put(p, m);
        loops(p)
            .flatMap(List::stream)
            .forEach(
                s ->
                    leaving
                        .computeIfAbsent(s.edge().start(), k -> new ArrayList<>())
                        .add(s.edge()));
      }
    }
    List<Face> faces = new ArrayList<>();
    kept.forEach((p, m) -> faces.add(face(p, m)));
    return faces;
  }

  private Face face(Panel panel, PanelMeasures measures) {
    List<Loop> loops =
        loops(panel).map(sides -> new Loop(sides.stream().map(this::step).toList())).toList();
    return new Face(panel, measures, loops, Inside.of(panel.region()));
  }

  private static Stream<List<Side>> loops(Panel panel) {
    return Stream.concat(Stream.of(panel.outer()), panel.holes().stream());
  }

  private Step step(Side side) {
    boolean soft = side.source() instanceof Source.OnBoxOut b && round.contains(b.fixed());
    return new Step(side.edge(), side.source(), isHard(side), soft);
  }

  private boolean isHard(Side side) {
    return switch (side.source()) {
      case Source.OnJoint j -> filler.contains(j.joint()) && !hasOtherSide(side.edge());
      case Source.OnOutline o -> true;
      case Source.OnOpening o -> true;
      case Source.OnBoxOut b -> true;
    };
  }

  private boolean hasOtherSide(Edge edge) {
    return leaving.getOrDefault(edge.end(), List.of()).stream()
        .anyMatch(e -> e.end().equals(edge.start()) && e.at(0.5).distance(edge.at(0.5)) <= SAME);
  }
}
