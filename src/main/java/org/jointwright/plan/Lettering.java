package org.jointwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/**
 * The letters of the corners and the tapes between them, through the whole job. Letters go from
 * slab to slab, round each counter-clockwise from its lower left corner; corners of openings follow
 * those of their slab. Where slabs share a corner it has one letter, and a side that lies whole on
 * a side of another slab is taped with that one, but for what is marked on it.
 *
 * @param corners every corner, in the order of the letters
 * @param tapes every side once
 * @param within the straight sides that lie on a longer one of another slab: marks of the slab’s
 *     own joints are taped along them, from its own corners
 */
public record Lettering(List<LetteredCorner> corners, List<Tape> tapes, List<Tape> within) {
  /** Corners nearer to each other than this are one; inches. */
  public static final double SAME_PLACE = 1.0 / 16;

  /** The letters in use: no I and no O, which read as figures. */
  private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

  /** Copies the lists. */
  public Lettering {
    corners = List.copyOf(corners);
    tapes = List.copyOf(tapes);
    within = List.copyOf(within);
  }

  /** Without sides that lie on others. */
  public Lettering(List<LetteredCorner> corners, List<Tape> tapes) {
    this(corners, tapes, List.of());
  }

  /** The lettering of {@code plan}. */
  public static Lettering of(Plan plan) {
    List<LetteredCorner> corners = new ArrayList<>();
    List<Tape> sides = new ArrayList<>();
    for (Slab slab : plan.slabs()) {
      sides.addAll(letter(slab.id(), slab.outline().ring().counterClockwise(), true, corners));
      for (Opening opening : slab.openings()) {
        Ring ring = opening.outline().ring().counterClockwise();
        sides.addAll(letter(slab.id(), ring, false, corners));
      }
    }
    List<Tape> tapes = Tapes.distinct(sides);
    return new Lettering(corners, tapes, Tapes.within(sides, tapes));
  }

  /** The letter of corner number {@code i}, counted from 0. */
  public static String letter(int i) {
    int n = LETTERS.length();
    String last = LETTERS.substring(i % n, i % n + 1);
    return i < n ? last : letter(i / n - 1) + last;
  }

  private static List<Tape> letter(
      String slab, Ring ring, boolean inside, List<LetteredCorner> known) {
    List<Integer> at = RingCorners.of(ring);
    List<LetteredCorner> round = new ArrayList<>();
    for (int i : at) {
      Point p = ring.edges().get(i).start();
      LetteredCorner corner =
          find(known, p).orElseGet(() -> new LetteredCorner(letter(known.size()), p));
      if (!known.contains(corner)) {
        known.add(corner);
      }
      round.add(corner);
    }
    List<Tape> sides = new ArrayList<>();
    int n = ring.edges().size();
    for (int k = 0; k < at.size(); k++) {
      int next = (k + 1) % at.size();
      int count = Math.floorMod(at.get(next) - at.get(k) - 1, n) + 1;
      var edges = new ArrayList<org.jointwright.shape.Edge>();
      for (int j = 0; j < count; j++) {
        edges.add(ring.edges().get((at.get(k) + j) % n));
      }
      sides.add(new Tape(slab, round.get(k), round.get(next), new Path(edges), inside));
    }
    return sides;
  }

  private static Optional<LetteredCorner> find(List<LetteredCorner> corners, Point p) {
    return corners.stream().filter(c -> c.at().distance(p) <= SAME_PLACE).findFirst();
  }

  /** The corner that stands at {@code p}, if one does. */
  public Optional<LetteredCorner> cornerAt(Point p) {
    return find(corners, p);
  }

  /** The corners that stand on a tape between its two ends, in the order of the tape. */
  public List<LetteredCorner> between(Tape tape) {
    return corners.stream()
        .filter(c -> !c.equals(tape.from()) && !c.equals(tape.to()))
        .filter(c -> tape.carries(c.at(), SAME_PLACE))
        .sorted(java.util.Comparator.comparingDouble(c -> tape.distanceTo(c.at())))
        .toList();
  }

  /** The tapes that {@code p} stands on, within {@code tolerance} inches, in their order. */
  public List<Tape> tapesAt(Point p, double tolerance) {
    return tapes.stream().filter(t -> t.carries(p, tolerance)).toList();
  }
}
