package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jointwright.layout.piece.Axes;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.layout.piece.Faults;
import org.jointwright.layout.piece.Loop;
import org.jointwright.layout.piece.Move;
import org.jointwright.layout.piece.Piece;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Segment;

/**
 * Joints that leave round openings and round box-outs along the radius: with the slab's directions,
 * half way between them, towards inside corners and other round ones.
 */
final class Radials {
  /** Larger openings are curved edges of the slab, inches. */
  private static final double LARGEST = 96;

  private static final double SAME = 0.5;

  /** How far outside the arc a cut is seeded, inches. */
  private static final double OUT = 3;

  /** Two joints stand at least so far apart round one centre. */
  private static final double APART = Math.cos(Math.toRadians(20));

  /** Directions this near to each other are one. */
  private static final double ONE = Math.cos(Math.toRadians(2));

  private static final int MOST = 12;

  /** Where a third joint may go beside two square to each other, degrees from the first. */
  private static final double[] AWAY = {0.5, 0.3, 0.7};

  private static final int[] THIRDS = {225, 208, 242};

  private final Piece piece;
  private final List<Round> rounds;

  private record Round(Point centre, double radius, List<Arc> arcs) {
    /** Whether a joint may leave it in a direction. */
    boolean faces(Point u) {
      Point p = centre.plus(u.times(radius));
      return arcs.stream().anyMatch(a -> a.distance(p) < SAME);
    }

    double turn() {
      return arcs.stream().mapToDouble(a -> Math.abs(a.sweep())).sum();
    }
  }

  private Radials(Piece piece) {
    this.piece = piece;
    this.rounds = rounds(piece);
  }

  /** The middles of the round openings and box-outs that a piece bounds on. */
  static List<Point> centres(Piece piece) {
    return rounds(piece).stream().map(Round::centre).toList();
  }

  private static List<Round> rounds(Piece piece) {
    List<Round> found = new ArrayList<>();
    for (int l = 0; l < piece.loopCount(); l++) {
      Loop loop = piece.loop(l);
      for (int i = 0; i < loop.size(); i++) {
        if (loop.isHard(i)
            && loop.edge(i) instanceof Arc a
            && a.sweep() < 0
            && a.radius() < LARGEST) {
          Round known =
              found.stream()
                  .filter(r -> r.centre().distance(a.centre()) < SAME)
                  .findFirst()
                  .orElse(null);
          if (known == null) {
            found.add(new Round(a.centre(), a.radius(), new ArrayList<>(List.of(a))));
          } else {
            known.arcs().add(a);
          }
        }
      }
    }
    found.removeIf(r -> r.turn() < Math.PI / 3);
    return found;
  }

  /** Stars of three or four joints from the first round hole of a piece, turned many ways. */
  static List<Pattern> turnedStars(Piece piece) {
    Radials all = new Radials(piece);
    List<Pattern> found = new ArrayList<>();
    Round hole = all.rounds.stream().filter(r -> r.turn() > 6).findFirst().orElse(null);
    if (hole == null) {
      return found;
    }
    Point axis = Axes.of(piece).getFirst();
    List<List<Point>> stars = new ArrayList<>();
    for (int degrees = 0; degrees < 90; degrees += 15) {
      stars.add(fan(axis, degrees, 90, 180, 270));
    }
    for (int quarter = 0; quarter < 360; quarter += 90) {
      for (int third : THIRDS) {
        stars.add(fan(axis, quarter, 90, third));
      }
    }
    for (int degrees = 0; degrees < 120; degrees += 10) {
      stars.add(fan(axis, degrees, 120, 240));
    }
    for (List<Point> star : stars) {
      List<Move> moves = new ArrayList<>();
      star.forEach(u -> moves.add(move(hole, u, Move.Reach.PIECE)));
      found.add(Pattern.on(piece, moves));
    }
    return found;
  }

  /** A direction turned by {@code first} degrees, and by so many more. */
  private static List<Point> fan(Point axis, int first, int... more) {
    List<Point> found = new ArrayList<>();
    found.add(axis.turned(Math.toRadians(first)));
    for (int m : more) {
      found.add(axis.turned(Math.toRadians(first + m)));
    }
    return found;
  }

  /** Single joints from the round edges of a piece. */
  static List<Pattern> single(Piece piece) {
    Radials all = new Radials(piece);
    List<Pattern> found = new ArrayList<>();
    for (Round r : all.rounds.subList(0, Math.min(3, all.rounds.size()))) {
      List<Point> directions = all.directions(r);
      for (Point u : directions.subList(0, Math.min(MOST, directions.size()))) {
        found.add(Pattern.of(move(r, u, Move.Reach.PIECE)));
        found.add(Pattern.of(move(r, u, Move.Reach.THROUGH)));
      }
    }
    return found;
  }

  /** Stars of joints from every round edge of a piece at once. */
  static List<Pattern> stars(Piece piece) {
    Radials all = new Radials(piece);
    List<Pattern> found = new ArrayList<>();
    if (all.rounds.isEmpty() || all.rounds.size() > MOST) {
      return found;
    }
    for (Move.Reach reach : Move.Reach.values()) {
      for (int kind = 0; kind < 4; kind++) {
        List<Move> moves = new ArrayList<>();
        for (Round r : all.rounds) {
          for (Point u : all.star(r, kind)) {
            if (r.faces(u)) {
              moves.add(move(r, u, reach));
            }
          }
        }
        if (moves.size() > 1) {
          found.add(Pattern.on(piece, moves));
        }
      }
    }
    return found;
  }

  /** Even grids with a star in the cells that hold a round hole, alike for all holes. */
  static List<Pattern> griddedStars(Piece piece) {
    Radials all = new Radials(piece);
    List<Pattern> found = new ArrayList<>();
    List<Round> holes = all.rounds.stream().filter(r -> r.turn() > 6).toList();
    if (holes.isEmpty() || holes.size() > MOST) {
      return found;
    }
    Point axis = Axes.of(piece).getFirst();
    Rows rows = new Rows(piece, axis, List.of());
    Rows columns = new Rows(piece, axis.left(), List.of());
    for (int n = rows.fewest(); n <= rows.fewest() + 1; n++) {
      for (int m = columns.fewest(); m <= columns.fewest() + 1; m++) {
        List<Move> grid = new ArrayList<>(rows.moves(rows.even(n), Move.Reach.THROUGH));
        grid.addAll(columns.moves(columns.even(m), Move.Reach.THROUGH));
        for (double third : AWAY) {
          List<Move> moves = new ArrayList<>(grid);
          for (Round r : holes) {
            all.towardsEdges(r, third).forEach(u -> moves.add(move(r, u, Move.Reach.PIECE)));
          }
          found.add(Pattern.on(piece, moves));
        }
      }
    }
    return found;
  }

  private static Move move(Round r, Point u, Move.Reach reach) {
    return new Move(
        new Carrier.Line(r.centre(), u), r.centre().plus(u.times(r.radius() + OUT)), reach);
  }

  /** Directions of a star: with the axes, between them, square to the near edges, to corners. */
  private List<Point> star(Round r, int kind) {
    Point axis = Axes.of(piece).getFirst();
    return switch (kind) {
      case 0 -> quarters(axis);
      case 1 -> quarters(axis.turned(Math.PI / 4));
      case 2 -> towardsEdges(r, 0.5);
      default -> towardsCorners(r);
    };
  }

  private static List<Point> quarters(Point axis) {
    return List.of(axis, axis.left(), axis.times(-1), axis.left().times(-1));
  }

  /**
   * Square to the two nearest edges, and one away from both.
   *
   * @param share how far the third leans from square to the first towards square to the second
   */
  private List<Point> towardsEdges(Round r, double share) {
    List<Point> feet = new ArrayList<>();
    for (Edge e : piece.outer().edges()) {
      if (e instanceof Segment && e.distance(r.centre()) > r.radius() + 1) {
        feet.add(e.at(e.nearest(r.centre())));
      }
    }
    // Equally near ones in the same order for all, so that posts alike are served alike.
    Point axis = Axes.of(piece).getFirst();
    feet.sort(
        Comparator.comparingLong((Point p) -> Math.round(p.distance(r.centre())))
            .thenComparingLong(p -> Math.round(Math.abs(p.minus(r.centre()).dot(axis)))));
    List<Point> found = new ArrayList<>();
    for (Point foot : feet) {
      Point u = foot.minus(r.centre()).unit();
      if (found.size() < 2 && found.stream().allMatch(o -> Math.abs(o.dot(u)) < 0.5)) {
        found.add(u);
      }
    }
    if (found.size() == 2) {
      Point first = found.get(0).times(-1);
      double turn = first.cross(found.get(1).times(-1)) > 0 ? Math.PI / 2 : -Math.PI / 2;
      found.add(first.turned(share * turn));
    }
    return found;
  }

  private List<Point> towardsCorners(Round r) {
    List<Point> found = new ArrayList<>();
    for (Faults.Corner c : piece.faults().corners()) {
      addTowards(found, r, c.at(), APART);
    }
    for (Point u : quarters(Axes.of(piece).getFirst())) {
      if (found.stream().allMatch(o -> o.dot(u) < Math.cos(Math.toRadians(50)))) {
        found.add(u);
      }
    }
    return found;
  }

  private void addTowards(List<Point> found, Round r, Point p, double one) {
    double far = p.distance(r.centre());
    if (far > r.radius() + 12 && far < 2 * piece.ground().limits().spacing()) {
      Point u = p.minus(r.centre()).unit();
      if (found.stream().allMatch(o -> o.dot(u) < one)) {
        found.add(u);
      }
    }
  }

  private List<Point> directions(Round r) {
    List<Point> all = new ArrayList<>();
    for (Faults.Corner c : piece.faults().corners()) {
      addTowards(all, r, c.at(), ONE);
    }
    rounds.forEach(o -> addTowards(all, r, o.centre(), ONE));
    List<Point> more = new ArrayList<>();
    for (Point axis : Axes.of(piece)) {
      more.addAll(quarters(axis));
    }
    more.addAll(towardsEdges(r, 0.5));
    more.addAll(quarters(Axes.of(piece).getFirst().turned(Math.PI / 4)));
    for (Point u : more) {
      if (all.stream().allMatch(o -> o.dot(u) < ONE)) {
        all.add(u);
      }
    }
    return all.stream().filter(r::faces).toList();
  }
}
