package org.jointwright.check.judge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.jointwright.check.Check;
import org.jointwright.check.CrashedRule;
import org.jointwright.check.Finding;
import org.jointwright.check.Judgement;
import org.jointwright.check.evidence.Judged;
import org.jointwright.check.hold.IsolationWhereHeld;
import org.jointwright.check.line.Anchorage;
import org.jointwright.check.line.CrookedJoints;
import org.jointwright.check.line.LockedJoints;
import org.jointwright.check.line.MissedNeighbours;
import org.jointwright.check.line.OffMarkJoints;
import org.jointwright.check.line.ShallowJoints;
import org.jointwright.check.line.SlantedEnds;
import org.jointwright.check.line.SpareJoints;
import org.jointwright.check.line.Tees;
import org.jointwright.check.panel.AcuteAngles;
import org.jointwright.check.panel.FeatherCorners;
import org.jointwright.check.panel.InsideCorners;
import org.jointwright.check.panel.LongPanels;
import org.jointwright.check.panel.LongPanelsOnTheWhole;
import org.jointwright.check.panel.NarrowPanels;
import org.jointwright.check.panel.ScrappyPanels;
import org.jointwright.check.panel.StretchedPanels;
import org.jointwright.check.panel.UnevenPanels;
import org.jointwright.check.panel.WholePanels;
import org.jointwright.check.wish.ClashingSettings;
import org.jointwright.check.wish.ClearZones;
import org.jointwright.check.wish.LargePours;
import org.jointwright.check.wish.SlabsApart;
import org.jointwright.joint.Layout;
import org.jointwright.joint.SlabLayout;
import org.jointwright.plan.Plan;

/** Judges layouts by every rule. */
public final class Checks {
  /** The rules that must hold of any layout, and depend on its joints. */
  private static final List<Check> MUST =
      List.of(
          new LongPanels(),
          new StretchedPanels(),
          new InsideCorners(),
          new AcuteAngles(),
          new NarrowPanels(),
          new Anchorage(),
          new IsolationWhereHeld(),
          new WholePanels(),
          new LockedJoints(),
          new ClearZones());

  private static final List<Check> OTHERS =
      List.of(
          new SlabsApart(),
          new Tees(),
          new SpareJoints(MUST),
          new UnevenPanels(),
          new LongPanelsOnTheWhole(),
          new SlantedEnds(),
          new OffMarkJoints(),
          new MissedNeighbours(),
          new ScrappyPanels(),
          new ShallowJoints(),
          new CrookedJoints(),
          new LargePours(),
          new FeatherCorners(),
          new ClashingSettings(MUST));

  /** Every rule, in the order they are reported. */
  public static final List<Check> ALL = Stream.of(MUST, OTHERS).flatMap(List::stream).toList();

  private Checks() {}

  /** Judges the joints that are in a plan, by every rule. */
  public static Judgement judge(Layout layout) {
    return judge(layout.plan(), layout);
  }

  /**
   * Judges a layout by every rule.
   *
   * @param asked the plan that was given, with what its user locked
   * @param layout what was laid for it
   */
  public static Judgement judge(Plan asked, Layout layout) {
    return judge(asked, layout, ALL);
  }

  /**
   * Judges a layout by every rule, unless it is told to stop.
   *
   * @param goOn asked before each rule
   * @return empty once {@code goOn} has said no
   */
  public static Optional<Judgement> judge(Plan asked, Layout layout, BooleanSupplier goOn) {
    try {
      return Optional.of(judge(asked, layout, ALL, goOn));
    } catch (CancellationException stopped) {
      return Optional.empty();
    }
  }

  /** Judges a layout by some rules; one that throws is reported and the others still judge. */
  public static Judgement judge(Plan asked, Layout layout, List<Check> checks) {
    return judge(asked, layout, checks, () -> true);
  }

  private static Judgement judge(
      Plan asked, Layout layout, List<Check> checks, BooleanSupplier goOn) {
    List<Finding> findings = new ArrayList<>();
    List<CrashedRule> crashed = new ArrayList<>();
    for (SlabLayout slab : layout.slabs()) {
      Judgement one = judge(new Judged(asked, layout, slab), checks, goOn);
      findings.addAll(one.findings());
      crashed.addAll(one.crashed());
    }
    return new Judgement(findings, crashed);
  }

  /** Judges one slab of a layout by every rule. */
  public static Judgement judge(Judged slab) {
    return judge(slab, ALL, () -> true);
  }

  private static Judgement judge(Judged slab, List<Check> checks, BooleanSupplier goOn) {
    List<Finding> findings = new ArrayList<>();
    List<CrashedRule> crashed = new ArrayList<>();
    for (Check check : checks) {
      if (!goOn.getAsBoolean()) {
        throw new CancellationException("the judging was told to stop");
      }
      try {
        findings.addAll(check.findings(slab));
      } catch (RuntimeException fault) {
        crashed.add(new CrashedRule(check.rule(), slab.slab().id(), fault));
      }
    }
    return new Judgement(findings, crashed);
  }
}
