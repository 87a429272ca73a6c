package org.jointwright.sheet.place;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jointwright.drawing.JointMarks;
import org.jointwright.drawing.Mark;
import org.jointwright.drawing.Pens;
import org.jointwright.drawing.Role;
import org.jointwright.drawing.UserMarks;
import org.jointwright.joint.FillerWidth;
import org.jointwright.measure.Length;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.FeatureKind;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Path;
import org.jointwright.text.Words;

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
  static List<Legend> of(Plan plan, Words words) {
    List<Legend> lines = new ArrayList<>();
    List<Slab> slabs = plan.slabs();
    for (JointKind kind : JointKind.values()) {
      if (slabs.stream().anyMatch(s -> s.joints().stream().anyMatch(j -> j.kind() == kind))) {
        String name = kind == JointKind.ISOLATION ? isolation(slabs, words) : name(kind, words);
        lines.add(new Legend(name, p -> JointMarks.joint(kind, p, 0, Pens.PAPER)));
      }
    }
    if (!plan.given().isEmpty()) {
      lines.add(told(words.say("sheet.legend.given"), Role.GIVEN));
    }
    if (slabs.stream().anyMatch(s -> !s.keepClear().isEmpty())) {
      lines.add(told(words.say("sheet.legend.zone"), Role.ZONE));
    }
    String features =
        slabs.stream()
            .flatMap(Legend::settings)
            .flatMap(e -> e.features().stream())
            .map(f -> f.kind())
            .distinct()
            .sorted()
            .map(k -> name(k, words))
            .collect(Collectors.joining(", "));
    if (!features.isEmpty()) {
      lines.add(new Legend(features, p -> UserMarks.bar(p, Pens.PAPER)));
    }
    return lines;
  }

  /** Filler with its widths: on the plan it is drawn wider than it is where it is thin. */
  private static String isolation(List<Slab> slabs, Words words) {
    Words fine = words.rounded(words.units().finest());
    String widths =
        slabs.stream()
            .flatMap(
                s ->
                    s.joints().stream()
                        .filter(j -> j.kind() == JointKind.ISOLATION)
                        .map(j -> FillerWidth.of(j, s)))
            .sorted()
            .map(w -> fine.print(Length.inches(w)))
            .distinct()
            .collect(Collectors.joining(", "));
    return words.say("sheet.legend.wide", name(JointKind.ISOLATION, words), widths);
  }

  private static Stream<EdgeSetting> settings(Slab slab) {
    return Stream.concat(
        slab.edges().values().stream(),
        slab.openings().stream().flatMap(o -> o.edges().values().stream()));
  }

  private static Legend told(String name, Role role) {
    return new Legend(name, p -> List.of(UserMarks.line(role, p, Pens.PAPER)));
  }

  private static String name(JointKind kind, Words words) {
    return switch (kind) {
      case CONTRACTION -> words.say("sheet.legend.contraction");
      case CONSTRUCTION -> words.say("sheet.legend.construction");
      case ISOLATION -> words.say("sheet.legend.isolation");
    };
  }

  private static String name(FeatureKind kind, Words words) {
    return switch (kind) {
      case GARAGE_DOOR -> words.say("sheet.legend.garageDoor");
      case DOOR -> words.say("sheet.legend.door");
      case STEP -> words.say("sheet.legend.step");
      case WALK -> words.say("sheet.legend.walk");
      case OTHER -> words.say("sheet.legend.other");
    };
  }
}
