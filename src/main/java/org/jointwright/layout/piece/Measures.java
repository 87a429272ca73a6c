package org.jointwright.layout.piece;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.shape.Chords;
import org.jointwright.shape.Edge;
import org.jointwright.shape.EnclosingRectangle;
import org.jointwright.shape.Hull;
import org.jointwright.shape.Point;

/**
 * A piece's enclosing rectangle and width.
 *
 * @param rectangle as the rules measure a panel
 * @param width the least distance between two parallel lines that hold the piece, inches
 * @param centre the mean of its hull's corners
 */
public record Measures(EnclosingRectangle rectangle, double width, Point centre) {
  /** How far a chord may cut into an arc, inches: a fraction of the shade kept to limits. */
  private static final double CHORD_ERROR = 0.05;

  /** The longer side, inches. */
  public double longSide() {
    return rectangle.longSide();
  }

  /** The shorter side, inches. */
  public double shortSide() {
    return rectangle.shortSide();
  }

  /** Long over short. */
  public double aspect() {
    return rectangle.aspect();
  }

  static Measures of(Piece piece) {
    return of(piece, CHORD_ERROR);
  }

  /** The same as closely as the checks measure, which takes longer where there are arcs. */
  static Measures closely(Piece piece) {
    return of(piece, Hull.CHORD_ERROR);
  }

  private static Measures of(Piece piece, double chordError) {
    List<Point> points = new ArrayList<>();
    for (Edge e : piece.outer().edges()) {
      // A concave arc lies inside the hull of its ends and its neighbours.
      if (e.turn() > 0) {
        points.addAll(Chords.along(e, chordError));
      } else {
        points.add(e.start());
      }
    }
    Hull hull = Hull.of(points);
    double x = 0;
    double y = 0;
    for (Point p : hull.points()) {
      x += p.x();
      y += p.y();
    }
    int n = hull.points().size();
    return new Measures(EnclosingRectangle.of(hull), hull.width(), new Point(x / n, y / n));
  }
}
