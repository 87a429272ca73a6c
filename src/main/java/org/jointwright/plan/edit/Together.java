package org.jointwright.plan.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.plan.Plan;

/** Several edits as one step. */
public record Together(List<Edit> edits) implements Edit {
  /** Copies the list. */
  public Together {
    edits = List.copyOf(edits);
  }

  @Override
  public Plan applyTo(Plan before) {
    Plan plan = before;
    for (Edit e : edits) {
      plan = e.applyTo(plan);
    }
    return plan;
  }

  /** One by one, where all of them can be: as many edits of the same things. */
  @Override
  public Optional<Edit> mergedWith(Edit later) {
    if (!(later instanceof Together t) || t.edits.size() != edits.size()) {
      return Optional.empty();
    }
    List<Edit> merged = new ArrayList<>();
    for (int i = 0; i < edits.size(); i++) {
      edits.get(i).mergedWith(t.edits.get(i)).ifPresent(merged::add);
    }
    return merged.size() == edits.size() ? Optional.of(new Together(merged)) : Optional.empty();
  }
}
