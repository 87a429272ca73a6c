package org.jointwright.designer.facts;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.designer.facts.Facts.Kind;
import org.jointwright.designer.facts.Facts.Note;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Laid;
import org.jointwright.designer.state.Notice;
import org.jointwright.designer.state.Step;
import org.jointwright.joint.Layouts;
import org.jointwright.takeoff.Item;
import org.jointwright.takeoff.Line;
import org.jointwright.takeoff.MixLine;
import org.jointwright.takeoff.Takeoff;
import org.jointwright.takeoff.words.OrderWords;
import org.jointwright.text.Words;

/** What the job takes, and the mix that is ordered. */
record OrderFacts(Desk desk, Words words) {
  Facts facts() {
    String title = words.say("window.step.order");
    String kind = words.say("window.kind.order");
    List<Row> rows = new ArrayList<>(new MixRows(desk, words).rows());
    OrderWords said = new OrderWords(words);
    List<Note> notes = new ArrayList<>();
    MixLine mix = MixLine.of(desk.plan().mix());
    notes.add(new Note(Kind.BODY, said.mix(mix)));
    notes.add(new Note(mix.isWeak() ? Kind.BODY : Kind.QUIET, said.meant(mix)));
    if (desk.plan().slabs().isEmpty()) {
      notes.add(new Note(Kind.BODY, words.say("window.order.noSlab")));
      return new Facts(title, kind, rows, List.of(), notes);
    }
    Takeoff takeoff = takeoff(desk);
    String colors = said.colors(takeoff);
    if (!colors.isEmpty()) {
      notes.add(new Note(Kind.BODY, colors));
    }
    takeoff.of(Item.CONCRETE).stream()
        .findFirst()
        .ifPresent(
            l ->
                rows.addFirst(
                    new Row.Shown(
                        "order-concrete", words.say("window.order.concrete"), said.amount(l))));
    for (Item.Group group : Item.Group.values()) {
      List<Line> some = takeoff.lines().stream().filter(l -> l.item().group() == group).toList();
      if (!some.isEmpty()) {
        notes.add(new Note(Kind.TITLE, said.group(group)));
        some.forEach(l -> notes.add(new Note(Kind.BODY, line(l, said))));
      }
    }
    if (!desk.plan().isLaid()) {
      notes.add(new Note(Kind.QUIET, words.say("window.order.unlaid")));
    }
    return new Facts(title, kind, rows, deeds(), notes);
  }

  private List<Deed> deeds() {
    return List.of(
        Deed.of(
            "order-how",
            words.say("window.deed.orderHow"),
            d -> d.told(Notice.word("window.notice.orderHow", how(d)))),
        Deed.of("to-sheets", words.say("window.deed.toSheets"), d -> d.withStep(Step.SHEETS)));
  }

  /** The plan’s own joints, or those shown of it while others are laid. */
  private Takeoff takeoff(Desk d) {
    return Takeoff.of(
        d.laying().laid().map(Laid::layout).orElseGet(() -> Layouts.of(d.plan())), words.units());
  }

  private String line(Line line, OrderWords said) {
    return words.say("window.order.line", said.name(line), said.amount(line));
  }

  /** Each figure with the steps that it was worked out in, and whose figures it uses. */
  private List<String> how(Desk d) {
    OrderWords said = new OrderWords(words);
    List<String> all = new ArrayList<>();
    for (Line line : takeoff(d).lines()) {
      List<String> parts = new ArrayList<>();
      parts.add(words.say("window.order.how", said.name(line), said.amount(line)));
      parts.addAll(said.how(line));
      String sources = said.sources(line);
      if (!sources.isEmpty()) {
        parts.add(words.say("window.order.source", sources));
      }
      all.add(String.join(" ", parts));
    }
    return all;
  }
}
