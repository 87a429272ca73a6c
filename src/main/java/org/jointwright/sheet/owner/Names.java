package org.jointwright.sheet.owner;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jointwright.drawing.Anchor;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Rings;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.View;
import org.jointwright.joint.Layout;
import org.jointwright.joint.SlabLayout;
import org.jointwright.measure.Length;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Point;
import org.jointwright.sheet.block.Lines;
import org.jointwright.sheet.block.Type;
import org.jointwright.sheet.place.Ground;
import org.jointwright.sheet.place.Quad;
import org.jointwright.text.Words;

/**
 * Each slab’s name and thickness, and its sizes where no lines tell them, amid a panel that has
 * room for it, or beside the slab with a leader.
 */
final class Names {
  private static final double PITCH = 4.8;
  private static final double LONGEST = 40;

  private final Layout layout;
  private final Words words;
  private final View view;
  private final Ground ground;
  private final List<Quad> tinted;

  /**
   * @param tinted where buildings and streets are, which are no place for a name while there is
   *     another
   */
  Names(Layout layout, Words words, View view, Ground ground, List<Quad> tinted) {
    this.layout = layout;
    this.words = words;
    this.view = view;
    this.ground = ground;
    this.tinted = tinted;
  }

  /** The names, with what the size lines do not tell. */
  Mark.Group of(Sizes sizes) {
    List<Mark> marks = new ArrayList<>();
    for (SlabLayout slab : layout.slabs()) {
      name(slab, sizes.told(slab.slab())).ifPresent(marks::addAll);
    }
    return new Mark.Group("slabs", "", marks);
  }

  private Optional<List<Mark>> name(SlabLayout layout, Optional<String> size) {
    Slab slab = layout.slab();
    Point middle = view.boxOf(slab.outline().ring()).centre();
    List<Point> spots =
        layout.panels().stream()
            .map(p -> view.boxOf(p.ring()).centre())
            .filter(p -> slab.region().contains(view.back(p)))
            .sorted(Comparator.comparingDouble(p -> p.distance(middle)))
            .toList();
    String name = Lines.fitting(slab.id(), Type.NAME, LONGEST);
    String thick = words.print(Length.inches(slab.thickness().inches()));
    List<String> sized = new ArrayList<>(List.of(name));
    size.ifPresent(sized::add);
    List<String> whole = new ArrayList<>(sized);
    whole.add(1, words.say("sheet.owner.thick", thick));
    return amid(spots, whole)
        .or(() -> amid(spots, sized))
        .or(() -> beside(slab, spots, sized))
        .or(() -> amid(spots, List.of(name)));
  }

  private Optional<List<Mark>> amid(List<Point> spots, List<String> said) {
    for (Point at : spots) {
      double top = at.y() + 1.7 - (said.size() - 1) * PITCH / 2;
      Optional<List<Mark>> placed = placed(said, new Point(at.x(), top), Anchor.MIDDLE);
      if (placed.isPresent()) {
        placed.get().forEach(w -> ground.add((Mark.Words) w));
        return placed;
      }
    }
    return Optional.empty();
  }

  /** Lines of text from a first base line down, where they are free. */
  private Optional<List<Mark>> placed(List<String> said, Point at, Anchor anchor) {
    List<Mark> lines = new ArrayList<>();
    for (int i = 0; i < said.size(); i++) {
      Type type = i == 0 ? Type.NAME : Type.NOTE;
      Mark.Words line = type.at(at.x(), at.y() + i * PITCH, said.get(i), anchor);
      if (!ground.isFree(Quad.of(line, 0.8))) {
        return Optional.empty();
      }
      lines.add(line);
    }
    return Optional.of(lines);
  }

  private Optional<List<Mark>> beside(Slab slab, List<Point> spots, List<String> said) {
    for (boolean bare : new boolean[] {true, false}) {
      for (double reach = 8; reach < 60; reach += 2) {
        for (Point from : spots) {
          for (int i = 0; i < 24; i++) {
            Point way = new Point(1, 0).turned(Math.PI / 12 * i + 0.2);
            Point end = from.plus(way.times(reach));
            Optional<List<Mark>> led = led(slab, from, end, said, bare);
            if (led.isPresent()) {
              return led;
            }
          }
        }
      }
    }
    return Optional.empty();
  }

  /** With a leader from a spot to where the text begins, on bare ground or not. */
  private Optional<List<Mark>> led(
      Slab slab, Point from, Point end, List<String> said, boolean bare) {
    boolean right = end.x() >= from.x();
    Point at = new Point(end.x() + (right ? 1 : -1), end.y() + 1.7);
    Quad leader = Quad.line(from, end, 0.3);
    Optional<List<Mark>> text = placed(said, at, right ? Anchor.START : Anchor.END);
    if (text.isEmpty()
        || !ground.isFreeOfTexts(leader)
        || text.get().stream().anyMatch(w -> isElsewhere(slab, Quad.of((Mark.Words) w, 0), bare))) {
      return Optional.empty();
    }
    text.get().forEach(w -> ground.add((Mark.Words) w));
    ground.add(leader);
    List<Mark> marks = new ArrayList<>();
    marks.add(Mark.Line.of(from, end, Picture.PENS.thin(), Role.DIMENSION));
    marks.add(Mark.Area.of(Rings.circle(from, 0.6), Role.DIMENSION));
    marks.addAll(text.get());
    return Optional.of(marks);
  }

  /**
   * Whether a text stands on another slab, which it would seem to name; on bare ground also whether
   * on what is tinted or in an opening.
   */
  private boolean isElsewhere(Slab slab, Quad text, boolean bare) {
    return (bare && tinted.stream().anyMatch(text::meets))
        || text.corners().stream().map(view::back).anyMatch(p -> isElsewhere(slab, p, bare));
  }

  private boolean isElsewhere(Slab slab, Point p, boolean bare) {
    return layout.plan().slabs().stream()
        .anyMatch(
            s ->
                (!s.equals(slab) && s.region().contains(p))
                    || (bare
                        && s.openings().stream().anyMatch(o -> o.outline().ring().contains(p))));
  }
}
