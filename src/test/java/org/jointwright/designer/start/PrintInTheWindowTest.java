package org.jointwright.designer.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import org.jointwright.app.Printing;
import org.jointwright.app.SheetKind;
import org.jointwright.app.Sheets;
import org.jointwright.designer.print.PrintOrder;
import org.jointwright.designer.state.Notice;
import org.jointwright.designer.state.Outside;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The card that asks what to print, with printers that are only played. */
@ExtendWith(NeedsWindow.class)
class PrintInTheWindowTest {
  @TempDir private Path folder;
  private final List<PrintOrder> printed = new ArrayList<>();
  private List<String> printers = List.of("Office", "Yard");
  private boolean isTaken = true;
  private Rig rig;

  @BeforeEach
  void open() {
    Outside real = new Program();
    Outside played =
        (Outside)
            Proxy.newProxyInstance(
                Outside.class.getClassLoader(),
                new Class<?>[] {Outside.class},
                (proxy, method, arguments) -> {
                  if (method.getName().equals("print")) {
                    printed.add((PrintOrder) arguments[0]);
                    return isTaken;
                  }
                  try {
                    Object answer = method.invoke(real, arguments);
                    return answer instanceof Outside.Printout p
                        ? new Outside.Printout(p.pages(), printers, p.trouble())
                        : answer;
                  } catch (InvocationTargetException e) {
                    throw e.getCause();
                  }
                });
    rig = new Rig(1280, 800, played);
  }

  @AfterEach
  void close() {
    rig.close();
  }

  private Node node(String id) {
    return rig.designer().pane().lookup("#" + id);
  }

  private void asked() {
    rig.drawn("20'", "30' turn left", "20' turn left");
    rig.key(KeyCode.CONTROL, KeyCode.P).until(() -> node("print") != null);
  }

  private Notice told() {
    rig.until(() -> rig.designer().board().desk().notice().isPresent());
    return rig.desk().notice().orElseThrow();
  }

  @Test
  void itShowsThePageAndPrintsItInItsTrueSize() {
    asked();
    assertThat(Rig.get(() -> ((ImageView) node("print-preview")).getImage().getWidth()))
        .isGreaterThan(300);
    rig.act(() -> ((ComboBox<?>) node("print-printer")).getSelectionModel().select(1));
    rig.clickOn("print-now");
    assertThat(told().key()).isEqualTo("window.notice.printed");
    PrintOrder order = printed.getFirst();
    assertThat(printed).hasSize(1);
    assertThat(order.printer()).isEqualTo("Yard");
    Printing.Leaf leaf = order.pages().getFirst();
    assertThat(Math.max(leaf.width(), leaf.height()))
        .as("letter, for the plan is in feet")
        .isCloseTo(279.4, within(1e-9));
    assertThat(rig.has("print")).isFalse();
  }

  @Test
  void otherPaperMakesThePagesAnew() {
    asked();
    rig.act(
        () ->
            ((ComboBox<?>) node("print-paper"))
                .getSelectionModel()
                .select(Sheets.papers().indexOf("a3")));
    rig.until(
        () -> node("print") != null && "a3".equals(((ComboBox<?>) node("print-paper")).getValue()));
    rig.clickOn("print-now");
    assertThat(told().key()).isEqualTo("window.notice.printed");
    assertThat(printed.getFirst().pages())
        .allSatisfy(l -> assertThat(Math.max(l.width(), l.height())).isCloseTo(420, within(1e-9)));
    assertThat(rig.desk().papers().setup().paper()).contains("a3");
  }

  @Test
  void onlyTheSheetsThatAreWantedArePrinted() {
    rig.drawn("20'", "30' turn left", "20' turn left");
    rig.clickOn("step-sheets").clickOn("row-sheet-crew");
    rig.key(KeyCode.CONTROL, KeyCode.P).until(() -> node("print") != null);
    rig.clickOn("print-now");
    assertThat(told().key()).isEqualTo("window.notice.printed");
    assertThat(printed.getFirst().pages())
        .isNotEmpty()
        .noneMatch(l -> l.title().equals("Cut sheet"));
  }

  @Test
  void noPageIsNothingToPrint() {
    rig.drawn("20'", "30' turn left", "20' turn left");
    for (SheetKind kind : SheetKind.values()) {
      if (kind != SheetKind.CREW) {
        rig.act(
            () ->
                rig.designer()
                    .board()
                    .change(d -> d.wanting(d.papers().setup().with(kind, false))));
      }
    }
    rig.key(KeyCode.CONTROL, KeyCode.P).until(() -> node("print") != null);
    rig.clickOn("print-page-1");
    assertThat(Rig.get(() -> node("print-now").isDisabled())).isTrue();
    rig.clickOn("print-page-1");
    assertThat(Rig.get(() -> node("print-now").isDisabled())).isFalse();
  }

  @Test
  void aPrinterThatTakesNothingIsSaid() {
    isTaken = false;
    asked();
    rig.key(KeyCode.ENTER);
    assertThat(told().isTrouble()).isTrue();
    assertThat(told().arguments()).containsExactly("Office");
  }

  @Test
  void withoutAPrinterItSaysSoAndOffersThePdf() throws IOException {
    printers = List.of();
    asked();
    assertThat(rig.text("print-none")).startsWith("No printer is set up");
    assertThat(Rig.get(() -> node("print-now").isDisabled())).isTrue();
    rig.nextPlace(folder);
    rig.clickOn("print-file");
    assertThat(told().isTrouble()).isFalse();
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files.map(f -> f.getFileName().toString())).anyMatch(n -> n.endsWith(".pdf"));
    }
  }

  @Test
  void escapePutsItAwayAndTheKeysAreThePapersAgain() {
    asked();
    rig.key(KeyCode.ESCAPE);
    assertThat(rig.has("print")).isFalse();
    rig.key(KeyCode.CONTROL, KeyCode.Z);
    assertThat(rig.plan().slabs()).isEmpty();
    rig.key(KeyCode.CONTROL, KeyCode.P);
    assertThat(told().key()).as("nothing is drawn").isEqualTo("window.notice.noSheets");
  }
}
