package org.jointwright.designer.state;

import org.jointwright.drawing.View;
import org.jointwright.shape.Box;
import org.jointwright.shape.Point;

/**
 * How the plan lies in the window.
 *
 * @param width the width of the paper in pixels
 * @param height its height
 * @param centre the point of the plan in the middle of it, inches
 * @param scale pixels for an inch of the plan
 */
public record Viewport(double width, double height, Point centre, double scale) {
  /** Blank paper: forty feet across, the plan's origin a little left of and below the middle. */
  public static final Viewport BLANK = new Viewport(744, 760, new Point(144, 96), 1.55);

  /** What stands above the plan, below it and beside it when all of it is shown; pixels. */
  private static final double ABOVE = 136;

  private static final double BELOW = 118;

  /** On a low paper that much less, so that enough is left for the plan. */
  private static final double SPARED = 34;

  private static final double LOW = 480;
  private static final double HIGH = 720;
  private static final double BESIDE = 64;

  /** What the window writes along the top of the paper and along its foot; pixels. */
  private static final double HEAD = 74;

  private static final double FOOT = 58;
  private static final double RIM = 6;

  /** The least and the greatest scale, pixels for an inch: a mile across, and 1/16 in to see. */
  private static final double LEAST = 0.01;

  private static final double MOST = 60;

  /** How the plan is drawn here. */
  public View view() {
    Point origin = new Point(width / 2 - centre.x() * scale, height / 2 + centre.y() * scale);
    return new View(origin, scale, 0);
  }

  /** The place on the paper of a point of the plan. */
  public Point toPaper(Point plan) {
    return view().on(plan);
  }

  /** The point of the plan at a place on the paper. */
  public Point toPlan(Point paper) {
    return view().back(paper);
  }

  /** How many inches of the plan {@code pixels} are. */
  public double inches(double pixels) {
    return pixels / scale;
  }

  /** The paper at another size, the same point in its middle. */
  public Viewport resized(double newWidth, double newHeight) {
    return new Viewport(Math.max(1, newWidth), Math.max(1, newHeight), centre, scale);
  }

  /** Larger or smaller by {@code factor}; the point under {@code paper} stays where it is. */
  public Viewport zoomed(Point paper, double factor) {
    double to = Math.clamp(scale * factor, LEAST, MOST);
    Point held = toPlan(paper);
    Viewport zoomed = new Viewport(width, height, centre, to);
    return new Viewport(width, height, centre.plus(held.minus(zoomed.toPlan(paper))), to);
  }

  /** The paper pushed by so many pixels. */
  public Viewport pushed(double right, double down) {
    Point by = new Point(-right / scale, down / scale);
    return new Viewport(width, height, centre.plus(by), scale);
  }

  /** The same scale, {@code plan} in the middle. */
  public Viewport centredOn(Point plan) {
    return new Viewport(width, height, plan, scale);
  }

  /** Pushed by as little as brings {@code box} in sight, its middle where it is larger. */
  public Viewport showing(Box box) {
    Box sight = clear();
    double right = way(sight.minX(), sight.maxX(), box.minX(), box.maxX());
    double up = way(sight.minY(), sight.maxY(), box.minY(), box.maxY());
    // A plan that is fitted touches the edge of what is clear, but for the last digit.
    boolean isSeen = Math.max(Math.abs(right), Math.abs(up)) * scale < 1;
    return isSeen ? this : centredOn(centre.plus(new Point(right, up)));
  }

  private static double way(double least, double most, double from, double to) {
    if (to - from > most - least) {
      return (from + to - least - most) / 2;
    }
    return from < least ? from - least : Math.max(0, to - most);
  }

  /** As large as it goes with all of {@code box} and room for what is written round it. */
  public Viewport fitted(Box box) {
    double across = Math.max(40, width - 2 * BESIDE);
    double up = Math.max(40, height - above() - below());
    double wide = Math.max(box.width(), 12);
    double high = Math.max(box.height(), 12);
    double to = Math.clamp(Math.min(across / wide, up / high), LEAST, MOST / 10);
    Point lower = new Point(0, (above() - below()) / 2 / to);
    return new Viewport(width, height, box.centre().plus(lower), to);
  }

  private double above() {
    return ABOVE - spared();
  }

  private double below() {
    return BELOW - spared();
  }

  private double spared() {
    return SPARED * Math.clamp((HIGH - height) / (HIGH - LOW), 0, 1);
  }

  /**
   * How much is free between a plan that is shown whole and what the window writes along the top of
   * the paper and its foot; pixels.
   */
  public double beside() {
    return Math.min(above() - HEAD, below() - FOOT) - RIM;
  }

  /** The part of the plan that can be seen without what is written round it. */
  public Box clear() {
    return Box.of(
        toPlan(new Point(BESIDE / 2, above())),
        toPlan(new Point(width - BESIDE / 2, height - below())));
  }

  /** The part of the paper between what the window writes along its top and its foot; pixels. */
  public Box written() {
    return new Box(RIM, HEAD, Math.max(RIM, width - RIM), Math.max(HEAD, height - FOOT));
  }

  /** The paper itself, pixels. */
  public Box paper() {
    return new Box(0, 0, width, height);
  }

  /** The part of the plan on the paper. */
  public Box seen() {
    return Box.of(toPlan(new Point(0, 0)), toPlan(new Point(width, height)));
  }
}
