package org.jointwright.plan.edit;

import java.util.List;
import java.util.Optional;
import org.jointwright.plan.Plan;

/**
 * An edit with a name of its own: what it is for says more than what it changes.
 *
 * @param key the key of the words that name it
 * @param arguments what fills the places of those words
 * @param edit what is done
 */
public record Named(String key, List<Object> arguments, Edit edit) implements Edit {
  /** Copies the list. */
  public Named {
    arguments = List.copyOf(arguments);
  }

  @Override
  public Plan applyTo(Plan before) {
    return edit.applyTo(before);
  }

  @Override
  public Optional<Edit> mergedWith(Edit later) {
    return later instanceof Named n && n.key.equals(key) && n.arguments.equals(arguments)
        ? edit.mergedWith(n.edit).map(e -> new Named(key, arguments, e))
        : Optional.empty();
  }
}
