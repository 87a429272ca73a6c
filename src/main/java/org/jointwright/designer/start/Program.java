package org.jointwright.designer.start;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import javafx.application.Application;
import javafx.stage.Stage;
import org.jointwright.app.Answer;
import org.jointwright.app.LayoutChoice;
import org.jointwright.app.NearestKnown;
import org.jointwright.app.OwnSheets;
import org.jointwright.app.PictureFiles;
import org.jointwright.app.PlanFiles;
import org.jointwright.app.Printing;
import org.jointwright.app.Remedies;
import org.jointwright.app.Sample;
import org.jointwright.app.Sheets;
import org.jointwright.app.UnprintableException;
import org.jointwright.designer.canvas.PhotoPaint;
import org.jointwright.designer.print.PrintOrder;
import org.jointwright.designer.state.Laid;
import org.jointwright.designer.state.Offer;
import org.jointwright.designer.state.Outside;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.WhyHere;
import org.jointwright.designer.state.Wish;
import org.jointwright.file.PlanReading;
import org.jointwright.fix.Fix;
import org.jointwright.picture.Picture;
import org.jointwright.picture.PictureException;
import org.jointwright.plan.Plan;
import org.jointwright.text.Words;

/** The program behind the window, asked where the command line asks too. */
final class Program implements Outside {
  private Optional<Kept> kept = Optional.empty();

  /** The remedies of what was laid last, which keep what they laid themselves. */
  private record Kept(long generation, Remedies remedies) {}

  @Override
  public Opened open(Path file, Words words) {
    return said(PlanFiles.open(file), words);
  }

  @Override
  public Opened sample(Words words) {
    return said(Sample.read(), words);
  }

  private static Opened said(PlanReading reading, Words words) {
    return switch (reading) {
      case PlanReading.ReadPlan read ->
          new Read(
              read.plan(),
              read.repairs().stream().map(r -> r.say(words)).toList(),
              read.isInSheet());
      case PlanReading.Refused refused ->
          new Refused(refused.problems().stream().map(r -> r.say(words)).toList());
    };
  }

  @Override
  public PhotoRead photo(Path file, Words words) {
    try {
      Picture picture = PictureFiles.open(file);
      // What the header promises the pixels may not keep.
      return PhotoPaint.image(picture).isPresent()
          ? new PhotoRead(Optional.of(picture), Optional.empty())
          : noPhoto(words, PictureException.Why.BROKEN);
    } catch (PictureException e) {
      return noPhoto(words, e.why());
    } catch (IOException e) {
      return new PhotoRead(
          Optional.empty(), Optional.of(words.say("window.photo.unread", said(e))));
    }
  }

  private static PhotoRead noPhoto(Words words, PictureException.Why why) {
    String key =
        switch (why) {
          case NO_PICTURE -> "window.photo.noPicture";
          case BROKEN -> "window.photo.broken";
          case TOO_BIG -> "window.photo.tooBig";
          case TOO_MANY_PIXELS -> "window.photo.tooManyPixels";
        };
    int most = Picture.MOST_BYTES / (1024 * 1024);
    return new PhotoRead(Optional.empty(), Optional.of(words.say(key, most)));
  }

  @Override
  public Optional<String> save(Plan plan, Path file, Words words) {
    try {
      PlanFiles.save(plan, file);
      return Optional.empty();
    } catch (IOException e) {
      return Optional.of(words.say("window.file.cannotWrite", file.toString(), said(e)));
    }
  }

  private static String said(IOException e) {
    return Optional.ofNullable(e.getMessage()).orElse(e.getClass().getSimpleName());
  }

  @Override
  public Optional<Laid> first(Wish wish, BooleanSupplier goOn) {
    return Answer.first(wish.plan(), wish.before(), wish.hand(), goOn)
        .map(a -> answering(wish, a).asFirst());
  }

  @Override
  public Optional<Laid> work(Wish wish, BooleanSupplier goOn) {
    Optional<Answer> answer =
        wish.lay()
            ? Answer.laid(wish.plan(), wish.before(), wish.hand(), goOn)
            : Optional.of(Answer.asItStands(wish.plan()));
    return answer.map(a -> answering(wish, a));
  }

  private static Laid answering(Wish wish, Answer answer) {
    return new Laid(wish.generation(), wish.plan(), answer.layout(), answer.judgement());
  }

  @Override
  public Offer fixes(Laid laid, int finding, BooleanSupplier goOn) {
    Kept last =
        kept.filter(k -> k.generation() == laid.generation())
            .orElseGet(
                () ->
                    new Kept(
                        laid.generation(),
                        new Remedies(laid.asked(), laid.layout(), laid.judgement())));
    kept = Optional.of(last);
    List<Fix> fixes = last.remedies().of(laid.findings().get(finding - 1), goOn);
    return new Offer(laid.generation(), finding, fixes);
  }

  @Override
  public List<LayoutChoice> choices(Laid laid, String slab, BooleanSupplier goOn) {
    return LayoutChoice.of(laid.layout().plan(), slab, goOn);
  }

  @Override
  public String near(Laid laid, String slab, Words words, BooleanSupplier goOn) {
    Answer answer = new Answer(laid.layout().plan(), laid.layout(), laid.judgement());
    return NearestKnown.say(answer, slab, words, goOn);
  }

  @Override
  public WhyHere why(Laid laid, Pick.AtJoint pick) {
    Answer answer = new Answer(laid.layout().plan(), laid.layout(), laid.judgement());
    return new WhyHere(laid.generation(), pick, answer.reason(pick.slab(), pick.joint()));
  }

  @Override
  public There sheetsThere(
      List<Plan> ours, Sheets.Wanted wanted, Path folder, Optional<Path> file) {
    try {
      String stem = Sheets.stem(ours.getFirst().job(), file);
      List<Path> files = Sheets.there(wanted, folder, stem);
      return new There(files, OwnSheets.among(files, ours));
    } catch (IOException e) {
      // What cannot be looked into cannot be written into either: that is said then.
      return new There(List.of(), Set.of());
    }
  }

  @Override
  public Written sheets(
      Plan plan,
      Sheets.Wanted wanted,
      Path folder,
      Optional<Path> file,
      Set<Path> own,
      BooleanSupplier goOn) {
    Words words = wanted.words();
    try {
      String stem = Sheets.stem(plan.job(), file);
      List<Path> files = Sheets.write(Answer.asItStands(plan), wanted, folder, stem, own, goOn);
      List<Path> older = new ArrayList<>(Sheets.there(wanted, folder, stem));
      older.removeAll(files);
      return new Written(
          files, files.isEmpty() ? List.of() : older, List.of(), Display.canShowFiles());
    } catch (IOException e) {
      String what = words.say("window.file.cannotWrite", folder.toString(), said(e));
      return new Written(List.of(), List.of(), List.of(what), false);
    } catch (UnprintableException e) {
      String what = words.say("window.file.unprintable", e.letter(), e.text());
      return new Written(List.of(), List.of(), List.of(what), false);
    }
  }

  @Override
  public Path show(Path file) {
    // The toolkit gives this to programs that it starts itself only; this one starts the toolkit.
    new Application() {
      @Override
      public void start(Stage stage) {
        throw new IllegalStateException("it is asked for its services only");
      }
    }.getHostServices().showDocument(file.toUri().toString());
    return file;
  }

  @Override
  public Printout pages(Plan plan, Sheets.Wanted wanted, BooleanSupplier goOn) {
    try {
      return new Printout(
          Printing.leaves(Answer.asItStands(plan), wanted, goOn).orElse(List.of()),
          Press.printers(),
          List.of());
    } catch (UnprintableException e) {
      String what = wanted.words().say("window.file.unprintable", e.letter(), e.text());
      return new Printout(List.of(), List.of(), List.of(what));
    }
  }

  @Override
  public boolean print(PrintOrder order) {
    return Press.print(order);
  }
}
