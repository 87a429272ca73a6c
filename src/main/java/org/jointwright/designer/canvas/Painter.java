package org.jointwright.designer.canvas;

import java.util.List;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.shape.FillRule;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.TextAlignment;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.Runs;
import org.jointwright.shape.Arc;
import org.jointwright.shape.Box;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.shape.Ring;
import org.jointwright.shape.Segment;

/** Paints neutral marks; knows nothing of what they mean but their colour. */
public final class Painter {
  /**
   * So many pixels cost about as much to go through as a stroke by itself: a guess from a profile.
   */
  private static final double STROKE = 4000;

  /** What leans less than this from end to end is level or plumb; pixels. */
  private static final double UPRIGHT = 1e-3;

  private final GraphicsContext pen;
  private final Theme theme;
  private final double width;
  private final double height;
  private final Box seen;
  private double panels = 1;

  /** What is filled with. */
  private Optional<Role> filling = Optional.empty();

  /** One of the lines that are traced but not stroked yet. */
  private Optional<Mark.Line> gathered = Optional.empty();

  /** The box round those lines. */
  private Box around = new Box(0, 0, 0, 0);

  /** A painter on a context of so many pixels. */
  public Painter(GraphicsContext pen, Theme theme, double width, double height) {
    this.pen = pen;
    this.theme = theme;
    this.width = width;
    this.height = height;
    seen = new Box(0, 0, width, height).grown(60);
    pen.setFillRule(FillRule.EVEN_ODD);
    pen.setLineJoin(StrokeLineJoin.MITER);
    pen.setTextBaseline(VPos.BASELINE);
  }

  /** Paints panels as thin as that from here on, so that what lies under them still shows. */
  public void panels(double strength) {
    panels = strength;
  }

  /** Covers everything with a colour. */
  public void cover(Role role) {
    fill(role);
    pen.fillRect(0, 0, width, height);
  }

  /** Wipes everything off. */
  public void wipe() {
    pen.clearRect(0, 0, width, height);
  }

  /** Paints marks from below upwards. */
  public void paint(List<? extends Mark> marks) {
    marks.forEach(this::add);
    stroke();
  }

  /** Paints marks as thin washes, so that what lies under them still shows. */
  public void wash(List<? extends Mark> marks, double strength) {
    pen.setGlobalAlpha(strength);
    paint(marks);
    pen.setGlobalAlpha(1);
  }

  /** Paints a mark. */
  public void paint(Mark mark) {
    add(mark);
    stroke();
  }

  private void add(Mark mark) {
    switch (mark) {
      case Mark.Group group -> group.marks().forEach(this::add);
      case Mark.Line line -> line(line);
      case Mark.Area area -> area(area);
      case Mark.Words words -> words(words);
    }
  }

  /**
   * Lines of one kind that follow one another close by are gathered and stroked at once: a large
   * plan has thousands, and each stroke by itself has its price. So has all that lies in the box
   * round what is stroked at once, painted or not: lines far apart are stroked one by one.
   */
  private void line(Mark.Line line) {
    List<Edge> edges = line.path().edges();
    if (!isSeen(edges)) {
      return;
    }
    if (isUpright(line)) {
      bars(line);
      return;
    }
    Box own = edges.stream().map(Edge::box).reduce(Box::with).orElseThrow().grown(line.width());
    Box both = own.with(around);
    boolean isNear = area(both) - area(around) - area(own) < STROKE;
    if (!isNear || gathered.filter(g -> isAlike(g, line)).isEmpty()) {
      stroke();
      gathered = Optional.of(line);
      around = own;
      pen.beginPath();
    } else {
      around = both;
    }
    trace(edges);
    if (line.path().isClosed()) {
      pen.closePath();
    }
  }

  /** Whether a line is plain, and each stretch of it level or plumb. */
  private static boolean isUpright(Mark.Line line) {
    return line.dashes().isEmpty() && line.path().edges().stream().allMatch(Painter::isUpright);
  }

  private static boolean isUpright(Edge edge) {
    return edge instanceof Segment s
        && (Math.abs(s.start().x() - s.end().x()) < UPRIGHT
            || Math.abs(s.start().y() - s.end().y()) < UPRIGHT);
  }

  /**
   * Such a line is bars, which are painted far faster than a stroke, on the processor above all: no
   * outline need be found for them, and no mask of the box round it. Where two meet each reaches
   * out to the corner.
   */
  private void bars(Mark.Line line) {
    if (gathered.filter(g -> !isAlike(g, line)).isPresent()) {
      stroke();
    }
    fill(line.role());
    double half = line.width() / 2;
    List<Edge> edges = line.path().edges();
    boolean isClosed = line.path().isClosed();
    for (int i = 0; i < edges.size(); i++) {
      Segment s = (Segment) edges.get(i);
      double before = isClosed || i > 0 ? half : 0;
      double after = isClosed || i < edges.size() - 1 ? half : 0;
      Point way = s.length() == 0 ? new Point(0, 0) : s.direction(0);
      bar(Box.of(s.start().minus(way.times(before)), s.end().plus(way.times(after))), half);
    }
  }

  private void bar(Box box, double half) {
    boolean isLevel = box.width() >= box.height();
    // What lies far beside the paper would be too far for the painter's numbers.
    double x = Math.max(seen.minX(), isLevel ? box.minX() : box.centre().x() - half);
    double y = Math.max(seen.minY(), isLevel ? box.centre().y() - half : box.minY());
    double right = Math.min(seen.maxX(), isLevel ? box.maxX() : box.centre().x() + half);
    double down = Math.min(seen.maxY(), isLevel ? box.centre().y() + half : box.maxY());
    if (right > x && down > y) {
      pen.fillRect(x, y, right - x, down - y);
    }
  }

  /** Fills with a colour from here on. */
  private void fill(Role role) {
    if (!filling.equals(Optional.of(role))) {
      filling = Optional.of(role);
      pen.setFill(theme.color(role));
    }
  }

  private boolean isSeen(List<Edge> edges) {
    for (Edge e : edges) {
      if (e.box().meets(seen)) {
        return true;
      }
    }
    return false;
  }

  private static double area(Box box) {
    return box.width() * box.height();
  }

  private static boolean isAlike(Mark.Line a, Mark.Line b) {
    return a.role() == b.role() && a.width() == b.width() && a.dashes().equals(b.dashes());
  }

  /** Strokes the lines that were gathered. */
  private void stroke() {
    gathered.ifPresent(
        line -> {
          pen.setStroke(theme.color(line.role()));
          pen.setLineWidth(line.width());
          pen.setLineCap(StrokeLineCap.BUTT);
          pen.setLineDashes(line.dashes().stream().mapToDouble(d -> d).toArray());
          pen.stroke();
        });
    gathered = Optional.empty();
  }

  private void area(Mark.Area area) {
    if (area.rings().stream().noneMatch(r -> isSeen(r.edges()))) {
      return;
    }
    stroke();
    fill(area.role());
    pen.beginPath();
    for (Ring ring : area.rings()) {
      trace(ring.edges());
      pen.closePath();
    }
    if (area.role() == Role.PANEL && panels < 1) {
      pen.setGlobalAlpha(panels);
      pen.fill();
      pen.setGlobalAlpha(1);
    } else {
      pen.fill();
    }
  }

  private void trace(List<Edge> edges) {
    Point start = edges.getFirst().start();
    pen.moveTo(start.x(), start.y());
    for (Edge e : edges) {
      switch (e) {
        case Segment s -> pen.lineTo(s.end().x(), s.end().y());
        case Arc a -> arc(a);
      }
    }
  }

  private void arc(Arc a) {
    // y runs down: what turns counter-clockwise in figures is seen to turn clockwise.
    double from = -Math.toDegrees(a.start().minus(a.centre()).angle());
    double by = -Math.toDegrees(a.sweep());
    pen.arc(a.centre().x(), a.centre().y(), a.radius(), a.radius(), from, by);
  }

  private void words(Mark.Words words) {
    stroke();
    pen.save();
    pen.setFill(theme.color(words.role()));
    pen.setTextAlign(TextAlignment.LEFT);
    pen.translate(words.at().x(), words.at().y());
    pen.rotate(-words.angle());
    double x =
        switch (words.anchor()) {
          case START -> 0;
          case MIDDLE -> -Runs.width(words) / 2;
          case END -> -Runs.width(words);
        };
    for (Runs.Run run : Runs.of(words.text())) {
      double size = words.size() * (run.larger() ? words.fraction() : 1);
      pen.setFont(Lato.of(words.weight(), size));
      pen.fillText(run.text(), x, 0);
      x += org.jointwright.drawing.Typeface.of(words.weight()).width(run.text(), size);
    }
    pen.restore();
  }
}
