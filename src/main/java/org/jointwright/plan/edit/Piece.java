package org.jointwright.plan.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Feature;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * A piece of an outline with what is known of it.
 *
 * @param edge where it runs
 * @param setting what it is against, features counted from its own start
 * @param kept what the file said of the corner that it leaves
 * @param number the number of the edge that it is of, -1 where it is new
 */
record Piece(Edge edge, EdgeSetting setting, Kept kept, int number) {
  /** Bends less than this are none, radians. */
  private static final double STRAIGHT = 1e-6;

  /** A new straight piece over open ground. */
  static Piece straight(Point from, Point to) {
    return new Piece(new Segment(from, to), EdgeSetting.OPEN, Kept.NOTHING, -1);
  }

  /** The pieces of an outline, one for each edge. */
  static List<Piece> of(Outline outline, Map<Integer, EdgeSetting> settings) {
    List<Edge> edges = outline.ring().edges();
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      pieces.add(
          new Piece(
              edges.get(i),
              settings.getOrDefault(i, EdgeSetting.OPEN),
              outline.vertices().get(i).kept(),
              i));
    }
    return pieces;
  }

  /** The part of it from one share of its length to another. */
  Piece part(double from, double to) {
    if (from == 0 && to == 1) {
      return this;
    }
    double start = from * edge.length();
    List<Feature> features =
        setting.features().stream()
            .flatMap(f -> f.cut(start, to * edge.length()).stream())
            .map(f -> f.shifted(-start))
            .toList();
    return new Piece(
        edge.part(from, to),
        setting.withFeatures(features),
        from == 0 ? kept : Kept.NOTHING,
        number);
  }

  /** The same piece with its ends moved a hair, to where other pieces end. */
  Piece between(Point start, Point end) {
    if (start.equals(edge.start()) && end.equals(edge.end())) {
      return this;
    }
    Vertex from = edge instanceof Segment ? Vertex.at(start) : Vertex.arc(start, edge.at(0.5));
    return new Piece(from.edgeTo(end), setting, kept, number);
  }

  /** Whether the next piece runs straight on and is against the same. */
  private boolean runsOnTo(Piece next) {
    Point u = edge.direction(1);
    Point v = next.edge.direction(0);
    return edge instanceof Segment
        && next.edge instanceof Segment
        && Math.abs(u.cross(v)) < STRAIGHT
        && u.dot(v) > 0
        && setting.against() == next.setting.against()
        && setting.floats() == next.setting.floats();
  }

  private Piece with(Piece next) {
    double length = edge.length();
    List<Feature> features = new ArrayList<>(setting.features());
    next.setting.features().forEach(f -> features.add(f.shifted(length)));
    return new Piece(
        new Segment(edge.start(), next.edge.end()), setting.withFeatures(features), kept, number);
  }

  /** A closed round of pieces without corners that are none. */
  static List<Piece> withoutBreaks(List<Piece> round) {
    List<Piece> left = new ArrayList<>(round);
    for (int i = 0; i < left.size() && left.size() > 3; ) {
      int next = (i + 1) % left.size();
      if (left.get(i).runsOnTo(left.get(next))) {
        left.set(i, left.get(i).with(left.get(next)));
        left.remove(next);
        i = next == 0 ? i - 1 : i;
      } else {
        i++;
      }
    }
    return left;
  }

  /** The outline that a closed round of pieces makes. */
  static Outline outline(List<Piece> round) {
    List<Vertex> vertices = new ArrayList<>();
    for (Piece p : round) {
      Vertex v =
          p.edge instanceof Segment
              ? Vertex.at(p.edge.start())
              : Vertex.arc(p.edge.start(), p.edge.at(0.5));
      vertices.add(new Vertex(v.at(), v.via(), p.kept));
    }
    return new Outline(vertices);
  }

  /** What is known of the edges of that outline. */
  static Map<Integer, EdgeSetting> settings(List<Piece> round) {
    Map<Integer, EdgeSetting> settings = new TreeMap<>();
    for (int i = 0; i < round.size(); i++) {
      if (!round.get(i).setting.equals(EdgeSetting.OPEN)) {
        settings.put(i, round.get(i).setting);
      }
    }
    return settings;
  }
}
