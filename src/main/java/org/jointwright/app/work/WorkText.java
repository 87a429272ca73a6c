package org.jointwright.app.work;

import java.net.URI;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.file.PlanReader;
import org.jointwright.file.PlanReading;
import org.jointwright.file.PlanWriter;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Point;

/**
 * Work as a text: lines for what no plan file holds, then the plan file. Only this program reads
 * it, mostly the same version; the plan in it can be taken out with any editor all the same.
 */
final class WorkText {
  private static final String FIRST = "jointwright-work 1";
  private static final String FILE = "file ";
  private static final String DRAWING = "drawing ";
  private static final String CORNER = "corner ";
  private static final String TYPED = "typed ";
  private static final String WIDE = "wide ";
  private static final String PLAN = "plan";

  private WorkText() {}

  static String write(Work work) {
    StringBuilder text = new StringBuilder(FIRST).append('\n');
    // As an address: a file's name may hold anything, a line break too.
    work.file().ifPresent(f -> line(text, FILE, f.toUri().toString()));
    work.halfDrawn()
        .ifPresent(
            half -> {
              line(text, DRAWING, half.what());
              half.corners().forEach(v -> line(text, CORNER, corner(v)));
              line(text, TYPED, half.typed());
              line(text, WIDE, Double.toString(half.wide()));
            });
    line(text, PLAN, "");
    return text.append(PlanWriter.write(work.plan())).toString();
  }

  private static void line(StringBuilder text, String key, String value) {
    text.append(key).append(value).append('\n');
  }

  /** In full figures, so that what comes back is the very corner. */
  private static String corner(Vertex v) {
    return place(v.at()) + v.via().map(p -> " " + place(p)).orElse("");
  }

  private static String place(Point p) {
    return p.x() + " " + p.y();
  }

  /** The work that a text holds; empty where it holds none that can be read. */
  static Optional<Work> read(String text) {
    String mark = "\n" + PLAN + "\n";
    int end = text.indexOf(mark);
    if (end < 0 || !text.startsWith(FIRST + "\n")) {
      return Optional.empty();
    }
    try {
      List<String> lines = text.substring(0, end).lines().toList();
      return PlanReader.read(text.substring(end + mark.length()))
              instanceof PlanReading.ReadPlan read
          ? Optional.of(new Work(read.plan(), file(lines), halfDrawn(lines)))
          : Optional.empty();
    } catch (IllegalArgumentException | FileSystemNotFoundException e) {
      return Optional.empty();
    }
  }

  private static Optional<Path> file(List<String> lines) {
    return values(lines, FILE).stream().findFirst().map(URI::create).map(Path::of);
  }

  private static Optional<Work.HalfDrawn> halfDrawn(List<String> lines) {
    String typed = values(lines, TYPED).stream().findFirst().orElse("");
    double wide = values(lines, WIDE).stream().findFirst().map(Double::valueOf).orElse(0.0);
    List<Vertex> corners = new ArrayList<>();
    values(lines, CORNER).forEach(c -> corners.add(vertex(c.split(" ", -1))));
    return values(lines, DRAWING).stream()
        .findFirst()
        .map(what -> new Work.HalfDrawn(what, corners, typed, wide));
  }

  private static Vertex vertex(String[] figures) {
    return switch (figures.length) {
      case 2 -> Vertex.at(point(figures, 0));
      case 4 -> Vertex.arc(point(figures, 0), point(figures, 2));
      default -> throw new IllegalArgumentException("no corner");
    };
  }

  private static Point point(String[] figures, int from) {
    double x = Double.parseDouble(figures[from]);
    double y = Double.parseDouble(figures[from + 1]);
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("no place");
    }
    return new Point(x, y);
  }

  private static List<String> values(List<String> lines, String key) {
    return lines.stream()
        .filter(l -> l.startsWith(key))
        .map(l -> l.substring(key.length()))
        .toList();
  }
}
