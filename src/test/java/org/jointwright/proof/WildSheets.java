package org.jointwright.proof;

import java.util.List;
import java.util.Optional;
import org.jointwright.file.PlanReader;
import org.jointwright.file.PlanReading;
import org.jointwright.file.PlanWriter;
import org.jointwright.joint.Layouts;
import org.jointwright.measure.UnitSystem;
import org.jointwright.plan.Plan;
import org.jointwright.proof.paper.Printed;
import org.jointwright.sheet.CutSheet;
import org.jointwright.sheet.page.Paper;
import org.jointwright.sheet.page.SheetOptions;
import org.jointwright.text.Language;
import org.jointwright.text.Words;
import org.jointwright.wild.WildKind;
import org.jointwright.wild.WildSlab;

/** The cut sheet of a wild slab, whose joints are drawn at random. */
record WildSheets(WildSlab slab, Plan plan) {
  /**
   * That of a number; empty where its slab is refused, is as large as they may be, or has hundreds
   * of corners: nobody tapes those.
   */
  static Optional<WildSheets> numbered(long number) {
    WildSlab slab = WildSlab.numbered(number);
    if (slab.kind() == WildKind.HUGE || slab.kind() == WildKind.CHORDS) {
      return Optional.empty();
    }
    return PlanReader.read(PlanWriter.bytes(slab.jointed())) instanceof PlanReading.ReadPlan read
        ? Optional.of(new WildSheets(slab, read.plan()))
        : Optional.empty();
  }

  List<Printed> words() {
    Language language = Language.values()[(int) (slab.seed() / 2 % Language.values().length)];
    UnitSystem units = UnitSystem.values()[(int) (slab.seed() % UnitSystem.values().length)];
    SheetOptions options = new SheetOptions("", Words.of(language, units), Paper.LETTER);
    return PageWords.of(CutSheet.of(Layouts.of(plan), options));
  }

  Proof proof() {
    return Proof.of(words()).orElseThrow();
  }
}
