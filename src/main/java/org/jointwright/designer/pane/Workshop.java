package org.jointwright.designer.pane;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import org.jointwright.designer.state.Laid;
import org.jointwright.designer.state.Notice;
import org.jointwright.designer.state.Outside;
import org.jointwright.designer.state.Wish;

/**
 * The one thread on which all slow work is done, in order. Of the wishes for a layout that come
 * while one is worked on, only the newest is done.
 */
public final class Workshop {
  private final ExecutorService thread =
      Executors.newSingleThreadExecutor(
          r -> {
            Thread t = new Thread(r, "workshop");
            t.setDaemon(true);
            return t;
          });
  private final AtomicReference<Optional<Wish>> newest = new AtomicReference<>(Optional.empty());
  private final Board board;
  private final Outside outside;
  private long asked;

  /** A workshop that works for {@code board} and has its answers from {@code outside}. */
  public Workshop(Board board, Outside outside) {
    this.board = board;
    this.outside = outside;
    board.watch(d -> d.laying().wish().ifPresent(this::ask));
  }

  private void ask(Wish wish) {
    boolean isAnswered =
        board.desk().laying().laid().filter(l -> l.generation() >= wish.generation()).isPresent();
    if (wish.generation() == asked || isAnswered) {
      return;
    }
    asked = wish.generation();
    newest.set(Optional.of(wish));
    thread.execute(this::work);
  }

  private void work() {
    Optional<Wish> wish = newest.getAndSet(Optional.empty());
    if (wish.isEmpty()) {
      return;
    }
    try {
      Laid laid = outside.work(wish.get());
      Platform.runLater(() -> board.change(d -> d.answered(laid)));
    } catch (RuntimeException fault) {
      // Whatever goes wrong behind the window, what is drawn stays and the user is told.
      String what = String.valueOf(fault.getMessage());
      Platform.runLater(
          () ->
              board.change(
                  d ->
                      d.gaveUp(wish.get())
                          .told(Notice.trouble("window.notice.fault", List.of(what)))));
    }
  }

  /** Does {@code work} on the thread, then gives what came of it to the JavaFX thread. */
  <T> void run(Supplier<T> work, Consumer<T> then) {
    thread.execute(
        () -> {
          try {
            T done = work.get();
            Platform.runLater(() -> then.accept(done));
          } catch (RuntimeException fault) {
            String what = String.valueOf(fault.getMessage());
            Notice notice = Notice.trouble("window.notice.failed", List.of(what));
            Platform.runLater(() -> board.change(d -> d.told(notice)));
          }
        });
  }

  /** Ends the thread once what it does is done. */
  public void close() {
    thread.shutdown();
  }
}
