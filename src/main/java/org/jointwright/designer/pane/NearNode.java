package org.jointwright.designer.pane;

import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Enquiry;

/** How near the slab's layout is to the cheapest: the question, and once it is asked the answer. */
final class NearNode extends VBox {
  private final Board board;
  private final Label said = LayoutCard.wrapped("", "source");
  private String slab = "";

  NearNode(Board board) {
    super(4);
    this.board = board;
    String question = board.say("window.near.ask");
    Label link = LayoutCard.wrapped(question, "link");
    link.getStyleClass().add("quiet");
    HBox.setHgrow(link, Priority.ALWAYS);
    said.setId("near-said");
    getChildren().setAll(new PressedRow("near", question, this::turn, link), said);
  }

  private void turn() {
    board.change(d -> d.laying().nearOf(slab).isPresent() ? d.notMeasuring() : d.measuring(slab));
  }

  void show(Desk desk, String of) {
    slab = of;
    Optional<Enquiry<String>> asked = desk.laying().nearOf(of);
    said.setText(
        asked.map(e -> e.answer().orElseGet(() -> board.say("window.near.working"))).orElse(""));
    said.setVisible(asked.isPresent());
    said.setManaged(asked.isPresent());
  }
}
