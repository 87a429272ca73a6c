package org.jointwright.designer.start;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jointwright.app.work.WorkPlace;
import org.jointwright.designer.pane.Board;
import org.jointwright.designer.pane.JobWork;
import org.jointwright.designer.settings.OwnFolder;
import org.jointwright.designer.state.Notice;

/**
 * What the window begins with.
 *
 * @param plan the plan that was asked for
 * @param place where its work is kept safe, and what was left there
 * @param trouble why it is kept nowhere
 */
record Begin(Optional<Path> plan, Optional<WorkPlace> place, Optional<String> trouble) {
  /** Looked up before the window is there, for it reads from the disk. */
  static Begin at(Optional<Path> plan) {
    try {
      WorkPlace place = WorkPlace.take(OwnFolder.path(), plan);
      return new Begin(plan, Optional.of(place), Optional.empty());
    } catch (IOException | RuntimeException e) {
      String what = Optional.ofNullable(e.getMessage()).orElse(e.getClass().getSimpleName());
      return new Begin(plan, Optional.empty(), Optional.of(what));
    }
  }

  /** Brings back what was left, or opens what was asked for, and says what is to be known. */
  void with(Board board, JobWork job) {
    if (place.flatMap(WorkPlace::left).isPresent()) {
      place.flatMap(WorkPlace::left).ifPresent(job::bringBack);
    } else if (plan.isPresent()) {
      job.open(plan.get(), () -> tell(board));
    } else {
      tell(board);
    }
  }

  private void tell(Board board) {
    notice().ifPresent(n -> board.change(d -> d.notice().isPresent() ? d : d.told(n)));
  }

  private Optional<Notice> notice() {
    if (trouble.isPresent()) {
      return trouble.map(t -> Notice.trouble("window.notice.notSafe", List.of(t)));
    }
    Optional<Path> unread = place.flatMap(WorkPlace::unread);
    if (unread.isPresent()) {
      return unread.map(f -> Notice.trouble("window.notice.backUnread", List.of(f.toString())));
    }
    return place
        .filter(p -> p.waiting() > 0)
        .map(p -> Notice.word("window.notice.backWaiting", List.of(), p.waiting()));
  }
}
