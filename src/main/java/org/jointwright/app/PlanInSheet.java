package org.jointwright.app;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.file.PlanReader;
import org.jointwright.file.PlanReading;
import org.jointwright.file.Remark;
import org.jointwright.sheet.page.NoPlanInsideException;
import org.jointwright.sheet.page.PlanInside;
import org.jointwright.sheet.pdf.PlanInPdf;
import org.jointwright.sheet.svg.PlanInSvg;

/** Opens a printed sheet again: reads the plan that its file carries. */
final class PlanInSheet {
  private PlanInSheet() {}

  /** What reading a sheet came to; empty where the file looks like none. */
  static Optional<PlanReading> read(byte[] file) {
    try {
      if (PlanInPdf.looksLikeOne(file)) {
        return Optional.of(read(PlanInPdf.of(file)));
      }
      return PlanInSvg.looksLikeOne(file)
          ? Optional.of(read(PlanInSvg.of(file)))
          : Optional.empty();
    } catch (NoPlanInsideException e) {
      return Optional.of(new PlanReading.Refused(List.of(remark(e))));
    }
  }

  private static PlanReading read(PlanInside inside) {
    // Through bytes, so that a plan inside is bounded as one in its own file is.
    return switch (PlanReader.read(inside.plan().getBytes(StandardCharsets.UTF_8))) {
      case PlanReading.ReadPlan read -> {
        List<Remark> remarks = new ArrayList<>();
        if (!inside.isAsPrinted()) {
          remarks.add(new Remark(inside.place(), inside.line(), "file.sheet.changed", List.of()));
        }
        read.repairs().forEach(r -> remarks.add(placed(r, inside)));
        yield new PlanReading.ReadPlan(read.plan(), remarks, true);
      }
      case PlanReading.Refused refused ->
          new PlanReading.Refused(refused.problems().stream().map(r -> placed(r, inside)).toList());
    };
  }

  /** A remark about a plan, said of where it stands in the sheet. */
  private static Remark placed(Remark remark, PlanInside inside) {
    String within = remark.place();
    String place = within.isEmpty() ? inside.place() : inside.place() + ": " + within;
    int line = remark.line() == 0 ? 0 : inside.line() + remark.line() - 1;
    return new Remark(place, line, remark.key(), remark.arguments());
  }

  private static Remark remark(NoPlanInsideException e) {
    String key =
        switch (e.why()) {
          case BROKEN -> "file.sheet.broken";
          case LOCKED -> "file.sheet.locked";
          case NONE -> "file.sheet.noPlan";
          case SEVERAL -> "file.sheet.several";
        };
    return new Remark("", e.line(), key, List.of());
  }
}
