package org.jointwright.proof;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.jointwright.proof.paper.Printed;
import org.jointwright.proof.read.Figure;

/** Makes the page of what {@code prove} notices: figures of all sheets an inch too long. */
public final class ProofPage {
  private static final long SEED = 20_261_127;
  private static final int OF_EACH = 25;

  /** Wild slabs are numbered; those of the first so many that are printed at all. */
  private static final int WILD = 300;

  private static final Path PAGE = Path.of("src", "docs", "PROOF.md");

  private static final String HEAD =
      """
      # What `prove` notices

      `prove` reads the words and figures of a cut sheet and nothing else: not the plan that it was printed from, not the lines
      that are drawn. It rebuilds corners, sides, joints, filler and box-outs, and compares every length that is printed with the
      one that comes out. How much the two may differ is worked out, not chosen: the sheet is rebuilt once for each figure with that
      figure longer by half the step that it was rounded to, and what a difference moves then, summed over all figures, is the most
      that rounding makes of it. Where the letters stand on the page says only on which side of a string a corner lies.

      Made by `mvn -q -Pproof`: the cut sheet of each laid case and each sample, by turns in English feet, English metres, Spanish
      feet and Spanish metres, half of them on letter paper and the others on a paper that a seed has chosen; then up to 25 lengths
      on it that the seed has chosen, one at a time, an inch (25 mm) too long.

      """;

  private static final String TAIL =
      """

      ## What cannot be noticed, and why
      - **The length of filler round a box-out** with round ends, or at the slab’s edge: what of its edge has filler is not told in words.
      - **How far in a thicker edge reaches**, which is told once; its thickness, its slab’s and what is dug there prove each other.
      - **The depth and width of a cut** stand in the orders and over the table of those joints; where a table has joints of several sizes,
        nothing stands over it, and the sizes that only some joints have stand once.
      - **What is dug, and the base**, where a slab is too small for its thickness to be written on it and has no filler: of the three figures that
        prove each other one is missing. Both told an inch deeper would pass everywhere.
      - **Offsets and slight bows.** A point an inch farther along a string that runs by it moves it an inch along the edge it lies on anyway; a bow of
        two inches in ten feet told as three lengthens the joint by less than its rounding. The lengths that are taped do not change, so nothing tells.
      - **The radius of a flat arc** follows from its bow, and an inch in sixty feet is less than the bow’s sixteenth makes of it.
      - **Marks told from a side and square off it** where the joint runs square to that side: its length does not change by what it is off, and on
        a joint no other meets there is no list of marks.
      - **Short sides of long slabs whose marks are not on the plan**: the diagonals of a strip hang on its long sides; an inch on the short one moves
        them by less than their rounding.
      """;

  private static final String WILD_SLABS =
      """

      ## Wild slabs
      Of the first %d slabs invented at random (`RANDOM.md` has their kinds), with joints drawn at random, %d have a cut sheet to prove: the others
      cross themselves, are as large as a slab may be, or have hundreds of corners. **%d of them are proven**; of these %d are rebuilt to 1/8 in, or
      5 mm, of where they lie in the plan, the others hang on diagonals so flat that the rounding of the tape moves corners farther. Right and not
      proven, because corners an inch apart have their letters on wrong sides, or because diagonals are too flat: %s.
      """;

  private ProofPage() {}

  private record Count(int all, int noticed) {
    Count with(boolean isNoticed) {
      return new Count(all + 1, noticed + (isNoticed ? 1 : 0));
    }
  }

  /** Writes the page. */
  public static void main(String... arguments) throws IOException {
    Map<String, Count> kinds = new TreeMap<>();
    Count sum = new Count(0, 0);
    List<String> unproven = new ArrayList<>();
    int sheets = 0;
    Random random = new Random(SEED);
    for (Sheets sheet : Sheets.some()) {
      List<Printed> words = sheet.words();
      Proof proof = Proof.of(words).orElseThrow();
      sheets++;
      if (!proof.isProven()) {
        unproven.add(sheet.toString());
      }
      List<Slip> slips = new ArrayList<>(Slip.all(words));
      Collections.shuffle(slips, random);
      for (Slip slip : slips.subList(0, Math.min(OF_EACH, slips.size()))) {
        Proof slipped = Proof.of(slip.in(words)).orElseThrow();
        boolean noticed = !slipped.isProven();
        kinds.merge(kind(proof, slipped), new Count(0, 0).with(noticed), ProofPage::both);
        sum = sum.with(noticed);
      }
    }
    StringBuilder page = new StringBuilder(HEAD);
    page.append(
        String.format(
            Locale.ROOT,
            "**%d sheets, %d of them proven. %d of %d slips noticed: %.1f of 100.**%n%n",
            sheets,
            sheets - unproven.size(),
            sum.noticed(),
            sum.all(),
            100.0 * sum.noticed() / sum.all()));
    unproven.forEach(s -> page.append("- not proven: ").append(s).append('\n'));
    page.append("| figure | slips | noticed |\n|---|---:|---:|\n");
    kinds.forEach(
        (kind, c) ->
            page.append(
                String.format(Locale.ROOT, "| %s | %d | %d |%n", kind, c.all(), c.noticed())));
    page.append(TAIL);
    page.append(wild());
    Files.writeString(PAGE, page.toString().replace("\r", ""));
  }

  /** What comes of slabs that nobody would pour. */
  private static String wild() {
    int sheets = 0;
    int exact = 0;
    List<String> unproven = new ArrayList<>();
    for (long n = 0; n < WILD; n++) {
      Optional<WildSheets> wild = WildSheets.numbered(n);
      if (wild.isPresent()) {
        sheets++;
        Proof proof = wild.get().proof();
        if (!proof.isProven()) {
          unproven.add(wild.get().slab().name());
        } else if (Comparison.differences(wild.get().plan(), proof).isEmpty()) {
          exact++;
        }
      }
    }
    return String.format(
        Locale.ROOT,
        WILD_SLABS,
        WILD,
        sheets,
        sheets - unproven.size(),
        exact,
        unproven.isEmpty() ? "none" : String.join(", ", unproven));
  }

  private static Count both(Count a, Count b) {
    return new Count(a.all() + b.all(), a.noticed() + b.noticed());
  }

  /** Which figure was changed, as the reading without the slip calls it. */
  private static String kind(Proof right, Proof slipped) {
    List<Figure> is = slipped.reading().figures();
    List<Figure> was = right.reading().figures();
    for (int i = 0; i < Math.min(is.size(), was.size()); i++) {
      if (!is.get(i).text().equals(was.get(i).text())) {
        return (was.get(i).place().block() + ", " + was.get(i).place().part())
            .toLowerCase(Locale.ROOT)
            .replace('_', '-');
      }
    }
    return "not read";
  }
}
