package org.jointwright.app.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Optional;
import org.jointwright.app.PlanFiles;
import org.jointwright.file.PlanReading;
import org.jointwright.plan.Job;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Point;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where the work of a window is kept safe, and who finds it again. */
class WorkPlaceTest {
  private static final Optional<Path> NOTHING = Optional.empty();

  @TempDir private Path folder;
  private Path own;

  @BeforeEach
  void nameTheFolder() {
    own = folder.resolve("not there yet").resolve("own");
  }

  private static Plan named(String name) {
    return Plan.EMPTY.withJob(new Job(name, "", "", "", "", "", Kept.NOTHING));
  }

  private static Work work(String name) {
    return new Work(named(name), Optional.empty(), Optional.empty());
  }

  private static Work work(String name, Path file) {
    return new Work(named(name), Optional.of(file), Optional.empty());
  }

  /** A window that is gone without having come to its end. */
  private void crashed(Work work) throws IOException {
    try (WorkPlace place = WorkPlace.take(own, Optional.of(folder.resolve("no such plan")))) {
      place.keep(work);
    }
  }

  private String backFor(Optional<Path> asked) throws IOException {
    try (WorkPlace place = WorkPlace.take(own, asked)) {
      return place.left().map(w -> w.plan().job().name()).orElse("nothing");
    }
  }

  @Test
  void aFolderWithoutWorkGivesAnEmptyPlace() throws IOException {
    assertThat(backFor(NOTHING)).isEqualTo("nothing");
  }

  @Test
  void allOfTheWorkComesBackAsItWas() throws IOException {
    PlanReading read = PlanFiles.open(Path.of("samples/drive-approach-walk.jointwright.json"));
    Plan plan = ((PlanReading.ReadPlan) read).plan();
    List<Vertex> corners =
        List.of(
            Vertex.at(new Point(0.1, -1e-7)),
            Vertex.arc(new Point(240, 1.0 / 3), new Point(250.25, 60)),
            Vertex.at(new Point(240, 120)));
    Work work =
        new Work(
            plan,
            Optional.of(folder.resolve("a name with\na break").toAbsolutePath()),
            Optional.of(new Work.HalfDrawn("STRIP", corners, "24'6 left", 42.5)));
    crashed(work);
    try (WorkPlace place = WorkPlace.take(own, NOTHING)) {
      assertThat(place.left()).contains(work);
    }
  }

  @Test
  void workThatWasClearedDoesNotComeBack() throws IOException {
    try (WorkPlace place = WorkPlace.take(own, NOTHING)) {
      place.keep(work("done"));
      place.clear();
    }
    assertThat(backFor(NOTHING)).isEqualTo("nothing");
  }

  @Test
  void aWindowThatIsStillOpenKeepsItsWorkToItself() throws IOException {
    try (WorkPlace open = WorkPlace.take(own, NOTHING)) {
      open.keep(work("open"));
      assertThat(backFor(NOTHING)).isEqualTo("nothing");
    }
    assertThat(backFor(NOTHING)).isEqualTo("open");
  }

  @Test
  void theLatestComesBackFirstAndTheOthersWait() throws IOException {
    crashed(work("old"));
    crashed(work("new"));
    Files.setLastModifiedTime(own.resolve("work-1.txt"), FileTime.fromMillis(1_000_000));
    try (WorkPlace first = WorkPlace.take(own, NOTHING)) {
      assertThat(first.left().orElseThrow().plan().job().name()).isEqualTo("new");
      assertThat(first.waiting()).isEqualTo(1);
      assertThat(backFor(NOTHING)).isEqualTo("old");
    }
  }

  @Test
  void aWindowOnAPlanGetsWorkOnThatPlanOnly() throws IOException {
    Path mine = Files.createFile(folder.resolve("mine.json"));
    Path other = Files.createFile(folder.resolve("other.json"));
    crashed(work("on mine", mine));
    assertThat(backFor(Optional.of(other))).isEqualTo("nothing");
    assertThat(backFor(Optional.of(folder.resolve(".").resolve("mine.json")))).isEqualTo("on mine");
    assertThat(backFor(NOTHING)).isEqualTo("on mine");
  }

  @Test
  void aPlanThatIsGoneFromTheDiskIsFoundByItsName() throws IOException {
    Path gone = folder.resolve("gone.json");
    crashed(work("on gone", gone));
    assertThat(backFor(Optional.of(gone))).isEqualTo("on gone");
  }

  @Test
  void whatCannotBeReadIsPutAsideWhole() throws IOException {
    crashed(work("fine"));
    Path file = own.resolve("work-1.txt");
    String broken = Files.readString(file).replace("\"slabs\"", "\"slabs");
    Files.writeString(file, broken);
    try (WorkPlace place = WorkPlace.take(own, NOTHING)) {
      assertThat(place.left()).isEmpty();
      assertThat(Files.readString(place.unread().orElseThrow())).isEqualTo(broken);
      place.keep(work("next"));
    }
    assertThat(backFor(NOTHING)).isEqualTo("next");
  }

  @Test
  void linesThatNobodyWroteAreNoWork() {
    String text = WorkText.write(work("w", folder.resolve("f")));
    assertThat(WorkText.read(text)).isPresent();
    assertThat(WorkText.read(text.replace("work 1", "work 2"))).isEmpty();
    assertThat(WorkText.read(text.replace("file:///", "file://["))).isEmpty();
    assertThat(WorkText.read("jointwright-work 1\ndrawing SLAB\ncorner 1\nplan\n{}")).isEmpty();
    assertThat(WorkText.read("")).isEmpty();
  }

  @Test
  void aFolderThatIsAFileIsRefused() throws IOException {
    Files.createDirectories(own.getParent());
    Files.createFile(own);
    assertThatThrownBy(() -> WorkPlace.take(own, NOTHING)).isInstanceOf(IOException.class);
  }
}
