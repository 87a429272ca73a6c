package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jointwright.joint.EdgeSection;
import org.jointwright.joint.Numbering.Item;
import org.jointwright.joint.Numbering.Work;
import org.jointwright.measure.Length;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Tape;
import org.jointwright.practice.SawWindow;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;
import org.jointwright.sheet.block.Lines;
import org.jointwright.sheet.block.Type;
import org.jointwright.takeoff.words.FinishWords;

/** What the crew is told in sentences: how joints are cut, how deep to dig. */
final class Orders {
  /** Stands for the sides until they are known. */
  private static final String SIDES = "\u0001";

  private final Facts facts;

  Orders(Facts facts) {
    this.facts = facts;
  }

  /** The sentences, one for each thing. */
  List<String> sentences() {
    List<String> out = new ArrayList<>();
    if (!facts.open().isEmpty()) {
      String rules = String.join(", ", new TreeSet<>(facts.open()));
      out.add(facts.say("order.findings", facts.open().size(), rules));
    }
    String cut = cut();
    String form = form();
    if (!(cut + form).isBlank()) {
      out.add((cut + " " + form).strip());
    }
    out.add(dig());
    out.addAll(thickened());
    out.addAll(finishes());
    return out;
  }

  /** How the slabs are finished and colored of which that is said. */
  private List<String> finishes() {
    List<String> each = new ArrayList<>();
    FinishWords.bySaid(facts.plan().slabs(), new FinishWords(facts.words())::all)
        .forEach(
            (how, slabs) ->
                each.add(
                    slabs.size() == facts.plan().slabs().size()
                        ? Lines.known(how)
                        : facts.say(
                            "order.slab",
                            Lines.known(String.join(", ", slabs)),
                            Lines.known(how))));
    return each.isEmpty() ? List.of() : List.of(facts.say("order.finish", String.join("; ", each)));
  }

  /** The edges that are thicker than their slab, those of the same section together. */
  List<String> thickened() {
    Map<String, List<String>> sides = new LinkedHashMap<>();
    for (Slab slab : facts.plan().slabs()) {
      List<Edge> edges = slab.outline().ring().edges();
      for (int i = 0; i < edges.size(); i++) {
        Point middle = edges.get(i).at(0.5);
        slab.edge(i)
            .thickened()
            .ifPresent(
                t ->
                    sides
                        .computeIfAbsent(section(slab, t), k -> new ArrayList<>())
                        .add(side(slab, middle)));
      }
    }
    return sides.entrySet().stream()
        .map(
            e ->
                e.getKey()
                    .replace(
                        SIDES, e.getValue().stream().distinct().collect(Collectors.joining(", "))))
        .toList();
  }

  private String section(Slab slab, EdgeSetting.Thickened edge) {
    Length depth = EdgeSection.depth(edge, slab);
    return facts.say(
        "order.thickened",
        SIDES,
        facts.print(depth.inches()),
        facts.print(slab.thickness().inches()),
        facts.print(EdgeSection.over(edge).inches()),
        facts.dig(depth, slab.base()));
  }

  private String side(Slab slab, Point middle) {
    return facts.lettering().tapesAt(middle, Sides.ON).stream()
        .findFirst()
        .map(Tape::name)
        .orElse(slab.id());
  }

  /** How the joints are cut: the way of most said once, then the exceptions. */
  private String cut() {
    Map<String, List<String>> byWay = new LinkedHashMap<>();
    for (Item item : facts.numbering().items()) {
      if (item.work() == Work.CUT) {
        byWay.computeIfAbsent(way(item), k -> new ArrayList<>()).add(String.valueOf(item.number()));
      }
    }
    List<Map.Entry<String, List<String>>> ways =
        byWay.entrySet().stream()
            .sorted((a, b) -> Integer.compare(b.getValue().size(), a.getValue().size()))
            .toList();
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < ways.size(); i++) {
      List<String> numbers = ways.get(i).getValue();
      String which =
          facts.say(numbers.size() == 1 ? "order.number" : "order.numbers", listed(numbers));
      out.append(i == 0 ? "" : "; ");
      out.append(
          i == 0
              ? ways.get(i).getKey()
              : facts.say("order.only", which, lowered(ways.get(i).getKey())));
    }
    return out.isEmpty() ? "" : out + ".";
  }

  /** A sentence that goes on after a colon. */
  private static String lowered(String sentence) {
    return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
  }

  /** Numbers with runs drawn together: 1–6, 9. */
  static String listed(List<String> numbers) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < numbers.size(); i++) {
      int last = i;
      while (last + 1 < numbers.size()
          && Integer.parseInt(numbers.get(last + 1)) == Integer.parseInt(numbers.get(last)) + 1) {
        last++;
      }
      out.append(out.isEmpty() ? "" : ", ").append(numbers.get(i));
      if (last > i) {
        out.append(last == i + 1 ? ", " : "–").append(numbers.get(last));
      }
      i = last;
    }
    return out.toString();
  }

  private String way(Item item) {
    CutSize size = CutSize.of(item, facts);
    String depth = size.depth();
    String width = size.width();
    return switch (size.how()) {
      case TOOLED -> facts.say("order.tool", depth, width);
      case SAWN -> sawn("order.saw", depth, width, SawWindow.SAWN);
      case EARLY_ENTRY -> sawn("order.early", depth, width, SawWindow.EARLY_ENTRY);
    };
  }

  private String sawn(String key, String depth, String width, SawWindow window) {
    return facts.say(key, depth, width, window.fromHours(), window.toHours());
  }

  private String form() {
    List<String> numbers =
        facts.numbering().items().stream()
            .filter(i -> i.work() == Work.FORM)
            .map(i -> String.valueOf(i.number()))
            .toList();
    return numbers.isEmpty() ? "" : facts.say("order.form", listed(numbers));
  }

  /** How deep to dig under the string, and the base, for each slab. */
  private String dig() {
    return facts.say("order.string", bySlab(true), bySlab(false));
  }

  private String bySlab(boolean dig) {
    Map<String, List<String>> byDepth = new LinkedHashMap<>();
    for (Slab s : facts.plan().slabs()) {
      String depth = dig ? facts.dig(s.thickness(), s.base()) : facts.print(s.base().inches());
      byDepth
          .computeIfAbsent(depth, k -> new ArrayList<>())
          .add(Lines.fitting(s.id(), Type.ORDER, 45));
    }
    if (byDepth.size() == 1) {
      return byDepth.keySet().iterator().next();
    }
    return byDepth.entrySet().stream()
        .map(e -> facts.say("order.slab", String.join(", ", e.getValue()), e.getKey()))
        .collect(Collectors.joining(", "));
  }
}
