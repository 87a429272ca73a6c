package org.jointwright.designer.facts;

import java.util.List;
import java.util.Optional;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Pick;
import org.jointwright.measure.Area;
import org.jointwright.measure.Length;
import org.jointwright.plan.GivenJoint;
import org.jointwright.plan.KeepClear;
import org.jointwright.plan.edit.GivenEdit;
import org.jointwright.plan.edit.Thing;
import org.jointwright.plan.edit.Together;
import org.jointwright.plan.edit.ZoneEdit;
import org.jointwright.text.Words;

/** The facts of what the user told of the ground: a zone kept clear, an old joint beside it. */
record GroundFacts(Desk desk, Words words) {
  Optional<Facts> zone(Pick.AtZone pick) {
    return desk.plan()
        .slab(pick.slab())
        .filter(s -> pick.zone() < s.keepClear().size())
        .map(s -> zone(pick, s.keepClear().get(pick.zone())));
  }

  private Facts zone(Pick.AtZone pick, KeepClear zone) {
    Area area = new Area(zone.outline().ring().area());
    return Facts.saying(
        zone.name().isEmpty() ? words.say("window.zone.title") : zone.name(),
        words.say("window.kind.zone"),
        List.of(
            new Row.Typed(
                "zone-name",
                words.say("window.zone.name"),
                zone.name(),
                t -> d -> named(d, pick, zone, t.strip())),
            new Row.Shown("zone-area", words.say("window.zone.area"), words.print(area)),
            moves(pick).get(0),
            moves(pick).get(1)),
        List.of(
            Deed.of(
                "take-out",
                words.say("window.deed.takeOut"),
                d -> d.edited(new ZoneEdit.Remove(pick.slab(), pick.zone())))),
        List.of(words.say("window.zone.why")));
  }

  /** How far it goes to the right and up. */
  private List<Row> moves(Pick.AtZone pick) {
    Thing zone = new Thing.Zone(pick.slab(), pick.zone());
    return new WholeFacts(desk, List.of(zone), words).rows();
  }

  /** The zone with another name; it comes to stand last, which nobody sees. */
  private static Desk named(Desk d, Pick.AtZone pick, KeepClear zone, String name) {
    if (name.equals(zone.name())) {
      return d;
    }
    int last = d.plan().slab(pick.slab()).orElseThrow().keepClear().size() - 1;
    return d.editedOnly(
            new Together(
                List.of(
                    new ZoneEdit.Remove(pick.slab(), pick.zone()),
                    new ZoneEdit.Add(
                        pick.slab(), new KeepClear(name, zone.outline(), zone.kept())))))
        .picking(new Pick.AtZone(pick.slab(), last));
  }

  Optional<Facts> given(Pick.AtGiven pick) {
    return pick.joint() < desk.plan().given().size()
        ? Optional.of(given(pick, desk.plan().given().get(pick.joint())))
        : Optional.empty();
  }

  private Facts given(Pick.AtGiven pick, GivenJoint joint) {
    Length length = Length.inches(joint.path().length());
    return Facts.saying(
        words.say("window.given.title"),
        words.say("window.kind.given"),
        List.of(
            new Row.Shown("given-length", words.say("window.joint.length"), words.print(length))),
        List.of(
            Deed.of(
                "take-out",
                words.say("window.deed.takeOut"),
                d -> d.edited(new GivenEdit.Remove(pick.joint())))),
        List.of(words.say("window.given.why")));
  }
}
