package org.jointwright.designer.start;

import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.OperatingSystemMXBean;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.BiConsumer;
import java.util.function.IntFunction;
import java.util.function.UnaryOperator;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.stage.Stage;
import org.jointwright.cases.Yards;
import org.jointwright.check.Finding;
import org.jointwright.check.Judgement;
import org.jointwright.check.Severity;
import org.jointwright.check.Subject;
import org.jointwright.designer.settings.Look;
import org.jointwright.designer.settings.Settings;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Laid;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Viewport;
import org.jointwright.joint.Layout;
import org.jointwright.joint.Layouts;
import org.jointwright.joint.Panel;
import org.jointwright.joint.SlabLayout;
import org.jointwright.layout.LayoutEngine;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Slab;
import org.jointwright.shape.Crossing;
import org.jointwright.shape.Edge;
import org.jointwright.shape.Point;

/**
 * How long a picture of a plan takes while a hand pushes and zooms it: {@code mvn -q -Pframes}
 * makes the page of it anew; told how many panels, it prints the rows of plans of so many only. The
 * real window, without a screen, painted by the processor alone.
 */
final class FrameTable {
  private static final Path PAGE = Path.of("src/docs/FRAMES.md");

  /** The side of the screen there is without one; as many pixels as 1280 by 800 have. */
  private static final int SIDE = 1000;

  private static final int[] SIZES = {100, 1_000, 10_000};
  private static final int WARM = 240;

  /** One panel of so many has a finding, where there are any. */
  private static final int ONE_OF = 20;

  private static final int FRAMES = 240;
  private static final OperatingSystemMXBean MACHINE = ManagementFactory.getOperatingSystemMXBean();
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  /** What there is for a picture where a screen shows sixty in a second, milliseconds. */
  private static final double THERE_IS = 1000.0 / 60;

  private static final String HEAD =
      """
      # How quick the window paints

      Made by `mvn -q -Pframes`: the real window at 1000 x 1000 (as many pixels as 1280 x 800) without a screen, painted by the processor
      alone (the slowest way there is), as fast as it goes. Each picture is painted after the plan was pushed or zoomed, all of it, from the
      plan up to the pixels. Milliseconds of processor time of the two threads that make it, one after the other, though they work side by
      side; so what else the machine did counts little. A screen that shows sixty pictures in a second leaves %.1f. p95 is what 95 of 100
      stay under. “Pieces” has each joint parted at every crossing, the most lines a plan of so many panels can have. Where panels are
      smaller than the numbers of the joints no numbers are written. Plans with findings have a flag on one panel of twenty (what is found
      is made up: judging is not painting). “Hovered over” has the pointer go over the plan, a move for each picture, with a joint picked.

      Machine: %d processors (%s), %s, JDK %s; its load was %.1f when this began and %.1f when it ended (over one for each processor, other
      programs took the time).

      """;

  private record Row(String plan, String way, double median, double p95, double most) {}

  /** A way to look at a plan: how it begins, and what is done before each picture. */
  private record Way(
      String name, UnaryOperator<Viewport> begin, BiConsumer<Designer, Integer> step) {
    static Way looking(
        String name, UnaryOperator<Viewport> begin, IntFunction<UnaryOperator<Viewport>> step) {
      return new Way(name, begin, (d, i) -> look(d, step.apply(i)));
    }
  }

  private FrameTable() {}

  public static void main(String[] args) throws IOException {
    CompletableFuture<Boolean> begun = new CompletableFuture<>();
    Platform.startup(
        () -> {
          Platform.setImplicitExit(false);
          begun.complete(true);
        });
    begun.join();
    try (PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8)) {
      List<Row> rows = new ArrayList<>();
      double load = MACHINE.getSystemLoadAverage();
      int[] sizes =
          args.length == 0 ? SIZES : Arrays.stream(args).mapToInt(Integer::parseInt).toArray();
      for (int panels : sizes) {
        Plan laid = LayoutEngine.lay(Yards.of(panels)).plan();
        Plan pieces = inPieces(laid);
        rows.addAll(measured(panels + " panels", laid, 0, out));
        rows.addAll(measured(panels + " panels in pieces", pieces, 0, out));
        int findings = panels / ONE_OF;
        String name = panels + " panels in pieces, " + findings + " findings";
        rows.addAll(measured(name, pieces, findings, out));
      }
      if (args.length == 0) {
        Files.writeString(PAGE, page(rows, load));
        out.println(PAGE);
      }
    } finally {
      Platform.exit();
    }
  }

  /** The same joints, each parted where another crosses or meets it. */
  private static Plan inPieces(Plan plan) {
    Slab slab = plan.slabs().getFirst();
    List<Joint> pieces = new ArrayList<>();
    for (Joint j : slab.joints()) {
      if (j.path().edges().size() > 1) {
        pieces.add(j);
        continue;
      }
      Edge line = j.path().edges().getFirst();
      double[] at =
          slab.joints().stream()
              .filter(k -> !k.equals(j))
              .flatMap(k -> k.path().edges().stream())
              .flatMap(e -> Crossing.of(line, e).stream())
              .mapToDouble(Crossing::first)
              .toArray();
      double[] all = Arrays.copyOf(at, at.length + 2);
      all[at.length + 1] = 1;
      Arrays.sort(all);
      for (int i = 1; i < all.length; i++) {
        if ((all[i] - all[i - 1]) * line.length() > 1) {
          pieces.add(
              new Joint(
                  j.id() + "-" + i,
                  j.kind(),
                  org.jointwright.shape.Path.of(line.part(all[i - 1], all[i])),
                  j.locked(),
                  j.purpose(),
                  j.how(),
                  j.depth(),
                  j.width(),
                  j.kept()));
        }
      }
    }
    return plan.withSlabs(List.of(slab.withLaid(pieces, slab.boxOuts())));
  }

  private static List<Way> ways() {
    Point middle = new Point(700, 500);
    return List.of(
        Way.looking("pushed, all in sight", v -> v, i -> v -> v.pushed(i % 40 < 20 ? 3 : -3, 1)),
        Way.looking(
            "pushed, a tenth in sight",
            v -> v.zoomed(middle, Math.sqrt(10)),
            i -> v -> v.pushed(i % 40 < 20 ? 7 : -7, 2)),
        Way.looking(
            "pushed, a hundredth in sight",
            v -> v.zoomed(middle, 10),
            i -> v -> v.pushed(i % 40 < 20 ? 7 : -7, 2)),
        Way.looking(
            "zoomed in and out",
            v -> v,
            i -> v -> v.zoomed(middle, i % 120 < 60 ? 1.08 : 1 / 1.08)),
        new Way("hovered over", v -> v, FrameTable::hover));
  }

  private static void look(Designer designer, UnaryOperator<Viewport> change) {
    designer.board().change(d -> d.withSight(s -> s.with(change.apply(s.viewport()), false)));
  }

  /** Moves the pointer over the middle of the plan, in rows a few pixels apart. */
  private static void hover(Designer designer, int i) {
    Node paper = designer.pane().lookup("#plan");
    double x = 100 + 7.0 * i % 500;
    double y = 200 + 3.0 * i % 400;
    Event.fireEvent(
        paper,
        new MouseEvent(
            MouseEvent.MOUSE_MOVED,
            x,
            y,
            x,
            y,
            MouseButton.NONE,
            0,
            false,
            false,
            false,
            false,
            false,
            false,
            false,
            true,
            false,
            true,
            null));
  }

  private static List<Row> measured(String name, Plan plan, int findings, PrintStream out) {
    Designer designer =
        Rig.get(
            () -> {
              Stage stage = new Stage();
              Designer d =
                  new Designer(
                      stage,
                      new Program(),
                      Optional.empty(),
                      Memory.only(Settings.FIRST.with(Look.LIGHT)));
              stage.setX(0);
              stage.setY(0);
              stage.setWidth(SIDE);
              stage.setHeight(SIDE);
              stage.show();
              return d;
            });
    Rig.pulses(5);
    Rig.get(
        () -> {
          designer
              .board()
              .change(
                  d ->
                      judged(
                          Desk.opened(plan, Path.of("yard.jointwright.json")).onPaperOf(d),
                          findings));
          return true;
        });
    while (!Rig.get(() -> designer.board().desk().laying().isCurrent())) {
      Rig.pulses(3);
    }
    List<Row> rows = new ArrayList<>();
    for (Way way : ways()) {
      double[] taken = frames(designer, way);
      Arrays.sort(taken);
      Row row =
          new Row(
              name,
              way.name(),
              taken[taken.length / 2],
              taken[(int) (taken.length * 0.95)],
              taken[taken.length - 1]);
      rows.add(row);
      out.print(line(row));
    }
    Rig.get(
        () -> {
          designer.pane().getScene().getWindow().hide();
          return true;
        });
    return rows;
  }

  /**
   * With the panels known, so much found by turns and a joint picked: judging is not painting, and
   * takes its own time.
   */
  private static Desk judged(Desk desk, int findings) {
    long generation = desk.laying().wish().orElseThrow().generation();
    Layout layout = Layouts.of(desk.plan());
    SlabLayout slab = layout.slabs().getFirst();
    List<Finding> found = new ArrayList<>();
    for (int i = 0; i < findings; i++) {
      Panel panel = slab.panels().get(i * slab.panels().size() / findings);
      found.add(
          new Finding(
              "S3",
              Severity.values()[i % Severity.values().length],
              slab.slab().id(),
              new Subject.OnSlab(),
              panel.ring().box().centre(),
              0.6,
              0.5,
              "check.s3.uneven",
              List.of(slab.slab().id(), 60.0, 0.5, panel.id()),
              List.of()));
    }
    Judgement judgement = new Judgement(found, List.of());
    return desk.answered(new Laid(generation, desk.plan(), layout, judgement))
        .picking(new Pick.AtJoint(slab.slab().id(), slab.joints().getFirst().id()));
  }

  /** The milliseconds that each picture takes. */
  private static double[] frames(Designer designer, Way way) {
    CompletableFuture<double[]> done = new CompletableFuture<>();
    Platform.runLater(
        () -> {
          designer.board().change(Desk::fitted);
          look(designer, way.begin());
          new AnimationTimer() {
            private final double[] taken = new double[FRAMES];
            private final long[] workers = workers();
            private long last;
            private int count = -WARM;

            @Override
            public void handle(long now) {
              long here = Arrays.stream(workers).map(THREADS::getThreadCpuTime).sum();
              if (count > 0) {
                taken[count - 1] = (here - last) / 1e6;
              }
              if (count == FRAMES) {
                stop();
                done.complete(taken);
                return;
              }
              int i = count + WARM;
              count++;
              last = here;
              way.step().accept(designer, i);
            }
          }.start();
        });
    return done.join();
  }

  /** This thread, which draws up the pictures, and the one that paints them. */
  private static long[] workers() {
    return Thread.getAllStackTraces().keySet().stream()
        .filter(t -> t.equals(Thread.currentThread()) || t.getName().startsWith("QuantumRenderer"))
        .mapToLong(Thread::threadId)
        .toArray();
  }

  private static String line(Row r) {
    return String.format(
        Locale.ROOT,
        "| %s | %s | %.1f | %.1f | %.1f | %s |%n",
        r.plan(),
        r.way(),
        r.median(),
        r.p95(),
        r.most(),
        r.p95() <= THERE_IS ? "yes" : "**no**");
  }

  private static String page(List<Row> rows, double load) {
    StringBuilder page =
        new StringBuilder(
            String.format(
                Locale.ROOT,
                HEAD,
                THERE_IS,
                MACHINE.getAvailableProcessors(),
                MACHINE.getArch(),
                MACHINE.getName(),
                Runtime.version().feature(),
                load,
                MACHINE.getSystemLoadAverage()));
    page.append("| plan | looked at | median | p95 | most | in time at p95 |\n");
    page.append("|---|---|---:|---:|---:|---|\n");
    rows.forEach(r -> page.append(line(r)));
    return page.toString();
  }
}
