package org.jointwright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sheets of wild slabs prove themselves too; {@code PROOF.md} says how many of them do. */
class WildSheetsTest {
  /** One of each kind of which every sheet was proved, and two that once were not. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 9, 11, 12, 25, 38})
  void theyAreProved(long number) {
    WildSheets sheet = WildSheets.numbered(number).orElseThrow();
    assertThat(new ProofWords(sheet.proof()).lines())
        .as(sheet.slab().name())
        .noneMatch(l -> l.startsWith(" "));
  }
}
