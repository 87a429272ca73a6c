package org.jointwright.designer.facts;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jointwright.designer.findings.LayAnew;
import org.jointwright.designer.ready.Addition;
import org.jointwright.designer.ready.UseGuess;
import org.jointwright.designer.sketch.Drawn;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Drafting;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.SetDown;
import org.jointwright.designer.state.Step;
import org.jointwright.joint.SlabLayout;
import org.jointwright.measure.Area;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Slab.Coloring;
import org.jointwright.plan.Slab.Finish;
import org.jointwright.plan.Slab.Finishing;
import org.jointwright.plan.Use;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.plan.edit.Thing;
import org.jointwright.plan.edit.Together;
import org.jointwright.text.Words;

/** The facts of a slab. */
record SlabFacts(Desk desk, Slab slab, Words words) {
  Facts facts() {
    String id = slab.id();
    List<Row> rows = new ArrayList<>();
    rows.add(new Row.Typed("slab-name", words.say("window.slab.called"), id, this::rename));
    List<Use> uses = Arrays.asList(Use.values());
    rows.add(
        new Row.Choice(
            "slab-use",
            words.say("window.slab.use"),
            uses.stream().map(this::use).toList(),
            uses.indexOf(slab.use()),
            i -> d -> d.edited(new SlabEdit.SetUse(id, uses.get(i)))));
    rows.add(
        new Row.Typed(
            "slab-thickness",
            words.say("window.slab.thickness"),
            words.print(slab.thickness()),
            t -> d -> d.edited(new SlabEdit.SetThickness(id, Figures.thickness(t, d)))));
    rows.add(
        new Row.Typed(
            "slab-base",
            words.say("window.slab.base"),
            words.print(slab.base()),
            t -> d -> d.editedOnly(new SlabEdit.SetBase(id, Figures.layer(t, d)))));
    rows.addAll(surface());
    rows.add(
        new Row.Shown("slab-area", words.say("window.slab.area"), words.print(area(desk, slab))));
    if (desk.sight().step() == Step.OUTLINE) {
      rows.addAll(whole().rows());
    }
    if (desk.sight().step() == Step.JOINTS) {
      rows.add(new LaidForRow(desk.plan(), slab, words).row());
    }
    List<String> said = new ArrayList<>();
    UseGuess.from(desk.history(), slab.id()).ifPresent(g -> said.add(words.say(guessed(g))));
    return Facts.saying(id, words.say("window.kind.slab"), rows, deeds(), said);
  }

  private static String guessed(UseGuess.From from) {
    return switch (from) {
      case NAME -> "window.slab.useOfName";
      case SIZE -> "window.slab.useOfSize";
    };
  }

  /** What is made of its surface; the joints stay as they are. */
  private List<Row> surface() {
    Finishing finishing = slab.finishing();
    List<Row> rows = new ArrayList<>(List.of(finish()));
    if (finishing.isStamped()) {
      rows.add(
          new Row.Typed(
              "slab-pattern",
              words.say("window.slab.pattern"),
              finishing.pattern(),
              t -> set(slab.finishing().withPattern(called(t)))));
    }
    rows.add(
        new Row.Typed(
            "slab-color",
            words.say("window.slab.color"),
            finishing.color(),
            t -> set(slab.finishing().withColor(called(t)))));
    if (finishing.isColored()) {
      List<Coloring> ways = Arrays.asList(Coloring.values());
      rows.add(
          new Row.Choice(
              "slab-coloring",
              words.say("window.slab.coloring"),
              ways.stream().map(w -> words.say("window.coloring." + w.name())).toList(),
              ways.indexOf(finishing.coloring()),
              i -> set(slab.finishing().withColoring(ways.get(i)))));
    }
    return rows;
  }

  private Row finish() {
    List<Finish> finishes = Arrays.asList(Finish.values());
    List<String> said = new ArrayList<>(List.of(words.say("window.finish.unsaid")));
    finishes.forEach(f -> said.add(words.say("sheet.finish." + f.name())));
    return new Row.Choice(
        "slab-finish",
        words.say("window.slab.finish"),
        said,
        slab.finish().map(f -> finishes.indexOf(f) + 1).orElse(0),
        i ->
            set(
                slab.finishing()
                    .withFinish(i == 0 ? Optional.empty() : Optional.of(finishes.get(i - 1)))));
  }

  private UnaryOperator<Desk> set(Finishing finishing) {
    return d -> d.editedOnly(new SlabEdit.SetFinishing(slab.id(), finishing));
  }

  /** What its maker calls it. */
  private static String called(String text) {
    String name = text.strip();
    if (name.length() > Finishing.LONGEST) {
      throw new BadFigure("window.figure.longName", Finishing.LONGEST);
    }
    return name;
  }

  /** The concrete of a slab seen from above, without its box-outs once they are laid. */
  static Area area(Desk desk, Slab slab) {
    return desk.laying()
        .laid()
        .flatMap(l -> l.layout().slab(slab.id()))
        .filter(s -> s.slab().region().equals(slab.region()))
        .map(SlabLayout::concrete)
        .orElseGet(() -> new Area(slab.region().area()));
  }

  private WholeFacts whole() {
    return new WholeFacts(desk, List.of(new Thing.WholeSlab(slab.id())), words);
  }

  private String use(Use use) {
    return switch (use) {
      case FOOT -> words.say("window.use.foot");
      case CAR -> words.say("window.use.car");
      case TRUCK -> words.say("window.use.truck");
    };
  }

  private UnaryOperator<Desk> rename(String text) {
    String name = text.strip();
    if (name.isEmpty()) {
      throw new BadFigure("window.figure.noName");
    }
    return d -> {
      if (name.equals(slab.id())) {
        return d;
      }
      if (d.plan().slab(name).isPresent()) {
        throw new BadFigure("window.figure.nameTaken", name);
      }
      return renamed(d, name).picking(new Pick.WholeSlab(name));
    };
  }

  /** Under another name; the first one that it is given may tell who will use it. */
  private Desk renamed(Desk d, String name) {
    SlabEdit.Rename rename = new SlabEdit.Rename(slab.id(), name);
    Optional<Use> guess = isUnnamed() ? UseGuess.of(name, words) : Optional.empty();
    return guess
        .filter(u -> u != slab.use())
        .map(u -> new Together(List.of(rename, new SlabEdit.SetUse(name, u))))
        .map(d::edited)
        .orElseGet(() -> d.editedOnly(rename));
  }

  private boolean isUnnamed() {
    String given = words.say("window.slab.name") + " ";
    return slab.id().startsWith(given)
        && slab.id().substring(given.length()).chars().allMatch(Character::isDigit);
  }

  private List<Deed> deeds() {
    List<Deed> deeds = new ArrayList<>();
    if (desk.sight().step() == Step.OUTLINE) {
      deeds.add(
          Deed.of(
              "add-opening",
              words.say("window.deed.addOpening"),
              d -> SetDown.adding(d, slab.id(), Addition.OPENING, "")));
      deeds.add(
          Deed.of(
              "add-fixed",
              words.say("window.deed.addFixed"),
              d -> SetDown.adding(d, slab.id(), Addition.OBJECT, words.say("window.fixed.name"))));
      deeds.add(
          Deed.of(
              "draw-zone", words.say("window.deed.drawZone"), d -> Drafting.begin(d, Drawn.ZONE)));
      deeds.add(
          Deed.inMenu(
              "split", words.say("window.deed.split"), d -> Drafting.begin(d, Drawn.SPLIT)));
      deeds.addAll(whole().deeds());
    }
    if (desk.sight().step() == Step.JOINTS) {
      deeds.add(
          Deed.of(
              "draw-joint",
              words.say("window.deed.drawJoint"),
              d -> Drafting.begin(d, Drawn.JOINT)));
      LayAnew.of(desk, slab, words).map(JointFacts::deed).ifPresent(deeds::add);
    }
    deeds.add(
        Deed.of(
            "take-out",
            words.say("window.deed.takeOut"),
            d -> d.edited(new SlabEdit.Remove(slab.id()))));
    return deeds;
  }
}
