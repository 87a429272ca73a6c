package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.drawing.Mark;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;

/** The plan's field on the page, and what stands in it already. */
final class Ground {
  /** How far a text keeps from another. */
  static final double TEXT_CLEAR = 0.9;

  /** How far a text keeps from a line. */
  static final double LINE_CLEAR = 0.45;

  private final Box field;
  private final List<Quad> texts = new ArrayList<>();
  private final List<Quad> lines = new ArrayList<>();

  Ground(Box field) {
    this.field = field;
  }

  Box field() {
    return field;
  }

  /** Remembers what stood in the ground at some time, to go back to it. */
  record Mark0(int texts, int lines) {}

  Mark0 now() {
    return new Mark0(texts.size(), lines.size());
  }

  void back(Mark0 to) {
    texts.subList(to.texts(), texts.size()).clear();
    lines.subList(to.lines(), lines.size()).clear();
  }

  /** A line that no text may touch; its width is given. */
  void addLine(Path path, double width) {
    for (Edge e : path.edges()) {
      int parts = e.turn() == 0 ? 1 : (int) Math.ceil(Math.abs(e.turn()) / 0.15);
      for (int i = 0; i < parts; i++) {
        lines.add(
            Quad.line(e.at((double) i / parts), e.at((i + 1.0) / parts), width / 2 + LINE_CLEAR));
      }
    }
  }

  /** A text or another thing that nothing may touch. */
  void add(Quad quad) {
    texts.add(quad);
  }

  void add(Mark.Words words) {
    texts.add(Quad.of(words, TEXT_CLEAR / 2));
  }

  boolean isFree(Mark.Words words) {
    return isFree(Quad.of(words, TEXT_CLEAR / 2));
  }

  /** Whether it lies in the field and touches neither text nor line. */
  boolean isFree(Quad quad) {
    return isFreeOfTexts(quad) && lines.stream().noneMatch(quad::meets);
  }

  /** Whether it lies in the field and touches no text; lines may run through it. */
  boolean isFreeOfTexts(Quad quad) {
    return quad.within(field.minX(), field.minY(), field.maxX(), field.maxY())
        && texts.stream().noneMatch(quad::meets);
  }

  /** How many lines run through it. */
  long linesThrough(Quad quad) {
    return lines.stream().filter(quad::meets).count();
  }
}
