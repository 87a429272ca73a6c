package org.jointwright.proof;

import java.util.ArrayList;
import java.util.List;
import org.jointwright.measure.UnitSystem;
import org.jointwright.proof.paper.Printed;
import org.jointwright.sheet.LaidPlans;
import org.jointwright.sheet.page.Paper;
import org.jointwright.text.Language;
import org.jointwright.text.Words;

/** A cut sheet of a case or a sample. */
record Sheets(String name, Language language, UnitSystem units) {
  /** All there are: each plan in both languages and both measures. */
  static List<Sheets> all() {
    List<Sheets> all = new ArrayList<>();
    for (String name : LaidPlans.names()) {
      for (Language language : Language.values()) {
        for (UnitSystem units : UnitSystem.values()) {
          all.add(new Sheets(name, language, units));
        }
      }
    }
    return all;
  }

  /** Each plan once, in one language and measure after the other. */
  static List<Sheets> some() {
    List<Sheets> all = all();
    List<Sheets> some = new ArrayList<>();
    int kinds = Language.values().length * UnitSystem.values().length;
    for (int i = 0; i * kinds < all.size(); i++) {
      some.add(all.get(i * kinds + i % kinds));
    }
    return some;
  }

  List<Printed> words() {
    return PageWords.of(LaidPlans.cut(name, Words.of(language, units), Paper.LETTER));
  }

  Proof proof() {
    return Proof.of(words()).orElseThrow();
  }
}
