package org.jointwright.command;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jointwright.app.OrderFile;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.plan.Plan;
import org.jointwright.takeoff.Item;
import org.jointwright.takeoff.Line;
import org.jointwright.takeoff.Takeoff;
import org.jointwright.takeoff.words.OrderWords;
import org.jointwright.text.Words;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code order}: what a plan takes. */
@Command(name = "order")
final class OrderCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(paramLabel = "PLAN", descriptionKey = "command.order.plan")
  private String plan = "-";

  @Option(names = "--json", descriptionKey = "command.order.json")
  private boolean json;

  @Option(names = "--how", descriptionKey = "command.order.how")
  private boolean how;

  @Option(names = "--lang", paramLabel = "LANG", descriptionKey = "command.sheet.language")
  private String language = "en";

  @Option(names = "--units", paramLabel = "UNITS", descriptionKey = "command.sheet.units")
  private @Nullable String units;

  OrderCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Chosen.check(language, units);
    Plan asked = new PlanInput(console, plan).read();
    Words words = Chosen.words(language, units, asked);
    Layout layout = Layouts.of(asked);
    Takeoff takeoff = Takeoff.of(layout, words.units());
    Output.of(console, null)
        .write(json ? OrderFile.write(takeoff, words) : lines(takeoff, new OrderWords(words)));
    if (!asked.isLaid()) {
      console.say(Said.WORDS.say("command.order.unlaid"));
    }
    return Outcome.DONE;
  }

  private String lines(Takeoff takeoff, OrderWords words) {
    List<String> out = new ArrayList<>();
    out.add(words.mix(takeoff.mix()));
    out.add(words.meant(takeoff.mix()));
    String colors = words.colors(takeoff);
    if (!colors.isEmpty()) {
      out.add(colors);
    }
    for (Item.Group group : Item.Group.values()) {
      List<Line> some = takeoff.lines().stream().filter(l -> l.item().group() == group).toList();
      if (!some.isEmpty()) {
        out.add("");
        out.add(words.group(group));
        some.forEach(l -> line(l, words, out));
      }
    }
    return String.join("\n", out) + "\n";
  }

  private void line(Line line, OrderWords words, List<String> out) {
    out.add("  " + words.name(line) + ": " + words.amount(line));
    if (how) {
      words.how(line).forEach(s -> out.add("      " + s));
      String sources = words.sources(line);
      if (!sources.isEmpty()) {
        out.add("      " + Said.WORDS.say("command.order.source", sources));
      }
    }
  }
}
