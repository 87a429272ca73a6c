package org.jointwright.reason;

import java.util.List;
import org.jointwright.joint.PanelMeasures;
import org.jointwright.joint.SlabLayout;

/**
 * What the panels of a slab come to.
 *
 * @param panels how many there are
 * @param longest the longest one's longer side, inches
 * @param evenness the standard deviation of their areas over the mean; 0 where all are alike
 * @param aspect the mean of longer side over shorter
 */
public record Outcome(int panels, double longest, double evenness, double aspect) {
  static Outcome of(SlabLayout slab) {
    List<PanelMeasures> all = slab.panels().stream().map(PanelMeasures::of).toList();
    double mean = all.stream().mapToDouble(PanelMeasures::area).average().orElse(0);
    double spread =
        all.stream().mapToDouble(m -> (m.area() - mean) * (m.area() - mean)).average().orElse(0);
    return new Outcome(
        all.size(),
        all.stream().mapToDouble(PanelMeasures::longSide).max().orElse(0),
        mean > 0 ? Math.sqrt(spread) / mean : 0,
        all.stream().mapToDouble(PanelMeasures::aspect).average().orElse(1));
  }
}
