package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.layout.piece.Loop;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jspecify.annotations.Nullable;

/**
 * One of the two sides of a piece that the rungs of a {@link Ladder} stand on, from the ladder's
 * foot to its head, with the places where a rung may stand.
 */
final class Flank {
  /** What is nearer to the end of an edge than this is its end, inches. */
  private static final double NEAR = 0.01;

  private final List<Edge> edges;
  private final List<Integer> tags;
  private final List<Place> places;

  /**
   * A place where a rung may stand.
   *
   * @param edge the number of the edge on the flank that it is on, or at whose end it is
   * @param share where on that edge, over 0 up to 1; 0 only for the very first place
   * @param at the point
   * @param far how far along the flank it is, inches
   */
  record Place(int edge, double share, Point at, double far) {}

  private Flank(List<Edge> edges, List<Integer> tags, double step) {
    this.edges = edges;
    this.tags = tags;
    this.places = places(edges, step);
  }

  /**
   * The edges of a loop from number {@code first} on, up to but without {@code end}.
   *
   * @param step about how far apart places are, inches
   */
  static Flank ahead(Loop loop, int first, int end, double step) {
    List<Edge> edges = new ArrayList<>();
    List<Integer> tags = new ArrayList<>();
    for (int i = first; i < end; i++) {
      edges.add(loop.edge(i));
      tags.add(loop.tag(i));
    }
    return new Flank(edges, tags, step);
  }

  /** The same edges run the other way, from the last one back to the first. */
  static Flank back(Loop loop, int first, int end, double step) {
    List<Edge> edges = new ArrayList<>();
    List<Integer> tags = new ArrayList<>();
    for (int i = end - 1; i >= first; i--) {
      edges.add(loop.edge(i).reversed());
      tags.add(loop.tag(i));
    }
    return new Flank(edges, tags, step);
  }

  private static List<Place> places(List<Edge> edges, double step) {
    List<Place> found = new ArrayList<>();
    found.add(new Place(0, 0, edges.getFirst().start(), 0));
    double from = 0;
    for (int i = 0; i < edges.size(); i++) {
      Edge e = edges.get(i);
      int parts = Math.max(1, (int) Math.rint(e.length() / step));
      for (int k = 1; k <= parts; k++) {
        double share = (double) k / parts;
        found.add(new Place(i, share, e.at(share), from + share * e.length()));
      }
      from += e.length();
    }
    return found;
  }

  /** The places, from the first corner to the last one. */
  List<Place> places() {
    return places;
  }

  /** Whether a place is a corner of the flank. */
  boolean isCorner(Place p) {
    return p.share() == 0 || p.share() == 1;
  }

  /** Which way the flank runs at a place that is no corner. */
  Point direction(Place p) {
    return edges.get(p.edge()).direction(p.share());
  }

  /** Adds what lies between two places, run forwards or back, and its tags where they are asked. */
  void addBetween(
      Place from, Place to, boolean back, List<Edge> into, @Nullable List<Integer> tagged) {
    List<Edge> run = new ArrayList<>();
    List<Integer> runTags = new ArrayList<>();
    for (int i = from.edge(); i <= to.edge(); i++) {
      Edge e = edges.get(i);
      double a = i == from.edge() ? from.share() : 0;
      double b = i == to.edge() ? to.share() : 1;
      if ((b - a) * e.length() > NEAR) {
        run.add(e.part(a, b));
        runTags.add(tags.get(i));
      }
    }
    for (int k = 0; k < run.size(); k++) {
      int i = back ? run.size() - 1 - k : k;
      into.add(back ? run.get(i).reversed() : run.get(i));
      if (tagged != null) {
        tagged.add(runTags.get(i));
      }
    }
  }
}
