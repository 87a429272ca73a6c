package org.jointwright.layout.keep;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/**
 * The joints of a slab laid before, fitted to the slab as it is now: each line stands on what it
 * stood on. Nothing is searched and nothing is judged: whether the panels may stay is for the
 * caller to ask.
 */
public final class Refit {
  /** A joint that comes out shorter than this, and than half of what it was, is none, inches. */
  private static final double SHORTEST = 6;

  private final Asked asked;

  private Refit(Asked asked) {
    this.asked = asked;
  }

  /**
   * A joint before and now.
   *
   * @param before as it was
   * @param now as it is; the user's own where it is locked now
   */
  public record Kept(Joint before, Joint now) {}

  /**
   * The joints that make the pattern, in the order they had, the user's among them, filler and
   * shared edges left out; empty where they no longer stand on what they stood on.
   */
  public static Optional<List<Kept>> of(Asked asked) {
    return new Refit(asked).fitted();
  }

  /** Whether a joint is the engine's and of the pattern, not filler nor along a shared edge. */
  public static boolean isPattern(Joint joint) {
    return !joint.locked()
        && (joint.kind() == JointKind.CONTRACTION || joint.purpose() == Purpose.POUR);
  }

  private Optional<List<Kept>> fitted() {
    Optional<Rims> rims = Rims.matching(asked.before(), asked.now(), asked.boxes());
    Optional<Map<Joint, Joint>> locked = locked();
    if (rims.isEmpty() || locked.isEmpty()) {
      return Optional.empty();
    }
    Nodes nodes = new Nodes(rims.get());
    List<Track> tracks = new ArrayList<>();
    for (Joint j : asked.before().joints()) {
      Joint held = locked.get().get(j);
      boolean pattern = held == null ? isPattern(j) : j.kind() != JointKind.ISOLATION;
      if (pattern) {
        if (j.path().edges().size() != 1 || (held != null && held.path().edges().size() != 1)) {
          return Optional.empty();
        }
        Optional<Edge> edge = Optional.ofNullable(held).map(h -> h.path().edges().getFirst());
        tracks.add(
            new Track(
                tracks.size(), j, edge, nodes.at(j.path().start()), nodes.at(j.path().end())));
      }
    }
    List<Strand> strands = Web.of(tracks, nodes.all());
    Marks marks = new Marks(asked.metric(), asked.marked());
    Solver solver = new Solver(rims.get(), nodes.all(), strands, marks);
    if (!solver.solve(asked.targetsBefore(), asked.targetsNow())) {
      return Optional.empty();
    }
    Map<Integer, Strand> strandOf = new HashMap<>();
    strands.forEach(s -> s.tracks().forEach(t -> strandOf.put(t.number(), s)));
    List<Kept> kept = new ArrayList<>();
    for (Track t : tracks) {
      Joint held = locked.get().get(t.joint());
      Strand strand = strandOf.get(t.number());
      Optional<Joint> now =
          held != null || strand == null ? Optional.ofNullable(held) : laid(t, strand);
      if (now.isEmpty()) {
        return Optional.empty();
      }
      kept.add(new Kept(t.joint(), now.get()));
    }
    return Optional.of(kept);
  }

  /**
   * The user's joints now by what they were; empty where one came from nowhere or went away: then
   * the user asks for something else.
   */
  private Optional<Map<Joint, Joint>> locked() {
    Map<Joint, Joint> found = new HashMap<>();
    Slab now = asked.now();
    List<Joint> left = new ArrayList<>(now.lockedJoints());
    for (Joint j : asked.before().joints()) {
      take(left, n -> n.path().equals(j.path()) && n.kind() == j.kind())
          .ifPresent(n -> found.put(j, n));
    }
    for (Joint j : asked.before().joints()) {
      if (!found.containsKey(j)) {
        take(left, n -> n.id().equals(j.id())).ifPresent(n -> found.put(j, n));
        if (j.locked() && !found.containsKey(j)) {
          return Optional.empty();
        }
      }
    }
    return left.isEmpty() ? Optional.of(found) : Optional.empty();
  }

  private static Optional<Joint> take(List<Joint> from, Predicate<Joint> which) {
    Optional<Joint> found = from.stream().filter(which).findFirst();
    found.ifPresent(from::remove);
    return found;
  }

  private static Optional<Joint> laid(Track track, Strand strand) {
    Point from = track.start().now();
    Point to = track.end().now();
    Carrier carrier = strand.now();
    if (from == null || to == null || carrier == null) {
      return Optional.empty();
    }
    Edge edge = track.edge();
    boolean still =
        from.equals(track.start().before())
            && to.equals(track.end().before())
            && carrier.equals(strand.before());
    if (still) {
      return Optional.of(track.joint());
    }
    if (edge instanceof Arc a && carrier instanceof Carrier.Circle c) {
      Edge ahead = a.sweep() > 0 ? c.edge(from, to) : c.edge(to, from).reversed();
      boolean like = Math.abs(ahead.length() - a.length()) < 0.5 * a.length();
      return like ? Optional.of(track.joint().withPath(Path.of(ahead))) : Optional.empty();
    }
    Point way = edge.end().minus(edge.start());
    double length = from.distance(to);
    boolean vanishes = length < SHORTEST && length < 0.5 * edge.length();
    if (vanishes || to.minus(from).dot(way) <= 0) {
      return Optional.empty();
    }
    return Optional.of(track.joint().withPath(Path.straight(from, to)));
  }
}
