package org.jointwright.proof.read;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jointwright.proof.paper.Printed;
import org.jointwright.proof.read.Reading.BoxOut;
import org.jointwright.proof.read.Reading.BoxOut.Size;

/** Reads what stands beside the box-outs. */
final class BoxOuts {
  /** What a large figure means stands under it, so far down; millimetres. */
  private static final double LEAST_UNDER = 3;

  private static final double MOST_UNDER = 7;
  private static final double SMALL = 3.2;

  /** Words on one line of writing are no farther apart in height than this; millimetres. */
  private static final double LEVEL = 0.3;

  /** What stands in columns, two beside each other: a length or a side by itself. */
  private static final String ALONE = Phrases.LENGTH + "|" + Phrases.SIDE;

  private static final Map<String, Size> SIZES =
      Map.of(
          "boxOut.radius", Size.RADIUS,
          "boxOut.endRadius", Size.END_RADIUS,
          "boxOut.tip", Size.TIP,
          "boxOut.side", Size.EACH,
          "boxOut.across", Size.ACROSS);

  private final Blocks blocks;
  private final Phrases phrases;
  private final Wheres wheres;
  private final Figures figures;

  BoxOuts(Blocks blocks, Phrases phrases, Wheres wheres, Figures figures) {
    this.blocks = blocks;
    this.phrases = phrases;
    this.wheres = wheres;
    this.figures = figures;
  }

  List<BoxOut> read() {
    List<BoxOut> found = new ArrayList<>();
    Pattern title = phrases.pattern("boxOut.title", "[0-9]+");
    for (Blocks.Found block : blocks.under(title)) {
      Matcher m = title.matcher(block.head().text());
      if (m.matches()) {
        found.add(read(block, Integer.parseInt(m.group(1))));
      }
    }
    return found;
  }

  private BoxOut read(Blocks.Found block, int number) {
    String row = String.valueOf(number);
    int page = block.head().page();
    Place size = new Place(page, Block.BOX_OUT, row, Part.SIZE);
    Place at = new Place(page, Block.BOX_OUT, row, Part.PLACE);
    Map<Size, Figure> sizes = new EnumMap<>(Size.class);
    StringBuilder words = new StringBuilder();
    for (Printed l : block.lines()) {
      if (l.isOf("Bold")) {
        figures
            .riddled(size(block, l), size, l.text())
            .ifPresent(s -> sizes.put(s, figures.add(l.text(), size)));
      } else if (l.capital() > SMALL && !isInColumns(block, l)) {
        words.append(l.text()).append(' ');
      }
    }
    List<Where> places = new ArrayList<>(listed(block, at));
    Matcher m = wheres.in(words.toString());
    while (m.find()) {
      figures.riddled(wheres.of(m.group(), at), at, m.group()).ifPresent(places::add);
    }
    return new BoxOut(number, sizes, places);
  }

  /** Whether a line is one of two columns, and no end of a sentence that had to be broken. */
  private static boolean isInColumns(Blocks.Found block, Printed line) {
    return !line.isOf("Bold")
        && line.text().matches(ALONE)
        && block.lines().stream()
                .filter(l -> Math.abs(l.y() - line.y()) < LEVEL && l.text().matches(ALONE))
                .count()
            == 2;
  }

  /** The corners that are told from one side: how far along it, and how far off it. */
  private List<Where> listed(Blocks.Found block, Place at) {
    Pattern side = phrases.pattern("boxOut.corners", "[A-Z]+", "[A-Z]+");
    List<Where> corners = new ArrayList<>();
    for (Printed head : block.lines()) {
      Matcher m = side.matcher(head.text());
      if (head.capital() < SMALL && m.matches()) {
        boolean left =
            blocks.beside(head).stream()
                .anyMatch(l -> l.text().equals(phrases.say("boxOut.corners.left")));
        List<String> pairs =
            block.lines().stream()
                .filter(l -> l.y() > head.y() && isInColumns(block, l))
                .map(Printed::text)
                .toList();
        for (int i = 0; i + 1 < pairs.size(); i += 2) {
          Figure along = figures.add(pairs.get(i), at);
          Figure off = figures.add(pairs.get(i + 1), at);
          String name = m.group(1) + "–" + m.group(2);
          corners.add(
              off.inches() == 0
                  ? new Where.Mark(name, along)
                  : new Where.Off(name, along, off, left ? 1 : -1));
        }
      }
    }
    return corners;
  }

  private Optional<Size> size(Blocks.Found block, Printed figure) {
    return block.lines().stream()
        .filter(l -> l.capital() < SMALL)
        .filter(l -> l.y() > figure.y() + LEAST_UNDER && l.y() < figure.y() + MOST_UNDER)
        .findFirst()
        .flatMap(l -> size(l.text()));
  }

  private Optional<Size> size(String text) {
    if (phrases.pattern("boxOut.along", Phrases.SIDE).matcher(text).matches()) {
      return Optional.of(Size.ALONG);
    }
    return SIZES.entrySet().stream()
        .filter(e -> phrases.say(e.getKey()).equals(text))
        .map(Map.Entry::getValue)
        .findFirst();
  }
}
