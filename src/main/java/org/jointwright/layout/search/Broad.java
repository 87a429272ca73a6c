package org.jointwright.layout.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jointwright.layout.piece.Draft;
import org.jointwright.layout.piece.Faults;
import org.jointwright.layout.piece.Limits;
import org.jointwright.layout.piece.Loop;
import org.jointwright.layout.piece.Move;
import org.jointwright.layout.piece.Piece;
import org.jointwright.layout.piece.Window;
import org.jointwright.shape.Point;

/**
 * Lays a large slab: lines right across it, and what they do not suit, round an opening or a
 * corner, laid by itself between them. What it takes grows with the slab, not with the number of
 * ways to cut it.
 */
final class Broad {
  /** A slab of so many squares of the longest spacing is large: no other search is needed. */
  private static final double LARGE = 80;

  /** From so many squares on this finds what other searches may miss. */
  private static final double WORTH = 40;

  /** A bay of more such squares is no small part of a slab. */
  private static final double MOST = 40;

  /** So many squares may be cut to try sets of lines, and so many sets at most. */
  private static final double SQUARES = 4_000;

  private static final int SETS = 10;

  /** What a corner that no line passes is guessed to cost, ft. */
  private static final double PASSED_BY = 12;

  /** How many cuts the bays of one set may take together, and each of them. */
  private static final int CUTS = 60_000;

  private static final int FEWEST_CUTS = 1_500;
  private static final int MOST_CUTS = 15_000;

  /** What a beam could not finish is mended, the best few. */
  private static final int MENDED = 2;

  private final Draft start;
  private final Piece slab;
  private final Score score;

  /** Bays are compared by feet and tees alone: neighbours and sights are for the whole. */
  private final Score local;

  private final Map<Integer, Loop> holes = new HashMap<>();
  private Draft best;

  private Broad(Draft start, Score score) {
    this.start = start;
    this.slab = start.pieces().getFirst();
    this.score = score;
    this.local = new Score(List.of(), Sights.NONE, score.goOn());
    this.best = start;
    for (Loop hole : slab.holes()) {
      hole.tags().forEach(t -> holes.put(t, hole));
    }
  }

  /** Whether a slab is large, with nothing of the user's in it and nothing to be laid evenly. */
  static boolean isBroad(Draft start) {
    return holds(start, LARGE);
  }

  /** Whether one that is not large may still be laid so to advantage. */
  static boolean isWorthIt(Draft start) {
    return holds(start, WORTH);
  }

  private static boolean holds(Draft start, double squares) {
    return start.lines().isEmpty()
        && start.ground().mirror().isEmpty()
        && squares(start.pieces().getFirst().area(), start) >= squares;
  }

  private static double squares(double area, Draft start) {
    return area / Math.pow(start.ground().limits().spacing(), 2);
  }

  /** The best draft found; the slab as it was where none is better. */
  static Draft best(Draft start, Score score) {
    Broad broad = new Broad(start, score);
    broad.run();
    return broad.best;
  }

  /**
   * Lines to try.
   *
   * @param length how long they are, ft
   * @param feet what they are guessed to cost in the end, ft
   */
  private record Tried(Grid grid, double length, double feet) {}

  private void run() {
    List<Tried> all = new ArrayList<>();
    for (Point u : start.ground().axes()) {
      Courses rows = new Courses(slab, u, score.targets());
      Courses columns = new Courses(slab, u.left(), score.targets());
      List<Courses.Set> across = columns.sets();
      for (Courses.Set r : rows.sets()) {
        for (Courses.Set c : across) {
          Grid grid = new Grid(slab, u, rows.rows(), r.places(), columns.rows(), c.places());
          double length = r.feet() + c.feet();
          all.add(new Tried(grid, length, length + PASSED_BY * passed(grid)));
        }
      }
    }
    all.sort(Comparator.comparingDouble(Tried::feet));
    int sets = (int) Math.clamp(SQUARES / squares(slab.area(), start), 1, SETS);
    for (Tried t : all.subList(0, Math.min(sets, all.size()))) {
      if (t.length() < score.of(best)) {
        Draft d = laid(t.grid());
        best = score.of(d) < score.of(best) ? d : best;
      }
    }
  }

  /** How many inside corners no line meets. */
  private int passed(Grid grid) {
    int passed = 0;
    for (Faults.Corner c : slab.faults().corners()) {
      passed += grid.meets(c.at()) ? 0 : 1;
    }
    return passed;
  }

  private Draft laid(Grid grid) {
    Draft all = start;
    for (Move m : grid.moves()) {
      score.goOnOrStop();
      all = all.cut(m).orElse(all);
    }
    return Score.isClean(all)
        ? all
        : filled(grid.between(bays(grid, all), start, score::goOnOrStop));
  }

  /** The parts of the slab that lines right across do not suit. */
  private List<Bay> bays(Grid grid, Draft all) {
    Limits limits = start.ground().limits();
    double gap = Math.max(limits.narrowest(), grid.longest() / limits.aspect());
    List<Bay> found = new ArrayList<>();
    for (Piece piece : all.pieces()) {
      if (!piece.faults().none()) {
        Loop outer = piece.outer();
        Bay bay = grid.round(outer.edges(), 0);
        for (int i = 0; i < outer.size(); i++) {
          if (outer.isHard(i)) {
            Loop hole = holes.get(outer.tag(i));
            bay = bay.with(grid.round(hole == null ? List.of(outer.edge(i)) : hole.edges(), gap));
          }
        }
        found.add(bay);
      }
    }
    List<Bay> apart = Bay.apart(found);
    apart.removeIf(b -> squares(b.area(), start) > MOST);
    return apart;
  }

  /** The draft with what is broken in it laid, each piece by itself. */
  private Draft filled(Draft draft) {
    Draft d = draft;
    int each = Math.clamp(CUTS / Math.max(1, draft.tally().broken()), FEWEST_CUTS, MOST_CUTS);
    Effort effort = new Effort(8, 6, each, MENDED, 0, 0, /* thorough= */ false);
    for (Piece p : draft.pieces()) {
      int number = d.pieces().indexOf(p);
      if (number >= 0 && !p.faults().none() && squares(p.area(), start) <= MOST) {
        Window window = Window.of(d, number);
        d = window.into(d, laid(window.part(), effort));
      }
    }
    return d;
  }

  private Draft laid(Draft part, Effort effort) {
    List<Point> ends = part.tally().tees().stream().map(t -> t.at()).toList();
    Beam beam = new Beam(local, effort, /* rare= */ false, ends);
    List<Draft> finished = beam.search(part);
    if (!finished.isEmpty()) {
      return finished.getFirst();
    }
    return beam.nearMisses().stream()
        .limit(effort.climbs())
        .map(new Mend(local, /* rare= */ false)::mend)
        .min(Comparator.comparingDouble(local::of))
        .orElse(part);
  }
}
