package org.jointwright.designer.print;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jointwright.app.Printing;
import org.jointwright.app.Sheets;
import org.jointwright.text.Words;

/**
 * A card that asks what to print: which pages, on what paper, where; with a picture of the page as
 * it will lie on the paper.
 */
public final class PrintCard extends VBox {
  private static final double WIDE = 300;
  private static final double SIDE = 210;

  /** So many pages stand in the card without scrolling. */
  private static final int MOST = 7;

  private final Words words;
  private final List<Printing.Leaf> pages;
  private final List<CheckBox> chosen = new ArrayList<>();
  private final ComboBox<String> paper = new ComboBox<>();
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
   * @param paper makes the pages anew for the paper of that name
   * @param asFile writes the sheets as files instead
   * @param close puts the card away
   */
  public record Deeds(
      Consumer<PrintOrder> print, Consumer<String> paper, Runnable asFile, Runnable close) {}

  /**
   * A card for pages.
   *
   * @param on the name of the paper that they are made for
   * @param printers the printers that there are, the usual one first
   */
  public PrintCard(
      Words words, List<Printing.Leaf> pages, String on, List<String> printers, Deeds deeds) {
    super(14);
    this.words = words;
    this.pages = List.copyOf(pages);
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
    right.getChildren().add(choice());
    right.getChildren().addAll(said("window.print.paper", "quiet-label"), papers(on, deeds));
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

  /** A box to tick for each page; many of them scroll. */
  private Node choice() {
    VBox boxes = new VBox(8);
    for (int i = 0; i < pages.size(); i++) {
      CheckBox box = new CheckBox(words.say("window.print.page", i + 1, pages.get(i).title()));
      box.setId("print-page-" + (i + 1));
      box.setSelected(true);
      box.setWrapText(true);
      box.setOnAction(e -> allow());
      chosen.add(box);
      boxes.getChildren().add(box);
    }
    if (pages.size() <= MOST) {
      return boxes;
    }
    ScrollPane scroll = new ScrollPane(boxes);
    scroll.setFitToWidth(true);
    scroll.setPrefHeight(MOST * 25);
    return scroll;
  }

  private Node papers(String on, Deeds deeds) {
    paper.setId("print-paper");
    paper.getItems().setAll(Sheets.papers());
    paper.setConverter(new Named<>(p -> words.say("window.paper." + p)));
    paper.setValue(on);
    paper.setOnAction(e -> deeds.paper().accept(paper.getValue()));
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
    if (pages.size() < 2) {
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
    int n = pages.size();
    button.setOnAction(e -> show(Math.floorMod(shown + by, n)));
    return button;
  }

  private void show(int number) {
    shown = number;
    Printing.Leaf leaf = pages.get(number);
    double scale = WIDE / Math.max(leaf.width(), leaf.height());
    page.setImage(
        new Image(new ByteArrayInputStream(leaf.picture()), 2 * WIDE, 2 * WIDE, true, true));
    page.setAccessibleText(words.say("window.print.page", number + 1, leaf.title()));
    page.setFitWidth(leaf.width() * scale);
    page.setFitHeight(leaf.height() * scale);
    which.setText(words.say("window.print.which", number + 1, pages.size()));
  }

  private Node buttons(Deeds deeds) {
    print.setText(words.say("window.print.now"));
    print.setId("print-now");
    print.setOnAction(e -> deeds.print().accept(new PrintOrder(printer.getValue(), asked())));
    Button asFile = new Button(words.say("window.print.asFile"));
    asFile.setId("print-file");
    asFile.setOnAction(e -> deeds.asFile().run());
    Button close = new Button(words.say("window.notice.putAway"));
    close.setId("print-close");
    close.setOnAction(e -> deeds.close().run());
    return new HBox(10, print, asFile, close);
  }

  private List<Printing.Leaf> asked() {
    List<Printing.Leaf> asked = new ArrayList<>();
    for (int i = 0; i < chosen.size(); i++) {
      if (chosen.get(i).isSelected()) {
        asked.add(pages.get(i));
      }
    }
    return asked;
  }

  private void allow() {
    print.setDisable(printer.getValue() == null || chosen.stream().noneMatch(CheckBox::isSelected));
  }

  /** Gives the focus to what is likeliest wanted. */
  public void begin() {
    lookup(print.isDisable() ? "#print-file" : "#print-now").requestFocus();
  }
}
