package org.jointwright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.jointwright.proof.build.Fault;
import org.jointwright.proof.paper.Printed;
import org.jointwright.sheet.LaidPlans;
import org.junit.jupiter.api.Test;

/** A figure that is an inch off is noticed, wherever it stands; {@code PROOF.md} has the whole. */
class SlipTest {
  private static final long SEED = 20_261_127;
  private static final int OF_EACH = 8;

  @Test
  void ninetyFiveOfAHundredSlipsAreNoticed() {
    Random random = new Random(SEED);
    List<String> missed = new ArrayList<>();
    int all = 0;
    for (Sheets sheet : Sheets.some()) {
      List<Printed> words = sheet.words();
      List<Slip> slips = new ArrayList<>(Slip.all(words));
      Collections.shuffle(slips, random);
      for (Slip slip : slips.subList(0, Math.min(OF_EACH, slips.size()))) {
        all++;
        if (Proof.of(slip.in(words)).orElseThrow().isProven()) {
          missed.add(sheet.name() + ": " + words.get(slip.line()).text() + " as " + slip.text());
        }
      }
    }
    assertThat(all).isGreaterThan(400);
    assertThat(missed).as("seed %d", SEED).hasSizeLessThanOrEqualTo(all / 20);
  }

  @Test
  void aWrongDiagonalIsNamedAndPutRight() {
    Sheets sheet = Sheets.english(LaidPlans.names().getFirst());
    List<Printed> words = sheet.words();
    Slip slip =
        Slip.all(words).stream()
            .filter(s -> words.get(s.line()).text().equals("26′-0⅞″"))
            .findFirst()
            .orElseThrow();
    Proof proof = Proof.of(slip.in(words)).orElseThrow();
    assertThat(proof.faults()).extracting(Fault::kind).contains(Fault.Kind.FIGURE);
    assertThat(new ProofWords(proof).lines())
        .anyMatch(l -> l.contains("page 1, diagonals, ") && l.contains(slip.text()));
  }

  @Test
  void aMarkIsNamedWithItsRow() {
    Sheets sheet = Sheets.english(LaidPlans.names().getFirst());
    List<Printed> words = sheet.words();
    Slip slip =
        Slip.all(words).stream()
            .filter(s -> words.get(s.line()).text().matches(".*″ [A-Z]–[A-Z]"))
            .findFirst()
            .orElseThrow();
    List<String> lines = new ProofWords(Proof.of(slip.in(words)).orElseThrow()).lines();
    assertThat(lines).anyMatch(l -> l.contains("joint 1 to cut, from: the mark " + slip.text()));
  }
}
