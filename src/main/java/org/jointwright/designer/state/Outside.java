package org.jointwright.designer.state;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.jointwright.app.LayoutChoice;
import org.jointwright.app.Printing;
import org.jointwright.app.Sheets;
import org.jointwright.designer.print.PrintOrder;
import org.jointwright.picture.Picture;
import org.jointwright.plan.Plan;
import org.jointwright.text.Words;

/**
 * What the window asks of the program behind it. Any of it may take long, so none of it is called
 * on the thread that paints.
 */
public interface Outside {
  /** What opening a file came to. */
  sealed interface Opened {}

  /**
   * A plan.
   *
   * @param plan the plan
   * @param repairs what was mended on the way, said in the reader's words
   * @param isInSheet whether it stood inside a printed sheet, which must not be written over
   */
  record Read(Plan plan, List<String> repairs, boolean isInSheet) implements Opened {
    /** Copies the list. */
    public Read {
      repairs = List.copyOf(repairs);
    }
  }

  /**
   * No plan.
   *
   * @param problems what must be put right first, said in the reader's words
   */
  record Refused(List<String> problems) implements Opened {
    /** Copies the list. */
    public Refused {
      problems = List.copyOf(problems);
    }
  }

  /**
   * What writing sheets came to.
   *
   * @param files the files that were written
   * @param older files of these sheets' names that are left from before, as of pages there are no
   *     longer
   * @param trouble what went wrong, said in the reader's words; empty when nothing did
   * @param canShow whether the system can be asked to show one of them
   */
  record Written(List<Path> files, List<Path> older, List<String> trouble, boolean canShow) {
    /** Whether it was left off before anything was written. */
    public boolean isStopped() {
      return files.isEmpty() && trouble.isEmpty();
    }

    /** Copies the lists. */
    public Written {
      files = List.copyOf(files);
      older = List.copyOf(older);
      trouble = List.copyOf(trouble);
    }
  }

  /** Reads a plan file. */
  Opened open(Path file, Words words);

  /** The sample that comes with the program. */
  Opened sample(Words words);

  /** Reads a picture to lie beneath the plan. */
  PhotoRead photo(Path file, Words words);

  /**
   * What reading a picture came to.
   *
   * @param picture the picture; empty where there was trouble
   * @param trouble what is wrong with it, said in the reader's words
   */
  record PhotoRead(Optional<Picture> picture, Optional<String> trouble) {}

  /** Writes a plan file whole, or says what went wrong and leaves the file as it was. */
  Optional<String> save(Plan plan, Path file, Words words);

  /**
   * A first answer to a wish to lay, found with little effort.
   *
   * @param goOn asked at each step
   * @return empty once {@code goOn} has said no
   */
  Optional<Laid> first(Wish wish, BooleanSupplier goOn);

  /** Lays or judges what is wished; empty once {@code goOn} has said no. */
  Optional<Laid> work(Wish wish, BooleanSupplier goOn);

  /** Works out why a joint of a layout is where it is. */
  WhyHere why(Laid laid, Pick.AtJoint pick);

  /**
   * The layouts of a slab worth choosing among, as things lie in {@code laid}.
   *
   * @param goOn asked now and then; once it says no, the answer is not waited for
   */
  List<LayoutChoice> choices(Laid laid, String slab, BooleanSupplier goOn);

  /**
   * How near a slab's layout is known to be to the cheapest, in words.
   *
   * @param goOn asked now and then; once it says no, the answer is not waited for
   */
  String near(Laid laid, String slab, Words words, BooleanSupplier goOn);

  /**
   * What can be done about the finding of that number, the worthiest first. Asked on one thread
   * only.
   *
   * @param goOn asked now and then; once it says no, the answer is not waited for
   */
  Offer fixes(Laid laid, int finding, BooleanSupplier goOn);

  /**
   * Writes sheets of a plan that has joints into a folder.
   *
   * @param file the plan's file, after which they are named where the job has no name
   * @param own the files that the window has written of this plan, which are not kept
   * @param goOn asked now and then; once it says no, nothing is written
   */
  Written sheets(
      Plan plan,
      Sheets.Wanted wanted,
      Path folder,
      Optional<Path> file,
      Set<Path> own,
      BooleanSupplier goOn);

  /**
   * What is in a folder that sheets would be written over.
   *
   * @param files the files of their names
   * @param own those of them that were written of the plan another day, and left as they were
   */
  record There(List<Path> files, Set<Path> own) {
    /** Copies list and set. */
    public There {
      files = List.copyOf(files);
      own = Set.copyOf(own);
    }
  }

  /**
   * The files of a folder that these sheets would be written over.
   *
   * @param ours the plan, and what it was before
   * @param file the plan's file, after which they are named where the job has no name
   */
  There sheetsThere(List<Plan> ours, Sheets.Wanted wanted, Path folder, Optional<Path> file);

  /**
   * Has the system show a file in whatever program it has for such files.
   *
   * @return the file
   */
  Path show(Path file);

  /**
   * What there is to print.
   *
   * @param pages the pages of the sheets; none where there was trouble, or it was left off
   * @param printers the printers that the system has, the usual one first
   * @param trouble what went wrong, said in the reader's words; empty when nothing did
   */
  record Printout(List<Printing.Leaf> pages, List<String> printers, List<String> trouble) {
    /** Copies the lists. */
    public Printout {
      pages = List.copyOf(pages);
      printers = List.copyOf(printers);
      trouble = List.copyOf(trouble);
    }
  }

  /**
   * Makes the pages of sheets of a plan that has joints, to be printed.
   *
   * @param goOn asked now and then; once it says no, no pages are made
   */
  Printout pages(Plan plan, Sheets.Wanted wanted, BooleanSupplier goOn);

  /** Prints; whether the printer took it. */
  boolean print(PrintOrder order);
}
