package org.jointwright.designer.facts;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.designer.sketch.Drawn;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Drafting;
import org.jointwright.designer.state.SetDown;
import org.jointwright.measure.Area;
import org.jointwright.plan.Job;
import org.jointwright.plan.edit.JobEdit;
import org.jointwright.text.Words;

/** The facts of the job, shown while nothing is picked. */
record JobFacts(Desk desk, Words words) {
  Facts facts() {
    Job job = desk.plan().job();
    List<Row> rows = new ArrayList<>();
    rows.add(
        new Row.Typed(
            "job-name",
            words.say("window.job.name"),
            job.name(),
            t -> d -> d.editedOnly(new JobEdit(named(d.plan().job(), t.strip())))));
    double area =
        desk.plan().slabs().stream().mapToDouble(s -> SlabFacts.area(desk, s).squareInches()).sum();
    if (area > 0) {
      rows.add(
          new Row.Shown("job-area", words.say("window.job.area"), words.print(new Area(area))));
    }
    List<Deed> deeds = new ArrayList<>();
    deeds.add(Deed.of("draw-slab", words.say("window.deed.drawSlab"), Drafting::begin));
    deeds.add(Deed.of("ready-shape", words.say("window.deed.readyShape"), SetDown::begin));
    deeds.add(
        Deed.of(
            "draw-strip", words.say("window.deed.drawStrip"), d -> Drafting.begin(d, Drawn.STRIP)));
    if (!desk.plan().slabs().isEmpty()) {
      rows.addAll(new PourRows(desk, words).rows());
      deeds.add(
          Deed.of(
              "draw-old-joint",
              words.say("window.deed.drawOldJoint"),
              d -> Drafting.begin(d, Drawn.OLD_JOINT)));
    }
    deeds.add(
        new Deed(
            "photo",
            words.say(
                desk.plan().photo().isPresent() ? "window.deed.toPhoto" : "window.deed.photo"),
            new Deed.ToPhoto(),
            false));
    List<String> why =
        desk.plan().slabs().isEmpty()
            ? List.of(words.say("window.job.begin"), words.say("window.job.examples"))
            : List.of(words.say("window.job.pick"));
    String title = job.name().isBlank() ? words.say("window.job.unnamed") : job.name();
    return Facts.saying(title, words.say("window.kind.job"), rows, deeds, why);
  }

  private static Job named(Job job, String name) {
    return new Job(
        name, job.site(), job.client(), job.date(), job.revision(), job.notes(), job.kept());
  }
}
