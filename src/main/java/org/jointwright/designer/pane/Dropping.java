package org.jointwright.designer.pane;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;
import org.jointwright.shape.Point;

/** A file dropped on the window: a plan, or a picture to lie beneath the plan. */
final class Dropping {
  private final JobWork job;
  private final PlanPane paper;

  Dropping(JobWork job, PlanPane paper) {
    this.job = job;
    this.paper = paper;
  }

  /** Takes what is dropped anywhere on {@code window}. */
  void on(Node window) {
    window.addEventHandler(DragEvent.DRAG_OVER, this::over);
    window.addEventHandler(DragEvent.DRAG_DROPPED, this::dropped);
  }

  private void over(DragEvent e) {
    if (file(e).isPresent()) {
      e.acceptTransferModes(TransferMode.COPY);
      e.consume();
    }
  }

  private void dropped(DragEvent e) {
    Optional<Path> file = file(e);
    file.ifPresent(f -> job.dropped(f, onPlan(e)));
    e.setDropCompleted(file.isPresent());
    e.consume();
  }

  /** The first of the files that is of use. */
  private static Optional<Path> file(DragEvent e) {
    List<File> files = e.getDragboard() == null ? List.of() : e.getDragboard().getFiles();
    return files.stream()
        .map(File::toPath)
        .filter(f -> Endings.isPlan(f) || Endings.isPicture(f))
        .findFirst();
  }

  private Optional<Point> onPlan(DragEvent e) {
    Point2D at = paper.sceneToLocal(e.getSceneX(), e.getSceneY());
    return paper.contains(at) ? Optional.of(paper.onPlan(at.getX(), at.getY())) : Optional.empty();
  }
}
