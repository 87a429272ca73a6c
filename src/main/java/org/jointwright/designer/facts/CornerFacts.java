package org.jointwright.designer.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.app.CornerTips;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Picks;
import org.jointwright.designer.state.Soundness;
import org.jointwright.measure.Length;
import org.jointwright.plan.Outline;
import org.jointwright.plan.edit.Ref;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.text.Words;

/** The facts of a corner: the sides that meet there, and its angle. */
record CornerFacts(Desk desk, Ref corner, Words words) {
  Optional<Facts> facts() {
    return Picks.outline(desk.plan(), corner)
        .filter(o -> corner.index() < o.vertices().size())
        .map(this::facts);
  }

  private Facts facts(Outline outline) {
    List<Edge> edges = outline.ring().edges();
    int n = edges.size();
    Edge before = edges.get((corner.index() + n - 1) % n);
    Edge after = edges.get(corner.index());
    Point at = after.start();
    Names names = new Names(desk.plan(), words);
    List<Row> rows = new ArrayList<>();
    rows.add(length("corner-before", names, before));
    rows.add(length("corner-after", names, after));
    double turn =
        Math.toDegrees(
            Math.atan2(
                before.direction(1).cross(after.direction(0)),
                before.direction(1).dot(after.direction(0))));
    rows.add(
        new Row.Shown(
            "corner-angle",
            words.say("window.corner.angle"),
            words.say("window.degrees", Math.round(180 - turn))));
    List<Deed> deeds = new ArrayList<>();
    List<String> said = new ArrayList<>();
    CornerTip tip = new CornerTip(desk.plan(), corner, words);
    if (corner.ring() == Ref.OUTLINE && turn > 0) {
      rows.add(tip.row());
      tip.offer().ifPresent(deeds::add);
      if (CornerTips.isWorthIt(180 - turn)) {
        said.add(words.say("window.corner.sharp"));
      }
    }
    if (n > 3) {
      deeds.add(Deed.of("take-out", words.say("window.deed.takeOut"), CornerFacts.without(corner)));
    }
    said.add(words.say("window.corner.drag"));
    return Facts.saying(names.corner(at), words.say("window.kind.corner"), rows, deeds, said);
  }

  private Row length(String id, Names names, Edge e) {
    return new Row.Shown(id, names.side(e), words.print(Length.inches(e.length())));
  }

  static java.util.function.UnaryOperator<Desk> without(Ref corner) {
    return d -> {
      Desk changed = d.edited(new SlabEdit.RemoveCorner(corner));
      return Soundness.holds(changed.plan(), corner.slab())
          ? changed.picking(new org.jointwright.designer.state.Pick.WholeSlab(corner.slab()))
          : d;
    };
  }
}
