package org.jointwright.fix;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jointwright.check.Finding;

/**
 * Mends what may be behind a finding: a joint that ends short, meets askew or lies wrong leaves
 * panels that are wrong too.
 */
final class Causes implements Remedy {
  /** No more other findings than this are looked into. */
  private static final int MOST = 4;

  private static final Map<String, List<Remedy>> BY_RULE =
      Map.of(
          "M4", List.of(new MeetSquare()),
          "M6", List.of(new Ends(), new Overlaps()),
          "M9", List.of(new PutBack()));

  @Override
  public List<Fix> proposals(Broken broken) {
    List<Finding> causes =
        broken.others().filter(f -> BY_RULE.containsKey(f.rule())).limit(MOST).toList();
    List<Fix> fixes = new ArrayList<>();
    for (Finding cause : causes) {
      Broken behind = broken.at(cause);
      for (Remedy remedy : BY_RULE.getOrDefault(cause.rule(), List.of())) {
        fixes.addAll(remedy.proposals(behind));
      }
    }
    return fixes;
  }
}
