package org.jointwright.designer.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.app.Depths;
import org.jointwright.designer.findings.LayAnew;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.JointMark;
import org.jointwright.designer.state.JointSlide;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Picks;
import org.jointwright.measure.Length;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.edit.JointEdit;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;

/** The facts of a joint: where its ends stand, how it is made, why it is there. */
record JointFacts(Desk desk, Pick.AtJoint pick, Words words) {
  /** An end this near to a box-out is at it, inches: the rules' tolerance on lengths. */
  private static final double AT_BOX_OUT = 0.5;

  Optional<Facts> facts() {
    return Picks.joint(desk.plan(), pick).map(this::facts);
  }

  private Facts facts(Joint joint) {
    Names names = new Names(desk.plan(), words);
    List<Row> rows = new ArrayList<>();
    rows.add(end(joint, true));
    rows.add(end(joint, false));
    onward(joint).ifPresent(rows::add);
    if (joint.kind() != JointKind.ISOLATION) {
      rows.add(kinds(joint));
    }
    rows.add(
        new Row.Shown(
            "joint-length",
            words.say("window.joint.length"),
            words.print(Length.inches(joint.path().length()))));
    desk.plan()
        .slab(pick.slab())
        .flatMap(s -> Depths.of(s, joint))
        .ifPresent(
            d ->
                rows.add(
                    new Row.Shown(
                        "joint-depth", words.say("window.joint.depth"), words.printAtLeast(d))));
    joint
        .how()
        .ifPresent(
            h ->
                rows.add(
                    new Row.Shown(
                        "joint-how",
                        words.say("window.joint.how"),
                        words.say("window.how." + h.word()))));
    List<Deed> deeds = new ArrayList<>();
    boolean isLocked = joint.locked();
    deeds.add(
        Deed.of(
            isLocked ? "unlock" : "lock",
            words.say(isLocked ? "window.deed.unlock" : "window.deed.lock"),
            d -> locked(d, !isLocked)));
    deeds.add(
        Deed.of(
            "take-out",
            words.say("window.deed.takeOut"),
            d -> d.editedOnly(new JointEdit.Remove(pick.slab(), pick.joint()))));
    desk.plan()
        .slab(pick.slab())
        .flatMap(s -> LayAnew.of(desk, s, words))
        .map(JointFacts::deed)
        .ifPresent(deeds::add);
    return new Facts(
        names.joint(pick.slab(), joint),
        words.say(kind(joint.kind())),
        rows,
        deeds,
        new Why(desk, pick, words).notes());
  }

  static Deed deed(LayAnew anew) {
    return Deed.of("lay-others", anew.text(), anew::done);
  }

  private Desk locked(Desk d, boolean value) {
    if (Picks.joint(d.plan(), pick).isEmpty()) {
      return d;
    }
    JointEdit.Lock edit = new JointEdit.Lock(pick.slab(), pick.joint(), value);
    // Neither moves anything: a joint given back may be laid elsewhere the next time.
    return d.editedOnly(edit);
  }

  private Row end(Joint joint, boolean first) {
    String id = first ? "joint-first" : "joint-second";
    Lettering lettering = Lettering.of(desk.plan());
    Optional<JointMark> mark = JointMark.of(desk.plan(), lettering, joint, first);
    if (mark.isEmpty()) {
      String where =
          lettering
              .cornerAt(first ? joint.path().start() : joint.path().end())
              .map(c -> words.say("window.joint.atCorner", c.letter()))
              .or(() -> boxOut(first ? joint.path().start() : joint.path().end()))
              .orElse(words.say("window.joint.atOther"));
      return new Row.Shown(
          id, words.say(first ? "window.joint.oneEnd" : "window.joint.otherEnd"), where);
    }
    JointMark m = mark.get();
    String label =
        words.say(
            "window.joint.from",
            m.tape().from().letter(),
            m.tape().from().letter() + "–" + m.tape().to().letter());
    String value = words.print(Length.inches(m.at()));
    if (joint.kind() != JointKind.CONTRACTION || !JointSlide.canSlide(joint)) {
      return new Row.Shown(id, label, value);
    }
    return new Row.Typed(
        id,
        label,
        value,
        t ->
            d ->
                JointSlide.toMark(d, pick, m, Figures.site(t, d))
                    .orElseThrow(() -> new BadFigure("window.figure.noPlace")));
  }

  /** The way on from its mark to the next joint on that side, or to the corner. */
  private Optional<Row> onward(Joint joint) {
    if (joint.kind() == JointKind.ISOLATION || !JointSlide.canSlide(joint)) {
      return Optional.empty();
    }
    return JointMark.either(desk.plan(), Lettering.of(desk.plan()), joint)
        .map(
            m -> {
              JointMark.Onward on = m.onward(desk.plan(), joint);
              String next =
                  on.to()
                      .flatMap(j -> new Names(desk.plan(), words).number(on.slab(), j))
                      .map(n -> words.say("window.tape.toJoint", Integer.toString(n)))
                      .orElseGet(() -> words.say("window.tape.toCorner", m.tape().to().letter()));
              return new Row.Typed(
                  "joint-onward",
                  words.say("window.joint.onward", next),
                  words.print(Length.inches(on.length())),
                  t ->
                      d -> {
                        double back = on.length() - Figures.site(t, d).inches();
                        return JointSlide.toMark(d, pick, m, Length.inches(m.at() + back))
                            .orElseThrow(() -> new BadFigure("window.figure.noPlace"));
                      });
            });
  }

  private Row kinds(Joint joint) {
    List<JointKind> kinds = List.of(JointKind.CONTRACTION, JointKind.CONSTRUCTION);
    return new Row.Choice(
        "joint-kind",
        words.say("window.joint.kind"),
        kinds.stream().map(k -> words.say(kind(k))).toList(),
        kinds.indexOf(joint.kind()),
        i ->
            d ->
                Picks.joint(d.plan(), pick).isEmpty()
                    ? d
                    : d.editedOnly(new JointEdit.SetKind(pick.slab(), pick.joint(), kinds.get(i))));
  }

  private Optional<String> boxOut(Point end) {
    return desk.plan().slab(pick.slab()).stream()
        .flatMap(s -> s.boxOuts().stream())
        .filter(b -> b.outline().ring().distance(end) <= AT_BOX_OUT)
        .findFirst()
        .map(b -> words.say("window.joint.atBoxOut", b.fixed()));
  }

  private static String kind(JointKind kind) {
    return switch (kind) {
      case CONTRACTION -> "window.kind.contraction";
      case CONSTRUCTION -> "window.kind.construction";
      case ISOLATION -> "window.kind.isolation";
    };
  }
}
