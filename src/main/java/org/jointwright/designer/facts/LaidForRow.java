package org.jointwright.designer.facts;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Preference;
import org.jointwright.plan.Slab;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Segment;
import org.jointwright.text.Words;

/**
 * What the layout of a slab is to be best at: little to cut, square panels, in line with a side.
 */
record LaidForRow(Plan plan, Slab slab, Words words) {
  Row row() {
    List<Preference> all = new ArrayList<>();
    List<String> said = new ArrayList<>();
    all.add(Preference.Overall.SHORTEST);
    said.add(words.say("window.laidFor.shortest"));
    all.add(Preference.Overall.SQUAREST);
    said.add(words.say("window.laidFor.squarest"));
    List<Edge> edges = slab.outline().ring().edges();
    Names names = new Names(plan, words);
    for (int i = 0; i < edges.size(); i++) {
      String ends = names.ends(edges.get(i));
      String text = words.say("window.laidFor.side", ends);
      if (edges.get(i) instanceof Segment && !ends.isEmpty() && !said.contains(text)) {
        all.add(new Preference.LinedUpWith(i));
        said.add(text);
      }
    }
    Preference now = slab.jointing().preference();
    if (!all.contains(now)) {
      // A side in several pieces, or one that the file says more of: it has no letters of its own.
      all.add(now);
      said.add(words.say("window.laidFor.other"));
    }
    return new Row.Choice(
        "slab-laid-for",
        words.say("window.laidFor"),
        said,
        all.indexOf(now),
        i -> d -> d.edited(new SlabEdit.SetPreference(slab.id(), all.get(i))));
  }
}
