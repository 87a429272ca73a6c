package org.jointwright.sheet.readback;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jointwright.joint.Numbering;
import org.jointwright.joint.Numbering.Item;
import org.jointwright.joint.Numbering.Work;
import org.jointwright.measure.Length;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.How;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;

/** Compares what a sheet says of thickness, depth, filler and scale with the plan. */
final class Sections {
  private final Plan plan;
  private final List<Printed> lines;
  private final List<String> differences = new ArrayList<>();

  private Sections(Plan plan, List<Printed> lines) {
    this.plan = plan;
    this.lines = lines;
  }

  static List<String> differences(Plan plan, List<Printed> lines) {
    Sections s = new Sections(plan, lines);
    s.thickness();
    s.depths();
    s.sawing();
    s.strips();
    s.scale();
    return s.differences;
  }

  private void same(String what, double printed, double is) {
    double step = UnitSystem.of(plan.unit()).rounding().step().inches();
    if (Math.abs(printed - is) > step / 2 + 1e-6) {
      differences.add(what + " is printed " + printed + ", is " + is);
    }
  }

  private void thickness() {
    for (Printed l : lines) {
      if (l.isBold("Semibold") && l.y() < SheetReader.title(lines).y() - 9 && l.page() == 0) {
        Matcher m = Pattern.compile("(.* )?(" + Grammar.LENGTH + ")").matcher(l.text());
        if (m.matches()) {
          double printed = Grammar.length(m.group(2));
          String name = m.group(1) == null ? "" : m.group(1).strip();
          boolean found =
              plan.slabs().stream()
                  .filter(s -> name.isEmpty() || s.id().startsWith(name.replace("…", "")))
                  .anyMatch(s -> Math.abs(s.thickness().inches() - printed) < 0.11);
          if (!found) {
            differences.add("thickness " + l.text());
          }
        }
      }
    }
  }

  private String orders() {
    StringBuilder text = new StringBuilder();
    for (Printed l : lines) {
      boolean order = l.isBold("Bold") && l.page() == 0 && l.capital() < 4 && l.y() > 100;
      if (order && l.text().matches(".*[a-z].*")) {
        text.append(l.text()).append(' ');
      }
    }
    return text.toString();
  }

  private void depths() {
    Matcher m =
        Pattern.compile("String \\(top of form\\) to dig: (.*?)\\. Base: (.*?)\\. ")
            .matcher(orders());
    if (!m.find()) {
      differences.add("no depth to dig");
      return;
    }
    for (Slab s : plan.slabs()) {
      same("dig at " + s.id(), of(s, m.group(1)), s.thickness().inches() + s.base().inches());
      same("base at " + s.id(), of(s, m.group(2)), s.base().inches());
    }
  }

  /** The depth that goes with a slab in "drive, walk 8″, approach 12″". */
  private static double of(Slab slab, String text) {
    Matcher whole = Pattern.compile(Grammar.LENGTH).matcher(text);
    if (whole.matches()) {
      return Grammar.length(text);
    }
    Matcher m =
        Pattern.compile(
                "(?:^|, )" + Pattern.quote(slab.id()) + "(?:, [^″]*?)?? (" + Grammar.LENGTH + ")")
            .matcher(text);
    return m.find() ? Grammar.length(m.group(1)) : Double.NaN;
  }

  private void sawing() {
    String text = orders();
    for (Item item : Numbering.of(plan).items()) {
      if (item.work() == Work.CUT) {
        Joint joint = item.joints().getFirst();
        Slab slab = plan.slab(item.slab()).orElseThrow();
        double depth =
            joint
                .depth()
                .map(Length::inches)
                .orElse(
                    joint.how().orElse(How.SAWN) == How.EARLY_ENTRY
                        ? 1
                        : Math.max(1, slab.thickness().inches() / 4));
        double[] said = way(text, item.number());
        same("depth of joint " + item.number(), said[0], depth);
        same(
            "width of joint " + item.number(),
            said[1],
            joint.width().map(Length::inches).orElse(0.125));
      }
    }
  }

  /** Depth and width said of a joint: in the exceptions, or else in the first clause. */
  private static double[] way(String text, int number) {
    String depth = "(" + Grammar.LENGTH + ") deep, (" + Grammar.LENGTH + ") wide";
    Matcher m = Pattern.compile("joints? ([0-9–, ]+): [^;]*?" + depth).matcher(text);
    while (m.find()) {
      for (String part : m.group(1).split(", ", -1)) {
        String[] ends = part.split("–", -1);
        if (number >= Integer.parseInt(ends[0])
            && number <= Integer.parseInt(ends[ends.length - 1])) {
          return new double[] {Grammar.length(m.group(2)), Grammar.length(m.group(3))};
        }
      }
    }
    Matcher first = Pattern.compile(depth).matcher(text);
    return first.find()
        ? new double[] {Grammar.length(first.group(1)), Grammar.length(first.group(2))}
        : new double[] {Double.NaN, Double.NaN};
  }

  private void strips() {
    Reading reading = SheetReader.read(lines);
    for (Reading.Strip strip : reading.strips()) {
      Item item = Numbering.of(plan).items().get(strip.number() - 1);
      Slab slab = plan.slab(item.slab()).orElseThrow();
      same("filler " + strip.number() + " deep", strip.depth(), slab.thickness().inches());
      double usual = strip.where().contains("street") ? 0.75 : 0.5;
      double width =
          item.joints().stream()
              .findFirst()
              .flatMap(Joint::width)
              .map(Length::inches)
              .orElse(usual);
      same("filler " + strip.number() + " wide", strip.width(), width);
    }
  }

  /** The scale bar's figures stand as far apart as the printed scale says. */
  private void scale() {
    Reading reading = SheetReader.read(lines);
    long scales =
        lines.stream()
            .filter(l -> l.y() > SheetReader.title(lines).y() - 9)
            .filter(l -> l.text().startsWith("1:") || l.text().contains(" = "))
            .map(Printed::text)
            .distinct()
            .count();
    if (scales != 1) {
      differences.add("the pages say different scales");
    }
    Printed zero = lines.stream().filter(l -> l.text().equals("0")).findFirst().orElseThrow();
    double checked = 0;
    for (Printed l : lines) {
      if (l.page() == 0
          && Math.abs(l.y() - zero.y()) < 0.1
          && l.capital() < 3.2
          && l.x() > zero.x()
          && l.text().matches("[0-9].*(′|m|″)")) {
        double inches = Grammar.barLength(l.text());
        double measured = (l.middleX() - zero.middleX()) * reading.scale() / 25.4;
        if (Math.abs(measured / inches - 1) > 0.01) {
          differences.add("the scale bar at " + l.text() + " measures " + measured);
        }
        checked++;
      }
    }
    if (checked < 3) {
      differences.add("no scale bar");
    }
  }
}
