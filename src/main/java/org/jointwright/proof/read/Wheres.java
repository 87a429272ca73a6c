package org.jointwright.proof.read;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Understands where a point is said to be. */
final class Wheres {
  private static final String NUMBER = "[0-9]+";

  private final Figures figures;
  private final Pattern corner;
  private final Pattern boxOut;
  private final Pattern joint;
  private final Pattern start;
  private final Pattern end;
  private final Pattern left;
  private final Pattern right;
  private final Pattern mark;
  private final Pattern any;

  Wheres(Phrases phrases, Figures figures) {
    this.figures = figures;
    String length = Phrases.LENGTH;
    String side = Phrases.SIDE;
    this.corner = phrases.pattern("at.corner", "[A-Z]+");
    this.boxOut = phrases.pattern("at.boxOut", NUMBER);
    this.joint = phrases.pattern("at.joint", length, NUMBER);
    this.start = phrases.pattern("at.joint.start", NUMBER);
    this.end = phrases.pattern("at.joint.end", NUMBER);
    this.left = phrases.pattern("at.left", length, side, length);
    this.right = phrases.pattern("at.right", length, side, length);
    this.mark = phrases.pattern("at.mark", length, side);
    this.any =
        Pattern.compile(
            String.join("|", left.pattern(), right.pattern(), corner.pattern(), mark.pattern()));
  }

  /** Matches points told by corners and sides, wherever they stand in a text. */
  Matcher in(String text) {
    return any.matcher(text);
  }

  /** The point that the whole of {@code text} tells; empty where it tells none. */
  Optional<Where> of(String text, Place place) {
    Matcher m = corner.matcher(text);
    if (m.matches()) {
      return Optional.of(new Where.Corner(m.group(1)));
    }
    m = boxOut.matcher(text);
    if (m.matches()) {
      return Optional.of(new Where.AtBoxOut(Integer.parseInt(m.group(1))));
    }
    m = joint.matcher(text);
    if (m.matches()) {
      Figure along = figures.add(m.group(1), place);
      return Optional.of(new Where.OnJoint(Integer.parseInt(m.group(2)), along));
    }
    m = start.matcher(text);
    if (m.matches()) {
      return Optional.of(new Where.EndOf(Integer.parseInt(m.group(1)), false));
    }
    m = end.matcher(text);
    if (m.matches()) {
      return Optional.of(new Where.EndOf(Integer.parseInt(m.group(1)), true));
    }
    m = mark.matcher(text);
    if (m.matches()) {
      return Optional.of(new Where.Mark(m.group(2), figures.add(m.group(1), place)));
    }
    return off(text, place).map(o -> o);
  }

  /** The point that is told by a way along a side and square off it. */
  Optional<Where.Off> off(String text, Place place) {
    return off(text, place, false);
  }

  /**
   * The same.
   *
   * @param fine whether the way off it is told to the finer step
   */
  Optional<Where.Off> off(String text, Place place, boolean fine) {
    for (int sign : new int[] {1, -1}) {
      Matcher m = (sign > 0 ? left : right).matcher(text);
      if (m.matches()) {
        Figure along = figures.add(m.group(1), place);
        Figure off = fine ? figures.fine(m.group(3), place) : figures.add(m.group(3), place);
        return Optional.of(new Where.Off(m.group(2), along, off, sign));
      }
    }
    return Optional.empty();
  }
}
