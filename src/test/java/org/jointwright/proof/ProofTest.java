package org.jointwright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jointwright.file.PlanWriter;
import org.jointwright.measure.UnitSystem;
import org.jointwright.proof.paper.PdfWords;
import org.jointwright.proof.paper.Printed;
import org.jointwright.sheet.LaidPlans;
import org.jointwright.sheet.page.Origin;
import org.jointwright.sheet.page.Paper;
import org.jointwright.sheet.page.SheetSet;
import org.jointwright.sheet.pdf.PdfSheet;
import org.jointwright.text.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Cut sheets prove themselves, in both languages and both measures. */
class ProofTest {
  /** One of each plan, and one that once was not: its tables stand close beside each other. */
  static List<Sheets> sheets() {
    List<Sheets> sheets = new ArrayList<>(Sheets.some());
    sheets.add(
        new Sheets(
            "drive-walk-and-pad.jointwright", Language.SPANISH, UnitSystem.METRIC, Paper.LETTER));
    return sheets;
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void everySheetIsProven(Sheets sheet) {
    Proof proof = sheet.proof();
    assertThat(new ProofWords(proof).lines()).noneMatch(l -> l.startsWith(" "));
    assertThat(proof.isProven()).isTrue();
    assertThat(proof.reading().language()).isEqualTo(sheet.language());
    assertThat(proof.reading().units()).isEqualTo(sheet.units());
  }

  @ParameterizedTest
  @ValueSource(strings = {"multi_drive_approach_walk", "units_mm_6000x9500"})
  void aPageAndItsPdfSayTheSame(String name) throws IOException {
    List<Printed> page = PageWords.of(LaidPlans.pages(name));
    List<Printed> pdf = PdfWords.of(LaidPlans.pdf(name));
    assertThat(pdf.stream().map(Printed::text))
        .containsAll(page.stream().map(Printed::text).toList());
    assertThat(pdf).hasSameSizeAs(page);
    Proof one = Proof.of(page).orElseThrow();
    Proof other = Proof.of(pdf).orElseThrow();
    assertThat(one.reading().figures()).isEqualTo(other.reading().figures());
    assertThat(new ProofWords(one).lines()).isEqualTo(new ProofWords(other).lines());
  }

  /** The plan in the file is another one than the sheet shows: nobody looks. */
  @Test
  void thePlanInsideIsNotLookedAt() throws IOException {
    SheetSet set =
        new SheetSet(
            "Cut sheet",
            Locale.ENGLISH,
            Optional.empty(),
            List.of(),
            LaidPlans.pages("multi_drive_approach_walk"));
    List<List<String>> said = new ArrayList<>();
    for (String plan : List.of("rect_lane_11x96_5in", "multi_drive_approach_walk")) {
      String text = PlanWriter.write(LaidPlans.plan(plan));
      byte[] pdf = PdfSheet.bytes(set.from(new Origin("job", "program", text)));
      assertThat(new String(pdf, StandardCharsets.ISO_8859_1)).contains("/EmbeddedFile");
      said.add(new ProofWords(Proof.of(pdf).orElseThrow()).lines());
    }
    byte[] without = PdfSheet.bytes(set);
    said.add(new ProofWords(Proof.of(without).orElseThrow()).lines());
    assertThat(Set.copyOf(said)).hasSize(1);
  }

  @Test
  void anotherPdfIsNoCutSheet() {
    List<Printed> words = List.of(new Printed(0, 10, 10, 30, 8, 0, "Face-Heavy", "Order sheet"));
    assertThat(Proof.of(words)).isEmpty();
  }
}
