package org.jointwright.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.jointwright.sheet.page.Page;
import org.jointwright.sheet.page.SheetSet;
import org.jointwright.sheet.pdf.SheetFiles;

/** Makes pages for a printer. */
public final class Printing {
  /** As fine as most printers print, dots per inch. */
  private static final int DOTS_PER_INCH = 300;

  private Printing() {}

  /** A page to be printed. */
  public static final class Leaf {
    private final Page page;
    private final byte[] picture;

    private Leaf(Page page, byte[] picture) {
      this.page = page;
      this.picture = picture;
    }

    /** What sheet it is of. */
    public String title() {
      return page.title();
    }

    /** A PNG of it. */
    public byte[] picture() {
      return picture.clone();
    }

    /** How wide it is, millimetres. */
    public double width() {
      return page.paper().width();
    }

    /** How high it is, millimetres. */
    public double height() {
      return page.paper().height();
    }

    /** Whether it stands rather than lies. */
    public boolean stands() {
      return height() > width();
    }
  }

  /**
   * The pages of sheets as pictures that are fine enough to be printed.
   *
   * @param goOn asked for each page
   * @return empty once {@code goOn} has said no
   * @throws UnprintableException when a text of the plan has letters that the sheets’ font lacks
   */
  public static Optional<List<Leaf>> leaves(
      Answer answer, Sheets.Wanted wanted, BooleanSupplier goOn) throws UnprintableException {
    SheetSet set = Sheets.set(answer, wanted);
    Optional<List<byte[]>> pictures = SheetFiles.pictures(set, DOTS_PER_INCH, goOn);
    return pictures.map(
        made -> {
          List<Leaf> leaves = new ArrayList<>();
          for (int i = 0; i < made.size(); i++) {
            leaves.add(new Leaf(set.pages().get(i), made.get(i)));
          }
          return leaves;
        });
  }
}
