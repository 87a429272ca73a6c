package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jointwright.drawing.JointMarks;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Pens;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.UserMarks;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.FeatureKind;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Path;

/**
 * A line of the legend.
 *
 * @param name what it is
 * @param sample how it is drawn
 */
record Legend(String name, Sample sample) {
  /** Draws a line of the sort along a path. */
  interface Sample {
    List<Mark> along(Path path);
  }

  /** What the plan has of lines to be explained: its joints first, then what the user told. */
  static List<Legend> of(Facts facts) {
    List<Legend> lines = new ArrayList<>();
    List<Slab> slabs = facts.plan().slabs();
    for (JointKind kind : JointKind.values()) {
      if (slabs.stream().anyMatch(s -> s.joints().stream().anyMatch(j -> j.kind() == kind))) {
        lines.add(new Legend(name(kind, facts), p -> JointMarks.joint(kind, p, 0, Pens.PAPER)));
      }
    }
    if (!facts.plan().given().isEmpty()) {
      lines.add(told(facts.say("legend.given"), Role.GIVEN));
    }
    if (slabs.stream().anyMatch(s -> !s.keepClear().isEmpty())) {
      lines.add(told(facts.say("legend.zone"), Role.ZONE));
    }
    String features =
        slabs.stream()
            .flatMap(Legend::settings)
            .flatMap(e -> e.features().stream())
            .map(f -> f.kind())
            .distinct()
            .sorted()
            .map(k -> name(k, facts))
            .collect(Collectors.joining(", "));
    if (!features.isEmpty()) {
      lines.add(new Legend(features, p -> UserMarks.bar(p, Pens.PAPER)));
    }
    return lines;
  }

  private static Stream<EdgeSetting> settings(Slab slab) {
    return Stream.concat(
        slab.edges().values().stream(),
        slab.openings().stream().flatMap(o -> o.edges().values().stream()));
  }

  private static Legend told(String name, Role role) {
    return new Legend(name, p -> List.of(UserMarks.line(role, p, Pens.PAPER)));
  }

  private static String name(JointKind kind, Facts facts) {
    return switch (kind) {
      case CONTRACTION -> facts.say("legend.contraction");
      case CONSTRUCTION -> facts.say("legend.construction");
      case ISOLATION -> facts.say("legend.isolation");
    };
  }

  private static String name(FeatureKind kind, Facts facts) {
    return switch (kind) {
      case GARAGE_DOOR -> facts.say("legend.garageDoor");
      case DOOR -> facts.say("legend.door");
      case STEP -> facts.say("legend.step");
      case WALK -> facts.say("legend.walk");
      case OTHER -> facts.say("legend.other");
    };
  }
}
