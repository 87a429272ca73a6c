package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.javafx.tk.TKClipboard;
import com.sun.javafx.tk.Toolkit;
import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Proxy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.DragEvent;
import javafx.scene.input.Dragboard;
import javafx.scene.input.KeyCode;
import javafx.scene.input.PickResult;
import javafx.scene.input.TransferMode;
import org.jointwright.app.Answer;
import org.jointwright.app.PlanFiles;
import org.jointwright.app.SheetKind;
import org.jointwright.app.Sheets;
import org.jointwright.designer.settings.Look;
import org.jointwright.designer.settings.RecentFiles;
import org.jointwright.designer.settings.Settings;
import org.jointwright.designer.settings.SettingsPlace;
import org.jointwright.file.PlanReading;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Plan;
import org.jointwright.text.Words;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Plans dropped on the window, and found again among those opened lately. */
@ExtendWith(NeedsWindow.class)
class DroppedInTheWindowTest {
  private static final Path SAMPLE =
      Path.of("samples/drive-approach-walk.jointwright.json").toAbsolutePath();

  @TempDir private Path folder;
  private Path plan;
  private Rig rig;

  @BeforeEach
  void open() throws IOException {
    plan = Files.copy(SAMPLE, folder.resolve("north lot.jointwright.json"));
    Settings light = Settings.FIRST.with(Look.LIGHT);
    rig = new Rig(1280, 800, new Memory(SettingsPlace.nowhere(light), RecentFiles.in(folder)));
  }

  @AfterEach
  void close() {
    rig.close();
  }

  /** A drag as the system hands it to the window; only the hand that drags is missing. */
  private DragEvent drag(EventType<DragEvent> type, Path file) {
    Node paper = rig.designer().pane().plan();
    Point2D scene = paper.localToScene(200, 200);
    Point2D screen = paper.localToScreen(200, 200);
    PickResult at = new PickResult(paper, scene.getX(), scene.getY());
    return new DragEvent(
        null,
        paper,
        type,
        board(file),
        scene.getX(),
        scene.getY(),
        screen.getX(),
        screen.getY(),
        TransferMode.COPY,
        null,
        paper,
        at);
  }

  private static Dragboard board(Path file) {
    try {
      // The toolkit makes boards for drags from other programs and for nobody else.
      Constructor<Dragboard> made = Dragboard.class.getDeclaredConstructor(TKClipboard.class);
      made.setAccessible(true);
      Dragboard board = made.newInstance(offering(Toolkit.getToolkit().createLocalClipboard()));
      ClipboardContent content = new ClipboardContent();
      content.putFiles(List.of(file.toFile()));
      board.setContent(content);
      return board;
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(e);
    }
  }

  /** A clipboard of which the other program says that a copy may be taken. */
  private static TKClipboard offering(TKClipboard local) {
    return (TKClipboard)
        Proxy.newProxyInstance(
            TKClipboard.class.getClassLoader(),
            new Class<?>[] {TKClipboard.class},
            (proxy, method, arguments) ->
                method.getName().equals("getTransferModes")
                    ? EnumSet.of(TransferMode.COPY)
                    : method.invoke(local, arguments));
  }

  /** Drags a file over the paper and lets it go there; whether the window took it. */
  private boolean drop(Path file) {
    Node paper = rig.designer().pane().plan();
    return Rig.get(
        () -> {
          DragEvent over = drag(DragEvent.DRAG_OVER, file);
          Event.fireEvent(paper, over);
          DragEvent dropped = drag(DragEvent.DRAG_DROPPED, file);
          Event.fireEvent(paper, dropped);
          return dropped.isDropCompleted();
        });
  }

  private List<MenuItem> recent() {
    return Rig.get(
        () -> {
          MenuBar bar = (MenuBar) rig.node0("menus");
          Menu menu =
              bar.getMenus().getFirst().getItems().stream()
                  .filter(i -> "menu-recent".equals(i.getId()))
                  .map(Menu.class::cast)
                  .findFirst()
                  .orElseThrow();
          menu.getOnShowing().handle(new Event(Menu.ON_SHOWING));
          return List.copyOf(menu.getItems());
        });
  }

  private void opened() {
    rig.until(() -> !rig.designer().board().desk().plan().slabs().isEmpty()).laid();
  }

  @Test
  void aPlanThatIsDroppedIsOpenedAndStandsAmongThoseOpenedLately() {
    assertThat(recent()).singleElement().matches(MenuItem::isDisable);
    assertThat(drop(plan)).isTrue();
    opened();
    assertThat(rig.desk().papers().file()).contains(plan);
    rig.key(KeyCode.CONTROL, KeyCode.N);
    assertThat(rig.plan().slabs()).isEmpty();
    MenuItem lately = recent().getFirst();
    assertThat(lately.getText()).startsWith("north lot");
    rig.act(lately::fire);
    opened();
    assertThat(rig.desk().papers().file()).contains(plan);
  }

  @Test
  void aSheetThatIsDroppedIsOpenedAsAPlanWithoutAFile() throws IOException {
    Words words = Words.english(UnitSystem.FEET_INCHES);
    Plan laid = Answer.laid(((PlanReading.ReadPlan) PlanFiles.open(SAMPLE)).plan()).plan();
    Path sheet =
        new Program()
            .sheets(
                laid,
                Sheets.Wanted.of(SheetKind.PLANT, words),
                folder,
                Optional.empty(),
                Set.of(),
                () -> true)
            .files()
            .get(1);
    byte[] before = Files.readAllBytes(sheet);
    assertThat(drop(sheet)).isTrue();
    opened();
    assertThat(rig.plan()).isEqualTo(laid);
    assertThat(rig.desk().papers().file()).isEmpty();
    assertThat(rig.desk().notice().orElseThrow().key()).isEqualTo("window.notice.fromSheet");
    Path kept = folder.resolve("kept.jointwright.json");
    rig.nextPlace(kept);
    rig.key(KeyCode.ESCAPE).key(KeyCode.CONTROL, KeyCode.S).until(() -> Files.exists(kept));
    assertThat(Files.readAllBytes(sheet)).isEqualTo(before);
  }

  @Test
  void whatIsNoPlanAndNoPictureIsNotTaken() throws IOException {
    assertThat(drop(Files.writeString(folder.resolve("notes.txt"), "24 ft"))).isFalse();
    assertThat(rig.desk().notice()).isEmpty();
  }

  @Test
  void aPlanThatIsGoneIsSaidToBeAndForgotten() throws IOException {
    drop(plan);
    opened();
    rig.key(KeyCode.CONTROL, KeyCode.N);
    Files.delete(plan);
    rig.act(recent().getFirst()::fire);
    rig.until(() -> rig.designer().board().desk().notice().isPresent());
    assertThat(rig.desk().notice().orElseThrow().isTrouble()).isTrue();
    assertThat(recent()).singleElement().matches(MenuItem::isDisable);
  }
}
