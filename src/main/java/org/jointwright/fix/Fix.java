package org.jointwright.fix;

import java.util.List;
import org.jointwright.plan.edit.Edit;
import org.jointwright.plan.edit.Named;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.plan.edit.SplitEdit;
import org.jointwright.plan.edit.Together;

/**
 * Something that can be done about a finding. Holds no words: {@code key} and {@code arguments}
 * make them.
 *
 * @param key the key of what it says, an order: {@code fix.across.plain}
 * @param arguments what fills the places: names of panels, joints and sides, lengths, numbers
 * @param edit what it does to the plan that was judged
 * @param brings the rules of lesser weight that find more once it is done, the weightiest first
 */
public record Fix(String key, List<Object> arguments, Edit edit, List<String> brings) {
  /** Copies the lists. */
  public Fix {
    arguments = List.copyOf(arguments);
    brings = List.copyOf(brings);
  }

  /** One that was not tried yet. */
  public Fix(String key, List<Object> arguments, Edit edit) {
    this(key, arguments, edit, List.of());
  }

  /** The same, and what it brings. */
  Fix bringing(List<String> rules) {
    return new Fix(key, arguments, edit, rules);
  }

  /** Whether it changes the shape of a slab or where it lies, so that joints are due anew. */
  public boolean isOfShape() {
    return isOfShape(edit);
  }

  private static boolean isOfShape(Edit edit) {
    return switch (edit) {
      case Named n -> isOfShape(n.edit());
      case Together t -> t.edits().stream().anyMatch(Fix::isOfShape);
      case SlabEdit.MoveSlab m -> true;
      case SlabEdit.AddOpening o -> true;
      case SplitEdit s -> true;
      default -> false;
    };
  }

  /**
   * A fix whose edit is named by words of its own.
   *
   * @param did the key of what the step is called once it is done, of the same arguments
   */
  public static Fix of(String key, String did, List<?> arguments, Edit edit) {
    List<Object> all = List.copyOf(arguments);
    return new Fix(key, all, new Named(did, all, edit));
  }
}
