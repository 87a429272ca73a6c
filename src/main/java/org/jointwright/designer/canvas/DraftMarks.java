package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.designer.ready.Strip;
import org.jointwright.designer.sketch.Draft;
import org.jointwright.designer.sketch.Drawn;
import org.jointwright.designer.sketch.Said;
import org.jointwright.designer.sketch.Stroke;
import org.jointwright.designer.sketch.Strokes;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Drafting;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Rings;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.Typeface;
import org.jointwright.drawing.View;
import org.jointwright.drawing.Weight;
import org.jointwright.measure.Length;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;
import org.jointwright.text.Words;

/** An outline being drawn: its edges and figures, the strings that draw the pencil. */
final class DraftMarks {
  private static final double FIGURE = 22;

  private final Desk desk;
  private final Draft draft;
  private final Said said;
  private final Words words;
  private final View view;
  private final List<Mark> marks = new ArrayList<>();

  /** Where the words of strings stand. */
  private final List<Box> written = new ArrayList<>();

  private DraftMarks(Desk desk, Draft draft, Said said, Words words) {
    this.desk = desk;
    this.draft =
        draft.last().isPresent() || said instanceof Said.Silent
            ? draft
            : draft.begunAt(Drafting.start(desk, draft));
    this.said = said;
    this.words = words;
    view = desk.viewport().view();
  }

  static List<Mark> of(Desk desk, Draft draft, Said said, Words words) {
    DraftMarks d = new DraftMarks(desk, draft, said, words);
    Optional<Stroke> next = Strokes.of(d.draft, said);
    d.inside(next);
    d.strings();
    d.edges();
    next.ifPresent(d::next);
    d.corners();
    d.pencil();
    return d.marks;
  }

  private void inside(Optional<Stroke> next) {
    List<Edge> edges = new ArrayList<>(draft.edges());
    next.ifPresent(s -> edges.add(s.edge()));
    if (draft.what() == Drawn.STRIP) {
      strip(edges);
      return;
    }
    if (edges.size() < 2) {
      return;
    }
    Point first = edges.getFirst().start();
    Point last = edges.getLast().end();
    if (!first.equals(last)) {
      edges.add(new Segment(last, first));
    }
    marks.add(Mark.Area.of(view.on(new Ring(edges)), Role.PANEL));
  }

  /** The strip along the line so far, while it can be so wide. */
  private void strip(List<Edge> edges) {
    if (!edges.isEmpty()) {
      Strip.round(new Path(edges), draft.wide())
          .map(o -> view.on(o.ring()))
          .ifPresent(
              r -> {
                marks.add(Mark.Area.of(r, Role.PANEL));
                marks.add(Mark.Line.of(new Path(r.edges()), 2.2, Role.OUTLINE));
              });
    }
  }

  private void edges() {
    for (Edge e : draft.edges()) {
      marks.add(Mark.Line.of(view.on(Path.of(e)), 3, Role.OUTLINE));
      figure(e, Role.TEXT, Weight.REGULAR);
    }
  }

  private void next(Stroke stroke) {
    Edge e = stroke.edge();
    Point end = view.on(stroke.to());
    marks.add(Mark.Line.of(view.on(Path.of(e)), 4, Role.SELECTED));
    marks.add(Mark.Area.of(Rings.circle(end, 8), Role.PAPER));
    marks.add(Mark.Line.of(new Path(Rings.circle(end, 8).edges()), 3, Role.SELECTED));
    if (said instanceof Said.Silent) {
      figure(e, Role.SELECTED, Weight.BOLD);
    }
  }

  /** The length of an edge beside it, outside the slab where the side is known. */
  private void figure(Edge e, Role role, Weight weight) {
    String text = words.print(Length.inches(e.length()));
    Point left = view.heading(e.direction(0.5).left());
    Point out = draft.isClockwise(e.end()) ? left : left.times(-1);
    double half = Typeface.of(weight).width(text, FIGURE) / 2;
    double clear = 14 + draft.wide() / 2 * desk.viewport().scale();
    Point by = out.times(clear + Math.abs(out.x()) * half + Math.abs(out.y()) * 9);
    Box room = desk.viewport().written();
    List<Point> places = new ArrayList<>();
    for (double share : List.of(0.5, 0.3, 0.7)) {
      places.add(view.on(e.at(share)).plus(by));
      places.add(view.on(e.at(share)).minus(by));
    }
    Point usual =
        InSight.isWhole(places.get(0), half, FIGURE / 2, room) ? places.get(0) : places.get(1);
    Point at =
        places.stream()
            .filter(p -> InSight.isWhole(p, half, FIGURE / 2, room) && isFree(p, half))
            .findFirst()
            .orElseGet(() -> InSight.pushed(usual, half, FIGURE / 2, room));
    Point base = at.plus(new Point(0, FIGURE * 0.36));
    marks.add(Mark.Words.level(base, text, FIGURE, weight, Anchor.MIDDLE, role));
  }

  /** Whether a figure there covers no words of a string. */
  private boolean isFree(Point middle, double half) {
    Box figure =
        new Box(
            middle.x() - half, middle.y() - FIGURE / 2, middle.x() + half, middle.y() + FIGURE / 2);
    return written.stream().noneMatch(b -> b.meets(figure));
  }

  private void corners() {
    for (Vertex v : draft.placed()) {
      Point at = view.on(v.at());
      Ring box = Rings.rounded(at.x() - 5.5, at.y() - 5.5, 11, 11, 2);
      marks.add(Mark.Area.of(box, Role.PAPER));
      marks.add(Mark.Line.of(new Path(box.edges()), 2, Role.OUTLINE));
    }
  }

  private void strings() {
    if (!(said instanceof Said.Silent)) {
      return;
    }
    draft
        .pencil()
        .ifPresent(
            p -> p.guides().forEach(g -> marks.addAll(GuideMarks.of(g, desk.viewport(), words))));
    marks.stream()
        .filter(Mark.Words.class::isInstance)
        .map(Mark.Words.class::cast)
        .map(InSight::room)
        .forEach(written::add);
  }

  private void pencil() {
    if (draft.last().isEmpty() && said instanceof Said.Silent) {
      draft
          .pencil()
          .ifPresent(
              p -> {
                Ring ring = Rings.circle(view.on(p.at()), 7);
                marks.add(Mark.Area.of(ring, Role.PAPER));
                marks.add(Mark.Line.of(new Path(ring.edges()), 2.5, Role.SELECTED));
              });
    }
  }
}
