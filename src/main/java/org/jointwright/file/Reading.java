package org.jointwright.file;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jointwright.file.json.Json;
import org.jointwright.measure.Length;
import org.jointwright.measure.LengthPrinter;
import org.jointwright.measure.LengthUnit;
import org.jointwright.measure.UnitSystem;

/** One file being read: its unit, and what there is to say about it so far. */
final class Reading {
  /** More problems than this help nobody. */
  private static final int MOST_PROBLEMS = 40;

  /** A plan of more vertices than this is no flatwork. */
  private static final int MOST_VERTICES = 100_000;

  private final List<Remark> problems = new ArrayList<>();
  private final List<Remark> repairs = new ArrayList<>();
  private LengthUnit unit = LengthUnit.FOOT;
  private int vertices;
  private int left;

  LengthUnit unit() {
    return unit;
  }

  void setUnit(LengthUnit value) {
    unit = value;
  }

  void problem(Place place, Json at, String key, Object... arguments) {
    problem(place, at.line(), key, arguments);
  }

  void problem(Place place, int line, String key, Object... arguments) {
    if (problems.size() < MOST_PROBLEMS) {
      problems.add(new Remark(place.text(), line, key, shown(arguments)));
    } else {
      left++;
    }
  }

  void repair(Place place, int line, String key, Object... arguments) {
    if (repairs.size() < MOST_PROBLEMS) {
      repairs.add(new Remark(place.text(), line, key, shown(arguments)));
    }
  }

  /** Lengths in the file's own measures, whoever reads the remark: the file is what to mend. */
  private List<Object> shown(Object... arguments) {
    var fine = UnitSystem.of(unit).finest();
    return Arrays.stream(arguments)
        .map(a -> a instanceof Length length ? LengthPrinter.print(length, fine) : a)
        .toList();
  }

  /** Whether so many vertices more are still within what a plan may have. */
  boolean admits(Place place, Json at, int more) {
    boolean before = vertices <= MOST_VERTICES;
    vertices += more;
    if (before && vertices > MOST_VERTICES) {
      problem(place, at, "file.tooManyVertices", MOST_VERTICES);
    }
    return vertices <= MOST_VERTICES;
  }

  int problemCount() {
    return problems.size() + left;
  }

  List<Remark> problems() {
    List<Remark> all = new ArrayList<>(problems);
    if (left > 0) {
      all.add(Remark.whole("file.andMore", left));
    }
    return all;
  }

  List<Remark> repairs() {
    return repairs;
  }
}
