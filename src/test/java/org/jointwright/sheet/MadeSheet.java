package org.jointwright.sheet;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.measure.UnitSystem;
import org.jointwright.sheet.LaidPlans.Kind;
import org.jointwright.sheet.page.Page;
import org.jointwright.sheet.page.Paper;
import org.jointwright.text.Language;
import org.jointwright.text.Words;

/** A sheet of a plan: of which kind, for whom, on what paper. */
public record MadeSheet(String name, Kind kind, Language language, UnitSystem units, Paper paper) {
  /** Every kind of a plan’s sheets in English feet on letter paper and in Spanish metres on A4. */
  public static List<MadeSheet> usual(String name) {
    List<MadeSheet> all = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      all.add(new MadeSheet(name, kind, Language.ENGLISH, UnitSystem.FEET_INCHES, Paper.LETTER));
      all.add(new MadeSheet(name, kind, Language.SPANISH, UnitSystem.METRIC, Paper.A4));
    }
    return all;
  }

  /** Every kind in both languages and measures on the usual papers, and once on the others. */
  public static List<MadeSheet> whole(String name) {
    List<MadeSheet> all = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      for (UnitSystem units : UnitSystem.values()) {
        for (Language language : Language.values()) {
          all.add(new MadeSheet(name, kind, language, units, Paper.LETTER));
          all.add(new MadeSheet(name, kind, language, units, Paper.A4));
        }
      }
      UnitSystem own = UnitSystem.of(LaidPlans.plan(name).unit());
      for (Paper paper : List.of(Paper.TABLOID, Paper.ARCH_C, Paper.A3, Paper.A2)) {
        all.add(new MadeSheet(name, kind, Language.ENGLISH, own, paper));
      }
    }
    return all;
  }

  /** Its words. */
  Words words() {
    return Words.of(language, units);
  }

  /** Its numbered pages, made anew. */
  public List<Page> pages() {
    return LaidPlans.made(name, kind, words(), paper);
  }

  @Override
  public String toString() {
    return String.join(" ", name, kind.name(), language.code(), units.name(), paper.name());
  }
}
