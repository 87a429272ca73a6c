package org.jointwright.designer.print;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Rectangle;
import org.jointwright.app.CutSheets;
import org.jointwright.text.Words;

/**
 * A card that asks what to print: which pages, on what paper, where; with a picture of the page as
 * it will lie on the paper.
 */
public final class PrintCard extends VBox {
  private static final double WIDE = 300;
  private static final double SIDE = 210;

  private final Words words;
  private final CutSheets.Printed pages;
  private final List<CheckBox> chosen = new ArrayList<>();
  private final ComboBox<PrintPaper> paper = new ComboBox<>();
  private final ComboBox<String> printer = new ComboBox<>();
  private final Button print = new Button();
  private final StackPane sheet = new StackPane();
  private final ImageView page = new ImageView();
  private final Label which = new Label();
  private int shown;

  /**
   * What its buttons do.
   *
   * @param print prints what is asked for
   * @param asFile writes the sheets as files instead
   * @param close puts the card away
   */
  public record Deeds(Consumer<PrintOrder> print, Runnable asFile, Runnable close) {}

  /** A card for pages and the printers that there are, the usual one first. */
  public PrintCard(Words words, CutSheets.Printed pages, List<String> printers, Deeds deeds) {
    super(14);
    this.words = words;
    this.pages = pages;
    setId("print");
    getStyleClass().add("notice");
    setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    addEventHandler(
        KeyEvent.KEY_PRESSED,
        e -> {
          if (e.getCode() == KeyCode.ESCAPE) {
            deeds.close().run();
            e.consume();
          }
        });
    VBox right = new VBox(8);
    right.setPrefWidth(SIDE);
    right.getChildren().add(said("window.print.sheets", "quiet-label"));
    for (int i = 0; i < pages.pictures().size(); i++) {
      CheckBox box = new CheckBox(words.say("window.print.page", i + 1));
      box.setId("print-page-" + (i + 1));
      box.setSelected(true);
      box.setOnAction(e -> allow());
      chosen.add(box);
      right.getChildren().add(box);
    }
    right.getChildren().addAll(said("window.print.paper", "quiet-label"), papers());
    right.getChildren().add(said("window.print.printer", "quiet-label"));
    printer.setId("print-printer");
    printer.getItems().setAll(printers);
    printer.getSelectionModel().selectFirst();
    Node where = printers.isEmpty() ? said("window.print.none", "body") : printer;
    where.setId(printers.isEmpty() ? "print-none" : "print-printer");
    right.getChildren().addAll(where, said("window.print.scale", "quiet"));
    HBox both = new HBox(22, preview(), right);
    getChildren().addAll(said("window.print.title", "section"), both, buttons(deeds));
    show(0);
    allow();
  }

  private Label said(String key, String style) {
    Label label = new Label(words.say(key));
    label.getStyleClass().add(style);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    return label;
  }

  private Node papers() {
    paper.setId("print-paper");
    paper.getItems().setAll(Arrays.asList(PrintPaper.values()));
    paper.setConverter(new Named<>(p -> words.say(p.key())));
    paper.getSelectionModel().selectFirst();
    paper.setOnAction(e -> lay());
    return paper;
  }

  private Node preview() {
    sheet.getStyleClass().add("print-paper");
    page.setId("print-preview");
    page.setSmooth(true);
    sheet.getChildren().add(page);
    StackPane frame = new StackPane(sheet);
    frame.getStyleClass().add("print-frame");
    frame.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    StackPane room = new StackPane(frame);
    room.setMinSize(WIDE + 20, WIDE * 0.8);
    if (pages.pictures().size() < 2) {
      return room;
    }
    Button back = turn("back", -1);
    Button on = turn("on", 1);
    HBox row = new HBox(12, back, which, on);
    row.setAlignment(Pos.CENTER);
    return new VBox(10, room, row);
  }

  private Button turn(String name, int by) {
    Button button = new Button(words.say("window.print." + name));
    button.setId("print-" + name);
    button.getStyleClass().add("small");
    int n = pages.pictures().size();
    button.setOnAction(e -> show(Math.floorMod(shown + by, n)));
    return button;
  }

  private void show(int number) {
    shown = number;
    byte[] png = pages.pictures().get(number);
    page.setImage(new Image(new ByteArrayInputStream(png), 2 * WIDE, 0, true, true));
    page.setAccessibleText(words.say("window.print.page", number + 1));
    which.setText(words.say("window.print.which", number + 1, pages.pictures().size()));
    lay();
  }

  /** The page in its true size on the paper that is chosen, what is wider cut off. */
  private void lay() {
    PrintPaper on = paper.getValue();
    double scale = WIDE / Math.max(on.width(), pages.width());
    page.setFitWidth(pages.width() * scale);
    page.setFitHeight(pages.height() * scale);
    sheet.setMinSize(on.width() * scale, on.height() * scale);
    sheet.setMaxSize(on.width() * scale, on.height() * scale);
    sheet.setClip(new Rectangle(on.width() * scale, on.height() * scale));
  }

  private Node buttons(Deeds deeds) {
    print.setText(words.say("window.print.now"));
    print.setId("print-now");
    print.setOnAction(
        e -> deeds.print().accept(new PrintOrder(printer.getValue(), paper.getValue(), asked())));
    Button asFile = new Button(words.say("window.print.asFile"));
    asFile.setId("print-file");
    asFile.setOnAction(e -> deeds.asFile().run());
    Button close = new Button(words.say("window.notice.putAway"));
    close.setId("print-close");
    close.setOnAction(e -> deeds.close().run());
    return new HBox(10, print, asFile, close);
  }

  private CutSheets.Printed asked() {
    List<byte[]> asked = new ArrayList<>();
    for (int i = 0; i < chosen.size(); i++) {
      if (chosen.get(i).isSelected()) {
        asked.add(pages.pictures().get(i));
      }
    }
    return new CutSheets.Printed(asked, pages.width(), pages.height());
  }

  private void allow() {
    print.setDisable(printer.getValue() == null || chosen.stream().noneMatch(CheckBox::isSelected));
  }

  /** Gives the focus to what is likeliest wanted. */
  public void begin() {
    lookup(print.isDisable() ? "#print-file" : "#print-now").requestFocus();
  }
}
