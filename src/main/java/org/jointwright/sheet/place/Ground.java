package org.jointwright.sheet.place;

import org.jointwright.drawing.Mark;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;

/** The plan's field on the page, and what stands in it already. */
public final class Ground {
  /** How far a text keeps from another. */
  public static final double TEXT_CLEAR = 0.9;

  /** How far a text keeps from a line. */
  public static final double LINE_CLEAR = 0.45;

  private final Box field;
  private final Shelf texts = new Shelf();
  private final Shelf lines = new Shelf();

  /** A field with nothing in it. */
  public Ground(Box field) {
    this.field = field;
  }

  /** The field, millimetres. */
  public Box field() {
    return field;
  }

  /** Remembers what stood in the ground at some time, to go back to it. */
  public record Moment(int texts, int lines) {}

  /** What stands in it now. */
  public Moment now() {
    return new Moment(texts.size(), lines.size());
  }

  /** Takes away what came after a moment. */
  public void back(Moment to) {
    texts.keep(to.texts());
    lines.keep(to.lines());
  }

  /** A line that no text may touch; its width is given. */
  public void addLine(Path path, double width) {
    for (Edge e : path.edges()) {
      int parts = e.turn() == 0 ? 1 : (int) Math.ceil(Math.abs(e.turn()) / 0.15);
      for (int i = 0; i < parts; i++) {
        lines.add(
            Quad.line(e.at((double) i / parts), e.at((i + 1.0) / parts), width / 2 + LINE_CLEAR));
      }
    }
  }

  /** A text or another thing that nothing may touch. */
  public void add(Quad quad) {
    texts.add(quad);
  }

  /** A text that nothing may touch. */
  public void add(Mark.Words words) {
    texts.add(Quad.of(words, TEXT_CLEAR / 2));
  }

  /** Whether a text lies in the field and touches neither text nor line. */
  public boolean isFree(Mark.Words words) {
    return isFree(Quad.of(words, TEXT_CLEAR / 2));
  }

  /** Whether it lies in the field and touches neither text nor line. */
  public boolean isFree(Quad quad) {
    return isFreeOfTexts(quad) && !lines.meets(quad);
  }

  /** Whether it lies in the field and touches no text; lines may run through it. */
  public boolean isFreeOfTexts(Quad quad) {
    return quad.within(field.minX(), field.minY(), field.maxX(), field.maxY())
        && !texts.meets(quad);
  }

  /** How many lines run through it. */
  public long linesThrough(Quad quad) {
    return lines.count(quad);
  }
}
