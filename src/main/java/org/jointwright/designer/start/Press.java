package org.jointwright.designer.start;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
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
import org.jointwright.app.CutSheets;
import org.jointwright.designer.print.PrintOrder;
import org.jointwright.designer.print.PrintPaper;

/** The system’s printers. */
final class Press {
  private static final double POINTS = 72 / 25.4;

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

  /** Prints pages in their true size, amid the paper; says whether the printer took them. */
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
    Paper paper = order.paper() == PrintPaper.A4 ? Paper.A4 : Paper.NA_LETTER;
    PageLayout layout =
        printer
            .get()
            .createPageLayout(
                paper,
                stands(order.pages()) ? PageOrientation.PORTRAIT : PageOrientation.LANDSCAPE,
                Printer.MarginType.HARDWARE_MINIMUM);
    for (byte[] png : order.pages().pictures()) {
      if (!job.printPage(layout, onPaper(png, order.pages(), order.paper(), layout))) {
        job.cancelJob();
        return false;
      }
    }
    return job.endJob();
  }

  private static boolean stands(CutSheets.Printed pages) {
    return pages.height() > pages.width();
  }

  /** The page moved so that it lies amid the paper, wherever the printer begins to print. */
  private static Group onPaper(
      byte[] png, CutSheets.Printed pages, PrintPaper paper, PageLayout layout) {
    ImageView view = new ImageView(new Image(new ByteArrayInputStream(png)));
    view.setFitWidth(pages.width() * POINTS);
    view.setFitHeight(pages.height() * POINTS);
    double width = stands(pages) ? paper.height() : paper.width();
    double height = stands(pages) ? paper.width() : paper.height();
    view.setX((width - pages.width()) / 2 * POINTS - layout.getLeftMargin());
    view.setY((height - pages.height()) / 2 * POINTS - layout.getTopMargin());
    return new Group(view);
  }
}
