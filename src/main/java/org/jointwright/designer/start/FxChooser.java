package org.jointwright.designer.start;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import org.jointwright.designer.pane.Board;
import org.jointwright.designer.pane.Chooser;

/** Asks with the system's own dialogs. */
final class FxChooser implements Chooser {
  private final Window owner;
  private final Board board;

  FxChooser(Window owner, Board board) {
    this.owner = owner;
    this.board = board;
  }

  @Override
  public Optional<Path> planToOpen() {
    FileChooser dialog = dialog(List.of("*.jointwright.json", "*.json"));
    dialog
        .getExtensionFilters()
        .add(new FileChooser.ExtensionFilter(board.say("window.file.sheets"), "*.pdf", "*.svg"));
    return chosen(dialog.showOpenDialog(owner));
  }

  @Override
  public Optional<Path> photo() {
    FileChooser dialog = new FileChooser();
    dialog
        .getExtensionFilters()
        .add(
            new FileChooser.ExtensionFilter(
                board.say("window.file.pictures"),
                "*.png",
                "*.jpg",
                "*.jpeg",
                "*.PNG",
                "*.JPG",
                "*.JPEG"));
    here().ifPresent(dialog::setInitialDirectory);
    return chosen(dialog.showOpenDialog(owner));
  }

  @Override
  public Optional<Path> placeForPlan(String suggestedName) {
    FileChooser dialog = dialog();
    dialog.setInitialFileName(suggestedName);
    return chosen(dialog.showSaveDialog(owner));
  }

  @Override
  public Optional<Path> folderForSheets() {
    DirectoryChooser dialog = new DirectoryChooser();
    dialog.setTitle(board.say("window.file.folder"));
    here().ifPresent(dialog::setInitialDirectory);
    return chosen(dialog.showDialog(owner));
  }

  private FileChooser dialog() {
    return dialog(List.of("*.jointwright.json", "*.json"));
  }

  private FileChooser dialog(List<String> endings) {
    FileChooser dialog = new FileChooser();
    dialog
        .getExtensionFilters()
        .add(new FileChooser.ExtensionFilter(board.say("window.file.plans"), endings));
    here().ifPresent(dialog::setInitialDirectory);
    return dialog;
  }

  private Optional<File> here() {
    return board
        .desk()
        .papers()
        .file()
        .map(f -> f.toAbsolutePath().getParent())
        .map(Path::toFile)
        .filter(File::isDirectory);
  }

  private static Optional<Path> chosen(@org.jspecify.annotations.Nullable File file) {
    return Optional.ofNullable(file).map(File::toPath);
  }
}
