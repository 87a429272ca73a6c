package org.jointwright.designer.start;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.print.PageLayout;
import javafx.print.PageOrientation;
import javafx.print.Paper;
import javafx.print.Printer;
import javafx.print.PrinterJob;
import javafx.scene.Group;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import org.jointwright.app.Printing;
import org.jointwright.designer.print.PrintOrder;

/** The system’s printers. */
final class Press {
  private static final double POINTS = 72 / 25.4;

  /** Papers whose sides differ by no more are one size: drivers round to whole points. */
  private static final double SAME_SIZE = 2;

  private Press() {}

  /** The names of the printers, the usual one first; empty where there is none. */
  static List<String> printers() {
    List<String> names = new ArrayList<>();
    Optional.ofNullable(Printer.getDefaultPrinter()).map(Printer::getName).ifPresent(names::add);
    Printer.getAllPrinters().stream()
        .map(Printer::getName)
        .filter(n -> !names.contains(n))
        .sorted()
        .forEach(names::add);
    return names;
  }

  /** Prints pages in their true size; says whether the printer took them. */
  static boolean print(PrintOrder order) {
    Optional<Printer> printer =
        Printer.getAllPrinters().stream()
            .filter(p -> p.getName().equals(order.printer()))
            .findFirst();
    Optional<PrinterJob> begun = printer.map(PrinterJob::createPrinterJob);
    if (begun.isEmpty()) {
      return false;
    }
    PrinterJob job = begun.get();
    for (Printing.Leaf leaf : order.pages()) {
      Optional<PageLayout> layout = layout(printer.get(), leaf);
      if (layout.isEmpty() || !job.printPage(layout.get(), onPaper(leaf, layout.get()))) {
        job.cancelJob();
        return false;
      }
    }
    return job.endJob();
  }

  /** The printer’s own paper of the page’s size; empty where it has none. */
  private static Optional<PageLayout> layout(Printer printer, Printing.Leaf leaf) {
    double small = Math.min(leaf.width(), leaf.height()) * POINTS;
    double large = Math.max(leaf.width(), leaf.height()) * POINTS;
    return printer.getPrinterAttributes().getSupportedPapers().stream()
        .filter(p -> Math.abs(p.getWidth() - small) < SAME_SIZE)
        .filter(p -> Math.abs(p.getHeight() - large) < SAME_SIZE)
        .min(Comparator.comparing(Paper::getName))
        .map(
            p ->
                printer.createPageLayout(
                    p,
                    leaf.stands() ? PageOrientation.PORTRAIT : PageOrientation.LANDSCAPE,
                    Printer.MarginType.HARDWARE_MINIMUM));
  }

  /** The page moved so that it lies as on its paper, wherever the printer begins to print. */
  private static Group onPaper(Printing.Leaf leaf, PageLayout layout) {
    ImageView view = new ImageView(new Image(new ByteArrayInputStream(leaf.picture())));
    view.setFitWidth(leaf.width() * POINTS);
    view.setFitHeight(leaf.height() * POINTS);
    view.setX(-layout.getLeftMargin());
    view.setY(-layout.getTopMargin());
    return new Group(view);
  }
}
