package org.jointwright.designer.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jointwright.app.work.Work;
import org.jointwright.designer.sketch.Draft;
import org.jointwright.designer.sketch.Drawn;
import org.jointwright.designer.sketch.Pencil;
import org.jointwright.plan.Job;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Vertex;
import org.jointwright.plan.edit.JobEdit;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.Test;

/** What of a desk is kept safe, and a desk with it back. */
class WorkOnDeskTest {
  private static final Path FILE = Path.of("heron.jointwright.json");
  private static final Plan IN_FILE = named("in the file");

  private static Plan named(String name) {
    return Plan.EMPTY.withJob(job(name));
  }

  private static Job job(String name) {
    return new Job(name, "", "", "", "", "", Kept.NOTHING);
  }

  private static Desk drawing(Desk desk, List<Vertex> placed, String typed) {
    Draft draft =
        new Draft(Drawn.ZONE, placed, Optional.of(Pencil.free(new Point(5, 5))), typed, 0);
    return desk.withHand(InHand.drawing(draft));
  }

  @Test
  void nothingIsKeptOfADeskThatStandsInItsFile() {
    assertThat(WorkOnDesk.of(Desk.blank())).isEmpty();
    assertThat(WorkOnDesk.of(Desk.opened(IN_FILE, FILE))).isEmpty();
    assertThat(WorkOnDesk.of(drawing(Desk.blank(), List.of(), ""))).isEmpty();
  }

  @Test
  void anEditIsWorkWithTheFileItBelongsTo() {
    Desk edited = Desk.opened(IN_FILE, FILE).edited(new JobEdit(job("new")));
    assertThat(WorkOnDesk.of(edited))
        .contains(new Work(named("new"), Optional.of(FILE), Optional.empty()));
    assertThat(WorkOnDesk.of(edited.undone())).isEmpty();
  }

  @Test
  void aCornerOrAWordIsWork() {
    List<Vertex> corner = List.of(Vertex.at(new Point(1, 2)));
    assertThat(WorkOnDesk.of(drawing(Desk.blank(), corner, "")))
        .contains(
            new Work(
                Plan.EMPTY,
                Optional.empty(),
                Optional.of(new Work.HalfDrawn("ZONE", corner, "", 0))));
    assertThat(WorkOnDesk.of(drawing(Desk.blank(), List.of(), "24"))).isPresent();
  }

  @Test
  void workComesBackNotSavedAndUndoingShowsTheFile() {
    Work work = new Work(named("new"), Optional.of(FILE), Optional.empty());
    Desk back = WorkOnDesk.back(work, Optional.of(IN_FILE));
    assertThat(back.plan()).isEqualTo(named("new"));
    assertThat(back.isKept()).isFalse();
    assertThat(back.papers().file()).contains(FILE);
    assertThat(WorkOnDesk.of(back)).contains(work);
    assertThat(back.undone().plan()).isEqualTo(IN_FILE);
    assertThat(back.undone().isKept()).isTrue();
  }

  @Test
  void workOfAFileThatIsGoneStillGoesIntoIt() {
    Work work = new Work(named("new"), Optional.of(FILE), Optional.empty());
    Desk back = WorkOnDesk.back(work, Optional.empty());
    assertThat(back.plan()).isEqualTo(named("new"));
    assertThat(back.papers().file()).contains(FILE);
    assertThat(back.isKept()).isFalse();
  }

  @Test
  void workThatNeverWasSavedComesBackWithoutAFile() {
    Desk back =
        WorkOnDesk.back(
            new Work(named("new"), Optional.empty(), Optional.empty()), Optional.empty());
    assertThat(back.papers().file()).isEmpty();
    assertThat(back.isKept()).isFalse();
  }

  @Test
  void aDrawingGoesOnWhereItWasLeft() {
    List<Vertex> corners = List.of(Vertex.at(new Point(0, 0)), Vertex.at(new Point(240, 0)));
    Desk left = drawing(Desk.blank(), corners, "12' le");
    Desk back = WorkOnDesk.back(WorkOnDesk.of(left).orElseThrow(), Optional.empty());
    assertThat(back.draft())
        .contains(new Draft(Drawn.ZONE, corners, Optional.empty(), "12' le", 0));
    assertThat(back.sight().step()).isEqualTo(Step.OUTLINE);
  }

  @Test
  void aDrawingOfAKindThatNobodyKnowsIsLeftOutAndThePlanComesBack() {
    Work.HalfDrawn half = new Work.HalfDrawn("PYRAMID", List.of(), "12", 0);
    Work work = new Work(named("new"), Optional.empty(), Optional.of(half));
    Desk back = WorkOnDesk.back(work, Optional.empty());
    assertThat(back.draft()).isEmpty();
    assertThat(back.plan()).isEqualTo(named("new"));
  }
}
