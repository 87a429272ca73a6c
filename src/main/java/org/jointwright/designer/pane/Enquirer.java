package org.jointwright.designer.pane;

import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BiFunction;
import java.util.function.BooleanSupplier;
import java.util.function.UnaryOperator;
import javafx.application.Platform;
import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Enquiry;
import org.jointwright.designer.state.Laid;
import org.jointwright.designer.state.Notice;
import org.jointwright.designer.state.Pick;
import org.jointwright.text.Words;

/**
 * Works out what the user asks about the slab that is picked, on a thread of its own. What nobody
 * looks at any more is left off: another thing is picked, or the plan has changed.
 */
final class Enquirer<T> {
  private final Board board;
  private final Kind<T> kind;
  private final ExecutorService thread;
  private volatile Optional<Enquiry<T>> wanted = Optional.empty();

  /**
   * What is asked.
   *
   * @param asked what a desk asks about a slab
   * @param work works it out
   * @param answered a desk with the answer
   * @param left a desk that asks no more
   * @param fault what the user is told when the work breaks down
   */
  record Kind<T>(
      BiFunction<Desk, String, Optional<Enquiry<T>>> asked,
      Work<T> work,
      BiFunction<Desk, Enquiry<T>, Desk> answered,
      UnaryOperator<Desk> left,
      String fault) {}

  /** Works out an answer about a slab, in the reader's words, unless {@code goOn} says no. */
  interface Work<T> {
    T answer(Laid laid, String slab, Words words, BooleanSupplier goOn);
  }

  Enquirer(Board board, String name, Kind<T> kind) {
    this.board = board;
    this.kind = kind;
    thread = Workshop.thread(name);
    board.watch(this::look);
  }

  private void look(Desk desk) {
    Optional<Enquiry<T>> next =
        desk.picked() instanceof Pick.WholeSlab s
            ? kind.asked().apply(desk, s.slab()).filter(e -> e.answer().isEmpty())
            : Optional.empty();
    Optional<Laid> laid = desk.laying().settled();
    if (next.equals(wanted)) {
      return;
    }
    wanted = next;
    if (next.isPresent() && laid.isPresent()) {
      Words words = board.words();
      thread.execute(() -> work(laid.get(), next.get(), words));
    }
  }

  private boolean isWanted(Enquiry<T> enquiry) {
    return wanted.filter(enquiry::asksAs).isPresent();
  }

  private void work(Laid laid, Enquiry<T> enquiry, Words words) {
    if (!isWanted(enquiry)) {
      return;
    }
    // Once told to stop, an answer is not whole, even if it is wanted again by then.
    AtomicBoolean wasStopped = new AtomicBoolean();
    BooleanSupplier goOn =
        () -> {
          if (!isWanted(enquiry)) {
            wasStopped.set(true);
          }
          return !wasStopped.get();
        };
    try {
      T answer = kind.work().answer(laid, enquiry.slab(), words, goOn);
      if (!wasStopped.get()) {
        Platform.runLater(() -> board.change(d -> kind.answered().apply(d, enquiry.with(answer))));
      }
    } catch (Throwable fault) {
      Notice notice = Workshop.trouble(kind.fault(), fault);
      Platform.runLater(() -> board.change(d -> kind.left().apply(d).told(notice)));
    }
  }

  void close() {
    wanted = Optional.empty();
    thread.shutdown();
  }
}
