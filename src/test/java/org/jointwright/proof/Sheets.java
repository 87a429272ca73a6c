package org.jointwright.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jointwright.measure.UnitSystem;
import org.jointwright.proof.paper.Printed;
import org.jointwright.sheet.LaidPlans;
import org.jointwright.sheet.page.Paper;
import org.jointwright.text.Language;
import org.jointwright.text.Words;

/** A cut sheet of a case or a sample. */
record Sheets(String name, Language language, UnitSystem units, Paper paper) {
  private static final long SEED = 20_261_127;

  /**
   * Each plan once, in one language and measure after the other: every other on letter, the rest on
   * a paper that the seed has chosen.
   */
  static List<Sheets> some() {
    Random random = new Random(SEED);
    List<Sheets> some = new ArrayList<>();
    for (String name : LaidPlans.names()) {
      int i = some.size();
      Language language = Language.values()[i / 2 % Language.values().length];
      UnitSystem units = UnitSystem.values()[i % UnitSystem.values().length];
      Paper other = Paper.ALL.get(random.nextInt(Paper.ALL.size()));
      some.add(new Sheets(name, language, units, i / 4 % 2 == 0 ? Paper.LETTER : other));
    }
    return some;
  }

  /** A sheet in English feet on letter paper. */
  static Sheets english(String name) {
    return new Sheets(name, Language.ENGLISH, UnitSystem.FEET_INCHES, Paper.LETTER);
  }

  List<Printed> words() {
    return PageWords.of(LaidPlans.cut(name, Words.of(language, units), paper));
  }

  Proof proof() {
    return Proof.of(words()).orElseThrow();
  }

  @Override
  public String toString() {
    return String.join(" ", name, language.code(), units.name(), paper.name());
  }
}
