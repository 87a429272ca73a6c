package org.jointwright.plan;

import java.util.List;
import org.jointwright.picture.Picture;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;

/**
 * The photo beneath: a picture that lies under the plan to be drawn after. Nothing is worked out
 * from it.
 *
 * @param name the name of the file it came from; may be empty
 * @param picture the picture
 * @param middle where its middle lies
 * @param width how wide it is on the ground, inches, before it is turned; its height follows
 * @param turn how far it is turned about its middle, degrees counter-clockwise
 * @param opacity how much it covers of what is under it: from 0, not seen, to 1
 * @param kept what the file said besides
 */
public record Photo(
    String name,
    Picture picture,
    Point middle,
    double width,
    double turn,
    double opacity,
    Kept kept) {
  /** What a photo covers at first: enough to see, and lines on it are seen as well. */
  public static final double USUAL_OPACITY = 0.6;

  /** Narrower than this nothing is seen of it, inches. */
  public static final double NARROWEST = 1;

  /** A photo just laid down, turned so that it stands upright. */
  public static Photo laid(String name, Picture picture, Point middle, double width) {
    return new Photo(name, picture, middle, width, picture.upright(), USUAL_OPACITY, Kept.NOTHING);
  }

  /** How high it is on the ground before it is turned, inches. */
  public double height() {
    return width * picture.height() / picture.width();
  }

  /** What it covers, counter-clockwise from what is its lower left corner before it is turned. */
  public Ring ring() {
    double angle = Math.toRadians(turn);
    Point way = new Point(Math.cos(angle), Math.sin(angle));
    Point across = way.times(width / 2);
    Point up = new Point(-way.y(), way.x()).times(height() / 2);
    return Ring.of(
        List.of(
            middle.minus(across).minus(up),
            middle.plus(across).minus(up),
            middle.plus(across).plus(up),
            middle.minus(across).plus(up)));
  }

  /** The least box round it. */
  public Box box() {
    return ring().box();
  }

  /** Lying elsewhere. */
  public Photo movedBy(Point by) {
    return new Photo(name, picture, middle.plus(by), width, turn, opacity, kept);
  }

  /** So wide on the ground, its middle where it was. */
  public Photo withWidth(double value) {
    return new Photo(name, picture, middle, value, turn, opacity, kept);
  }

  /** Turned so far about its middle. */
  public Photo withTurn(double value) {
    return new Photo(name, picture, middle, width, value, opacity, kept);
  }

  /** Covering so much. */
  public Photo withOpacity(double value) {
    return new Photo(name, picture, middle, width, turn, value, kept);
  }

  /**
   * Scaled so that what lies at {@code a} and at {@code b} is {@code inches} apart on the ground;
   * what lies at {@code a} stays there.
   *
   * @throws IllegalArgumentException when both are one place
   */
  public Photo scaled(Point a, Point b, double inches) {
    double now = a.distance(b);
    if (!(now > 0) || !(inches > 0)) {
      throw new IllegalArgumentException("two places apart are needed");
    }
    double factor = inches / now;
    Point to = a.plus(middle.minus(a).times(factor));
    return new Photo(name, picture, to, width * factor, turn, opacity, kept);
  }
}
