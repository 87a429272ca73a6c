package org.jointwright.fix;

import java.util.Optional;
import java.util.stream.Stream;
import org.jointwright.check.Finding;
import org.jointwright.check.Judgement;
import org.jointwright.check.Subject;
import org.jointwright.fix.line.Floor;
import org.jointwright.fix.line.Redraft;
import org.jointwright.fix.line.Stop;
import org.jointwright.fix.name.JointName;
import org.jointwright.fix.name.Places;
import org.jointwright.fix.name.Target;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Panel;
import org.jointwright.joint.SlabLayout;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;

/** A finding and where it is. */
final class Broken {
  private final Plan asked;
  private final Layout layout;
  private final Finding finding;
  private final Judgement judged;
  private final SlabLayout laid;
  private final Floor floor;
  private final Places marks;

  Broken(Plan asked, Layout layout, Judgement judged, Finding finding) {
    this(asked, layout, judged, finding, finding.slab());
  }

  private Broken(Plan asked, Layout layout, Judgement judged, Finding finding, String slab) {
    this.asked = asked;
    this.layout = layout;
    this.judged = judged;
    this.finding = finding;
    laid = layout.slab(slab).orElseThrow(() -> new IllegalArgumentException("no slab " + slab));
    floor = Floor.of(layout.plan(), laid.slab());
    marks = new Places(Lettering.of(layout.plan()), layout.plan().unit());
  }

  /** The plan that was given. */
  Plan asked() {
    return asked;
  }

  /** The plan that was laid. */
  Plan plan() {
    return layout.plan();
  }

  /** The finding. */
  Finding finding() {
    return finding;
  }

  /** The same layout with another of its findings looked at. */
  Broken at(Finding other) {
    return new Broken(asked, layout, judged, other);
  }

  /** The same finding seen from another slab, of which something may be done about it. */
  Broken from(String slab) {
    return new Broken(asked, layout, judged, finding, slab);
  }

  /** What the rules found on the same slab besides. */
  Stream<Finding> others() {
    return judged.findings().stream()
        .filter(f -> f.slab().equals(finding.slab()) && !f.equals(finding));
  }

  /** Its slab, as it was laid. */
  Slab slab() {
    return laid.slab();
  }

  /** The slab's panels. */
  SlabLayout laid() {
    return laid;
  }

  /** The slab's lines. */
  Floor floor() {
    return floor;
  }

  /** What places are called. */
  Places marks() {
    return marks;
  }

  /** The panel that it is about; of a whole slab the panel that it points at. */
  Optional<Panel> panel() {
    return finding.subject() instanceof Subject.OnSlab
        ? laid.panels().stream().filter(p -> p.region().contains(finding.at())).findFirst()
        : finding
            .panel()
            .flatMap(id -> laid.panels().stream().filter(p -> p.id().equals(id)).findFirst());
  }

  /** The joint that it is about. */
  Optional<Joint> joint() {
    return finding.joint().flatMap(floor::joint);
  }

  /** The edge that it is about. */
  Optional<Subject.OnEdge> edge() {
    return finding.subject() instanceof Subject.OnEdge e ? Optional.of(e) : Optional.empty();
  }

  /** The fixed object that it is about. */
  Optional<String> fixed() {
    return finding.subject() instanceof Subject.OnFixedObject f
        ? Optional.of(f.fixed())
        : Optional.empty();
  }

  /** What a joint of the slab is called. */
  JointName name(Joint joint) {
    return new JointName(slab().id(), joint.id());
  }

  /** What a line of the slab is called where another meets it. */
  Target target(Stop stop) {
    return marks.target(slab().id(), stop);
  }

  /** The slab's joints, to be changed. */
  Redraft redraft() {
    return Redraft.of(slab());
  }
}
