package org.jointwright;

import java.nio.file.Path;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jointwright.command.CommandLineProgram;
import org.jointwright.command.Window;
import org.jointwright.designer.start.Designer;

/** Where the program starts, and the one place that knows both front ends. */
public final class Main {
  /** Held here, for a logger that nobody holds forgets its level. */
  private static final Logger TOOLKIT = Logger.getLogger("javafx");

  private Main() {}

  /** Runs the command named by the arguments. */
  public static void main(String[] args) {
    // Standard error is for our own messages.
    TOOLKIT.setLevel(Level.SEVERE);
    System.exit(CommandLineProgram.run(new RealWindow(), args));
  }

  private static final class RealWindow implements Window {
    @Override
    public boolean open(Optional<Path> plan) {
      return onScreen(() -> Designer.open(plan));
    }

    @Override
    public boolean glimpse(Optional<Path> plan, Runnable shown) {
      return onScreen(() -> Designer.glimpse(plan, shown));
    }
  }

  private static boolean onScreen(Runnable window) {
    try {
      window.run();
      return true;
    } catch (IllegalStateException e) {
      // This cause is how the window says that there is no screen; any other is a fault of ours.
      if (e.getCause() instanceof UnsupportedOperationException) {
        return false;
      }
      throw e;
    }
  }
}
