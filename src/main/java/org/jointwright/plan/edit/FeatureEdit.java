package org.jointwright.plan.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.jointwright.plan.Feature;
import org.jointwright.plan.Plan;

/** An edit of what people see along an edge. */
public sealed interface FeatureEdit extends Edit {
  /** Adds a feature; what reaches beyond the edge's end is cut off. */
  record Add(Ref edge, Feature feature) implements FeatureEdit {
    @Override
    public Plan applyTo(Plan before) {
      return changed(
          before,
          edge,
          features -> {
            features.add(feature);
            return features;
          });
    }
  }

  /** Takes a feature out, by its number along the edge. */
  record Remove(Ref edge, int feature) implements FeatureEdit {
    @Override
    public Plan applyTo(Plan before) {
      return changed(before, edge, feature, features -> features.remove(feature));
    }
  }

  /** Changes a feature, by its number along the edge; what reaches beyond the end is cut off. */
  record Change(Ref edge, int feature, Feature to) implements FeatureEdit {
    @Override
    public Plan applyTo(Plan before) {
      return changed(before, edge, feature, features -> features.set(feature, to));
    }

    @Override
    public Optional<Edit> mergedWith(Edit later) {
      return later instanceof Change c && c.edge.equals(edge) && c.feature == feature
          ? Optional.of(later)
          : Optional.empty();
    }
  }

  private static Plan changed(Plan before, Ref edge, int feature, Consumer<List<Feature>> change) {
    return changed(
        before,
        edge,
        features -> {
          if (feature < 0 || feature >= features.size()) {
            throw new IllegalArgumentException("the edge has no feature " + feature);
          }
          change.accept(features);
          return features;
        });
  }

  private static Plan changed(Plan before, Ref edge, UnaryOperator<List<Feature>> change) {
    return Rings.changeSetting(
        before, edge, s -> s.withFeatures(change.apply(new ArrayList<>(s.features()))));
  }
}
