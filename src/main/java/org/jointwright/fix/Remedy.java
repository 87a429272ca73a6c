package org.jointwright.fix;

import java.util.List;

/** One thing that finishers do about findings. */
interface Remedy {
  /**
   * What might be done about a finding, the likeliest first. Nothing here needs to be right: what
   * does not help is not offered.
   */
  List<Fix> proposals(Broken broken);
}
