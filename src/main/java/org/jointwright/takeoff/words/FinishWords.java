package org.jointwright.takeoff.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Slab.Finishing;
import org.jointwright.text.Words;

/** The words of what is made of surfaces. */
public record FinishWords(Words words) {
  /** How it is finished, without its color; empty where nobody has said. */
  public String finished(Finishing finishing) {
    return finishing
        .uncolored()
        .finish()
        .map(f -> words.say("sheet.finish." + f.name()))
        .map(f -> hasPattern(finishing) ? words.say("sheet.pattern", f, finishing.pattern()) : f)
        .orElse("");
  }

  private static boolean hasPattern(Finishing finishing) {
    return finishing.isStamped() && !finishing.pattern().isBlank();
  }

  /** What a color is called, or that none is chosen yet. */
  public String color(String color) {
    return color.isBlank() ? words.say("sheet.color.open") : color;
  }

  /** What the crew is told: finish, pattern, color and how it comes in; empty for nothing said. */
  public String all(Finishing finishing) {
    String color =
        finishing.isColored()
            ? words.say("sheet.color." + finishing.coloring().name(), color(finishing.color()))
            : "";
    return String.join(
        ", ", Stream.of(finished(finishing), color).filter(s -> !s.isEmpty()).toList());
  }

  /**
   * The names of the slabs of which the same is said, whatever its capitals and spaces, in the
   * order of the slabs.
   */
  public static Map<String, List<String>> bySaid(
      List<Slab> slabs, Function<Finishing, String> said) {
    Map<String, String> first = new HashMap<>();
    Map<String, List<String>> found = new LinkedHashMap<>();
    for (Slab s : slabs) {
      String what = said.apply(s.finishing());
      if (!what.isEmpty()) {
        String name = first.computeIfAbsent(Finishing.keyOf(what), k -> what);
        found.computeIfAbsent(name, k -> new ArrayList<>()).add(s.id());
      }
    }
    return found;
  }
}
