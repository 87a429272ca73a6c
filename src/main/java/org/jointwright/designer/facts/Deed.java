package org.jointwright.designer.facts;

import java.nio.file.Path;
import java.util.function.UnaryOperator;
import org.jointwright.designer.state.Desk;

/**
 * Something that a button does.
 *
 * @param id a name for it that stays the same
 * @param label what the button says
 * @param what what it does
 * @param isQuiet whether it stands in the menus only
 */
public record Deed(String id, String label, What what, boolean isQuiet) {
  /** What a button may do. */
  public sealed interface What {}

  /** It changes the desk. */
  public record OnDesk(UnaryOperator<Desk> change) implements What {}

  /** It shows the photo beneath, or asks for one. */
  public record ToPhoto() implements What {}

  /** It writes the sheets. */
  public record WriteSheets() implements What {}

  /** It asks what to print. */
  public record Print() implements What {}

  /** It has the system show a file. */
  public record ShowFile(Path file) implements What {}

  static Deed inMenu(String id, String label, UnaryOperator<Desk> change) {
    return new Deed(id, label, new OnDesk(change), true);
  }

  static Deed of(String id, String label, UnaryOperator<Desk> change) {
    return new Deed(id, label, new OnDesk(change), false);
  }
}
