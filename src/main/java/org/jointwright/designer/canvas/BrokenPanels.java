package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jointwright.check.Finding;
import org.jointwright.check.Severity;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Laid;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Role;
import org.jointwright.joint.Panel;
import org.jointwright.shape.Ring;

/** The panels that break a rule that must hold, to be tinted. */
public final class BrokenPanels {
  /** How strong the tint is. */
  public static final double STRENGTH = 0.13;

  private BrokenPanels() {}

  /** The panels as areas of the colour of what must be mended. */
  public static List<Mark> of(Desk desk) {
    List<Mark> marks = new ArrayList<>();
    Optional<Laid> laid = desk.laying().laid();
    if (laid.isEmpty()) {
      return marks;
    }
    Set<Panel> broken = new LinkedHashSet<>();
    for (Finding f : laid.get().judgement().of(Severity.MUST)) {
      laid.get().layout().slab(f.slab()).stream()
          .flatMap(s -> s.panels().stream())
          .filter(p -> f.panel().equals(Optional.of(p.id())))
          .forEach(broken::add);
    }
    for (Panel panel : broken) {
      List<Ring> rings = new ArrayList<>();
      rings.add(desk.viewport().view().on(panel.ring()));
      panel.region().holes().forEach(h -> rings.add(desk.viewport().view().on(h)));
      marks.add(new Mark.Area(rings, Role.MUST));
    }
    return marks;
  }
}
