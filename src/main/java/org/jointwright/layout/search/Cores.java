package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.layout.piece.Carrier;
import org.jointwright.layout.piece.Limits;
import org.jointwright.layout.piece.Move;
import org.jointwright.layout.piece.Piece;
import org.jointwright.shape.Point;

/**
 * Patterns of a disc too large for one grid: two or three diameters, a core ring with sectors or a
 * grid inside, and ribs outside, with further rings where the ribs would be too long.
 */
final class Cores {
  private static final double[] SHARES = {0.33, 0.4, 0.45, 0.5, 0.55, 0.6};

  /** Smaller discs take one grid, spacings. */
  private static final double LARGE = 1.5;

  /** From here on ribs are halved from ring to ring inwards, spacings. */
  private static final double VERY_LARGE = 2.6;

  /** The radius of a ringed disc's core against the width of its rings. */
  private static final double[] CORES = {0.85, 1, 1.15};

  /** A core grid has lines at half the core's radius, whose ends stand 30 degrees apart. */
  private static final double HALF = 0.5;

  private final Piece piece;
  private final Point centre;
  private final double radius;
  private final Point axis;
  private final boolean thin;

  private Cores(Piece piece, Point centre, double radius, Point axis, boolean thin) {
    this.thin = thin;
    this.piece = piece;
    this.centre = centre;
    this.radius = radius;
    this.axis = axis;
  }

  /** The patterns about {@code centre}, one diameter along {@code axis}. */
  static List<Pattern> of(Piece piece, Point centre, double radius, Point axis) {
    List<Pattern> found = new ArrayList<>();
    for (boolean thin : new boolean[] {false, true}) {
      Cores c = new Cores(piece, centre, radius, axis, thin);
      if (radius > LARGE * c.span()) {
        c.add(found);
      }
      if (radius > VERY_LARGE * c.span() && !thin) {
        c.addRinged(found);
      }
    }
    return found;
  }

  private void add(List<Pattern> found) {
    for (double share : SHARES) {
      double core = share * radius;
      int rings = (int) Math.ceil((radius - core) / span());
      if (core <= span()) {
        for (int diameters = 2; diameters <= 3; diameters++) {
          found.add(Pattern.on(piece, sectors(core, diameters, rings)));
        }
      }
      found.add(Pattern.on(piece, gridded(core, rings)));
    }
  }

  private void addRinged(List<Pattern> found) {
    int fewest = (int) Math.ceil(radius / span());
    for (int rings = fewest; rings <= fewest + 2; rings++) {
      for (double share : CORES) {
        double width = radius / (rings - 1 + share);
        for (int diameters = 2; diameters <= 3 && share * width <= span(); diameters++) {
          for (int cells = 2; cells <= 4; cells++) {
            found.add(Pattern.on(piece, ringed(share * width, rings, diameters, cells)));
          }
        }
      }
    }
  }

  /**
   * A core of sectors, then rings of one width: those next to the core have {@code first} cells to
   * a sector, and twice as many from any ring on whose cells would be too long.
   */
  private List<Move> ringed(double core, int rings, int diameters, int first) {
    List<Move> moves = new ArrayList<>();
    double sector = 180.0 / diameters;
    for (int k = 0; k < diameters; k++) {
      moves.add(diameter(k * sector));
    }
    double width = (radius - core) / (rings - 1);
    int cells = first;
    for (int k = 0; k < 2 * diameters; k++) {
      moves.add(arc(core, (k + 0.5) * sector));
      for (int c = 1; c < cells; c++) {
        moves.add(rib(core, core + width, sector * (k + c / (double) cells)));
      }
    }
    for (int ring = 1; ring < rings; ring++) {
      double in = core + width * (ring - 1);
      double chord = 2 * (in + width) * Math.sin(Math.toRadians(sector / cells) / 2);
      if (chord > span()) {
        for (int c = 0; c < 2 * diameters * cells; c++) {
          moves.add(rib(in, in + width, sector / cells * (c + 0.5)));
        }
        cells *= 2;
      }
      for (int c = 0; c < 2 * diameters * cells && ring < rings - 1; c++) {
        moves.add(arc(in + width, sector / cells * (c + 0.5)));
      }
    }
    return moves;
  }

  private double span() {
    return (piece.ground().limits().spacing() + Limits.SHADE) * Limits.BOW;
  }

  private Point direction(double degrees) {
    return axis.turned(Math.toRadians(degrees));
  }

  private Move diameter(double degrees) {
    Point u = direction(degrees);
    // Off the middle, where the others cross.
    Point seed = centre.plus(u.times(0.31 * radius));
    return new Move(new Carrier.Line(centre, u), seed, Move.Reach.THROUGH);
  }

  private Move arc(double r, double degrees) {
    Carrier.Circle circle = new Carrier.Circle(centre, r);
    return new Move(circle, centre.plus(direction(degrees).times(r)), Move.Reach.PIECE);
  }

  private Move rib(double from, double to, double degrees) {
    Point u = direction(degrees);
    Point seed = centre.plus(u.times((from + to) / 2));
    return new Move(new Carrier.Line(centre, u), seed, Move.Reach.PIECE);
  }

  /**
   * Ribs between two directions as many as the rim needs, and the rings they cross. Every second
   * rib may start at the first ring, where they would stand too close at the core.
   */
  private void outside(List<Move> moves, double core, int rings, double from, double to) {
    int parts = (int) Math.ceil(Math.toRadians(to - from) * radius / span());
    boolean second = thin && rings > 1;
    int cells = second ? Math.max(1, (parts + 1) / 2) : parts;
    for (int k = 1; k < cells; k++) {
      moves.add(rib(core, radius, from + (to - from) * k / cells));
    }
    double width = (radius - core) / rings;
    for (int ring = 1; ring < rings; ring++) {
      for (int k = 0; k < cells; k++) {
        moves.add(arc(core + width * ring, from + (to - from) * (k + 0.5) / cells));
      }
    }
    for (int k = 0; k < cells && second && parts > 1; k++) {
      for (int ring = 1; ring < rings; ring++) {
        double in = core + width * ring;
        moves.add(rib(in, in + width, from + (to - from) * (k + 0.5) / cells));
      }
    }
  }

  /** Diameters run through; the core keeps their sectors. */
  private List<Move> sectors(double core, int diameters, int rings) {
    List<Move> moves = new ArrayList<>();
    double sector = 180.0 / diameters;
    for (int k = 0; k < diameters; k++) {
      moves.add(diameter(k * sector));
    }
    for (int k = 0; k < 2 * diameters; k++) {
      moves.add(arc(core, (k + 0.5) * sector));
      outside(moves, core, rings, k * sector, (k + 1) * sector);
    }
    return moves;
  }

  /** Two diameters, and in the core lines half way to both sides of each. */
  private List<Move> gridded(double core, int rings) {
    List<Move> moves = new ArrayList<>(List.of(diameter(0), diameter(90)));
    for (int quarter = 0; quarter < 360; quarter += 90) {
      moves.add(arc(core, quarter + 45));
      Point u = direction(quarter);
      Point v = u.left();
      Point corner = centre.plus(u.plus(v).times(HALF * core));
      moves.add(line(corner, u, -0.2 * core));
      moves.add(line(corner, v, -0.2 * core));
      moves.add(line(corner, v, 0.15 * core));
      for (int third = 0; third < 90; third += 30) {
        double from = quarter + third;
        if (third > 0) {
          moves.add(rib(core, radius, from));
        }
        outside(moves, core, rings, from, from + 30);
      }
    }
    return moves;
  }

  private static Move line(Point through, Point u, double seed) {
    return new Move(new Carrier.Line(through, u), through.plus(u.times(seed)), Move.Reach.PIECE);
  }
}
