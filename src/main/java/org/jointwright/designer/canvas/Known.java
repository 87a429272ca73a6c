package org.jointwright.designer.canvas;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jointwright.check.Severity;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Laid;
import org.jointwright.joint.Lap;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Numbering;
import org.jointwright.joint.Panel;
import org.jointwright.joint.SlabLayout;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Plan;
import org.jointwright.shape.Box;
import org.jointwright.shape.Region;
import org.jointwright.shape.Ring;

/**
 * What painting needs to know of a plan that is the same wherever the plan lies in the window: on a
 * large plan it takes far longer to work out than there is between two pictures.
 */
public final class Known {
  /** A slab of fewer panels than this finds room for all that is written on it, if beside it. */
  private static final int MANY = 300;

  private final Desk desk;
  private final Layout layout;
  private final Layout lines;
  private final List<Corners.Corner> corners;
  private final Lettering lettering;
  private final Numbering numbering;
  private final Map<String, Double> panels;
  private final Map<String, List<Room>> rooms;
  private final List<List<Ring>> broken;
  private final List<Lap> laps;
  private Optional<Asked> asked = Optional.empty();

  /**
   * Where a name may stand.
   *
   * @param region a panel, or a slab that has none
   * @param box the box round it
   */
  record Room(Region region, Box box) {
    private static Room of(Region region) {
      return new Room(region, region.outer().box());
    }
  }

  private Known(Desk desk) {
    this.desk = desk;
    layout = Shown.of(desk);
    lettering = Lettering.of(layout.plan());
    corners = Corners.of(layout, lettering);
    numbering = Numbering.of(layout.plan());
    lines = Lines.of(layout, numbering);
    panels = layout.slabs().stream().collect(Collectors.toMap(s -> s.slab().id(), Known::panelOf));
    rooms = layout.slabs().stream().collect(Collectors.toMap(s -> s.slab().id(), Known::roomsOf));
    broken = brokenOn(desk);
    laps = Lap.of(desk.plan());
  }

  /** What is known of the plan on a desk. */
  public static Known of(Desk desk) {
    return new Known(desk);
  }

  /** This, or what is known of {@code now} where its plan or its joints are others. */
  // The same history is the same plan; comparing whole plans for each picture would be slow.
  @SuppressWarnings("ReferenceEquality")
  public Known or(Desk now) {
    return desk.history() == now.history() && desk.laying().laid().equals(now.laying().laid())
        ? this
        : of(now);
  }

  /** The panels, the largest first; the slab where it has none. */
  private static List<Room> roomsOf(SlabLayout s) {
    return s.panels().isEmpty()
        ? List.of(Room.of(s.slab().region()))
        : s.panels().stream()
            .sorted(Comparator.comparingLong(p -> -Math.round(p.area())))
            .map(Panel::region)
            .map(Room::of)
            .toList();
  }

  /** The middle one of the narrow sides of its panels, where it has many. */
  private static double panelOf(SlabLayout s) {
    if (s.panels().size() < MANY) {
      return Double.POSITIVE_INFINITY;
    }
    double[] sides =
        s.panels().stream()
            .map(p -> p.ring().box())
            .mapToDouble(b -> Math.min(b.width(), b.height()))
            .sorted()
            .toArray();
    return sides[sides.length / 2];
  }

  private static List<List<Ring>> brokenOn(Desk desk) {
    Optional<Laid> laid = desk.laying().laid();
    List<List<Ring>> broken = new ArrayList<>();
    if (laid.isEmpty()) {
      return broken;
    }
    for (SlabLayout s : laid.get().layout().slabs()) {
      Set<String> ids =
          laid.get().judgement().of(Severity.MUST).stream()
              .filter(f -> f.slab().equals(s.slab().id()))
              .flatMap(f -> f.panel().stream())
              .collect(Collectors.toSet());
      s.panels().stream()
          .filter(p -> ids.contains(p.id()))
          .map(
              p -> {
                List<Ring> rings = new ArrayList<>(List.of(p.ring()));
                rings.addAll(p.region().holes());
                return rings;
              })
          .forEach(broken::add);
    }
    return broken;
  }

  /** The layout that is shown. */
  Layout layout() {
    return layout;
  }

  /** The same, its joints as few lines as they can be painted with. */
  Layout lines() {
    return lines;
  }

  /** Its corners and their letters. */
  List<Corners.Corner> corners() {
    return corners;
  }

  /** How wide the panels of a slab are mostly, inches; without end where they are few. */
  double panel(String slab) {
    return panels.getOrDefault(slab, Double.POSITIVE_INFINITY);
  }

  /** The numbers of its joints. */
  Numbering numbering() {
    return numbering;
  }

  /** The numbers of a plan’s joints, which are known where that is the plan that is shown. */
  public Numbering numbering(Plan plan) {
    return plan.equals(layout.plan()) ? numbering : Numbering.of(plan);
  }

  /** The number of a joint of a plan, looked for once: what is picked is painted each time. */
  Optional<Numbering.Item> number(Plan plan, String slab, Joint joint) {
    Asked now = new Asked(plan, slab, joint, Optional.empty());
    if (asked.filter(a -> a.isOf(now)).isEmpty()) {
      asked = Optional.of(new Asked(plan, slab, joint, numbering(plan).of(slab, joint)));
    }
    return asked.orElseThrow().item();
  }

  /**
   * A joint whose number was asked.
   *
   * @param item what has its number; empty where it has none
   */
  private record Asked(Plan plan, String slab, Joint joint, Optional<Numbering.Item> item) {
    // The same plan is the very same while nothing is done to it; comparing whole plans is slow.
    @SuppressWarnings("ReferenceEquality")
    boolean isOf(Asked other) {
      return plan == other.plan && slab.equals(other.slab) && joint.equals(other.joint);
    }
  }

  /** The letters of a plan’s corners, which are known where that is the plan that is shown. */
  Lettering lettering(Plan plan) {
    return plan.equals(layout.plan()) ? lettering : Lettering.of(plan);
  }

  /** The panels of a slab, the largest first; the slab where it has none. */
  List<Room> rooms(SlabLayout slab) {
    return rooms.getOrDefault(slab.slab().id(), List.of());
  }

  /** The panels that break a rule that must hold: each its ring and those of its holes. */
  List<List<Ring>> broken() {
    return broken;
  }

  /** Where slabs lie over one another, as they lie now, whatever was laid last. */
  List<Lap> laps() {
    return laps;
  }
}
