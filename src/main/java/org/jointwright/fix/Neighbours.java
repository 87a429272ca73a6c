package org.jointwright.fix;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jointwright.fix.line.Straight;
import org.jointwright.joint.Panel;
import org.jointwright.joint.Side;
import org.jointwright.joint.Source;
import org.jointwright.plan.Joint;

/** What lies about a panel. */
final class Neighbours {
  private Neighbours() {}

  /** The joints among the sides of a panel, longest side first. */
  static List<Joint> joints(Broken broken, Panel panel) {
    Map<String, Double> lengths = new LinkedHashMap<>();
    for (Side s : panel.outer()) {
      if (s.source() instanceof Source.OnJoint j) {
        lengths.merge(j.joint(), s.edge().length(), Double::sum);
      }
    }
    return lengths.entrySet().stream()
        .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
        .flatMap(e -> broken.floor().joint(e.getKey()).stream())
        .toList();
  }

  /** The lines of joints among the sides of a panel, each once, longest side first. */
  static List<Straight> lines(Broken broken, Panel panel) {
    List<Straight> lines = new ArrayList<>();
    for (Joint j : joints(broken, panel)) {
      if (lines.stream().noneMatch(l -> l.ids().contains(j.id()))) {
        Straight.of(broken.floor(), j).ifPresent(lines::add);
      }
    }
    return lines;
  }

  /** The panels on the other side of a line from a panel. */
  static List<Panel> beyond(Broken broken, Panel panel, Straight line) {
    Set<String> ids = line.ids();
    return broken.laid().panels().stream()
        .filter(p -> !p.id().equals(panel.id()))
        .filter(
            p ->
                p.outer().stream()
                    .anyMatch(
                        s -> s.source() instanceof Source.OnJoint j && ids.contains(j.joint())))
        .filter(p -> touches(panel, p, ids))
        .toList();
  }

  private static boolean touches(Panel a, Panel b, Set<String> ids) {
    return a.outer().stream()
        .filter(s -> s.source() instanceof Source.OnJoint j && ids.contains(j.joint()))
        .anyMatch(s -> b.ring().distance(s.edge().at(0.5)) < 1);
  }
}
