package org.jointwright.designer.pane;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import org.jointwright.app.LayoutChoice;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Laid;
import org.jointwright.designer.state.Notice;
import org.jointwright.designer.state.Offer;
import org.jointwright.designer.state.Outside;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.WhyHere;
import org.jointwright.designer.state.Wish;

/**
 * The threads on which all slow work is done: one lays and judges, one reads and writes, so that a
 * plan can be saved while a long layout is worked on; one looks for fixes, one for reasons and one
 * for other layouts, which nothing waits for. A wish for a layout has a first answer as soon as
 * there is one and the better one after it; it is left off as soon as a newer wish comes. Of the
 * questions why a joint is there, only the newest is answered.
 */
public final class Workshop {
  private final Enquirer<List<LayoutChoice>> choices;
  private final Enquirer<String> nearness;
  private final ExecutorService laying = thread("laying");
  private final ExecutorService files = thread("files");
  private final ExecutorService fixing = thread("fixing");
  private final ExecutorService reasons = thread("reasons");
  private final AtomicReference<Optional<Question>> question =
      new AtomicReference<>(Optional.empty());
  private final AtomicReference<Optional<Wish>> newest = new AtomicReference<>(Optional.empty());
  private final Board board;
  private final Outside outside;
  private volatile long asked;
  private volatile long settled;
  private volatile Optional<Offer> sought = Optional.empty();
  private Optional<Question> lastQuestion = Optional.empty();

  /** Why a joint of a layout is where it is. */
  private record Question(Laid laid, Pick.AtJoint pick) {
    boolean isSame(Question other) {
      return laid.generation() == other.laid.generation() && pick.equals(other.pick);
    }
  }

  /** A workshop that works for {@code board} and has its answers from {@code outside}. */
  public Workshop(Board board, Outside outside) {
    this.board = board;
    this.outside = outside;
    board.watch(this::settle);
    board.watch(d -> d.laying().wish().ifPresent(this::ask));
    board.watch(this::seek);
    board.watch(this::askWhy);
    choices =
        new Enquirer<>(
            board,
            "choices",
            new Enquirer.Kind<>(
                (desk, slab) -> desk.laying().choicesOf(slab),
                (laid, slab, words, goOn) -> outside.choices(laid, slab, goOn),
                Desk::found,
                Desk::notChoosing,
                "window.notice.noChoices"));
    nearness =
        new Enquirer<>(
            board,
            "nearness",
            new Enquirer.Kind<>(
                (desk, slab) -> desk.laying().nearOf(slab),
                outside::near,
                Desk::measured,
                Desk::notMeasuring,
                "window.notice.noNear"));
  }

  static ExecutorService thread(String name) {
    return Executors.newSingleThreadExecutor(
        r -> {
          Thread t = new Thread(r, name);
          t.setDaemon(true);
          return t;
        });
  }

  /** What is answered, or was stopped, is worked on no longer. */
  private void settle(Desk desk) {
    if (desk.laying().isCurrent()) {
      desk.laying().wish().ifPresent(w -> settled = w.generation());
    }
  }

  private void ask(Wish wish) {
    boolean isAnswered =
        board.desk().laying().laid().filter(l -> l.generation() >= wish.generation()).isPresent();
    if (wish.generation() == asked || isAnswered || wish.isGivenUp()) {
      return;
    }
    asked = wish.generation();
    newest.set(Optional.of(wish));
    laying.execute(this::work);
  }

  /** Asks about the joint that is picked, once for each layout that it is a part of. */
  private void askWhy(Desk desk) {
    if (!(desk.picked() instanceof Pick.AtJoint pick) || !desk.laying().isCurrent()) {
      return;
    }
    Optional<Question> next = desk.laying().laid().map(l -> new Question(l, pick));
    if (next.isEmpty() || lastQuestion.filter(q -> q.isSame(next.get())).isPresent()) {
      return;
    }
    lastQuestion = next;
    question.set(next);
    reasons.execute(() -> question.getAndSet(Optional.empty()).ifPresent(this::answer));
  }

  private void answer(Question asking) {
    try {
      WhyHere why = outside.why(asking.laid(), asking.pick());
      Platform.runLater(() -> board.change(d -> d.explained(why)));
    } catch (Throwable fault) {
      Notice notice = trouble("window.notice.fault", fault);
      Platform.runLater(() -> board.change(d -> d.told(notice)));
    }
  }

  private void work() {
    newest.getAndSet(Optional.empty()).ifPresent(this::work);
  }

  private void work(Wish wish) {
    BooleanSupplier goOn =
        () -> asked == wish.generation() && settled < wish.generation() && !laying.isShutdown();
    try {
      if (wish.lay()) {
        outside.first(wish, goOn).ifPresent(this::show);
      }
      outside.work(wish, goOn).ifPresent(this::show);
    } catch (Throwable fault) {
      // Whatever goes wrong behind the window, what is drawn stays and the user is told.
      Notice notice = trouble("window.notice.fault", fault);
      Platform.runLater(() -> board.change(d -> d.gaveUp(wish).told(notice)));
    }
  }

  private void show(Laid laid) {
    Platform.runLater(() -> board.change(d -> d.answered(laid)));
  }

  /** Looks for fixes of the finding gone to, once for each. */
  private void seek(Desk desk) {
    Optional<Laid> laid = desk.laying().laid().filter(l -> desk.laying().isCurrent());
    OptionalInt number = desk.sight().finding();
    if (laid.isEmpty() || number.isEmpty() || number.getAsInt() > laid.get().findings().size()) {
      // Whoever has gone on waits for no fix of what was: the search for it ends.
      sought = Optional.empty();
      return;
    }
    if (desk.laying().offerFor(number.getAsInt()).isPresent()) {
      sought = Optional.empty();
      return;
    }
    Offer none = new Offer(laid.get().generation(), number.getAsInt(), List.of());
    if (sought.equals(Optional.of(none))) {
      return;
    }
    sought = Optional.of(none);
    fixing.execute(() -> offer(laid.get(), none));
  }

  /** A fault costs the fixes and nothing else: the finding says itself what to do. */
  @SuppressWarnings("ReferenceEquality")
  private void offer(Laid laid, Offer none) {
    // The very same: who goes to another finding and back asks anew.
    BooleanSupplier goOn = () -> sought.orElse(null) == none && !fixing.isShutdown();
    if (!goOn.getAsBoolean()) {
      return;
    }
    try {
      Offer offer = outside.fixes(laid, none.finding(), goOn);
      if (goOn.getAsBoolean()) {
        Platform.runLater(() -> board.change(d -> d.offered(offer)));
      }
    } catch (Throwable fault) {
      Notice notice = trouble("window.notice.noFixes", fault);
      Platform.runLater(
          () -> {
            if (goOn.getAsBoolean()) {
              board.change(d -> d.offered(none).told(notice));
            }
          });
    }
  }

  /**
   * Does {@code work} on the thread for files, then gives what came of it to the JavaFX thread.
   *
   * @param failed what the user is told when the work itself breaks down
   */
  <T> void run(Supplier<T> work, Consumer<T> then, String failed, Object... arguments) {
    files.execute(
        () -> {
          try {
            T done = work.get();
            Platform.runLater(() -> then.accept(done));
          } catch (Throwable fault) {
            Notice notice = trouble(failed, fault, arguments);
            Platform.runLater(() -> board.change(d -> d.told(notice)));
          }
        });
  }

  static Notice trouble(String key, Throwable fault, Object... arguments) {
    String what = Optional.ofNullable(fault.getMessage()).orElse(fault.getClass().getSimpleName());
    return Notice.trouble(key, List.of(what), arguments);
  }

  /** Gives the JavaFX thread {@code then} to do once the layouts asked for are done. */
  void afterLaying(Runnable then) {
    laying.execute(() -> Platform.runLater(then));
  }

  /** Ends the threads once what they do is done. */
  public void close() {
    laying.shutdown();
    files.shutdown();
    fixing.shutdown();
    reasons.shutdown();
    choices.close();
    nearness.close();
  }
}
