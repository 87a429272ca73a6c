package org.jointwright.file;

import java.util.Locale;
import java.util.function.Function;
import org.jointwright.measure.LengthUnit;
import org.jointwright.plan.Against;
import org.jointwright.plan.FeatureKind;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Mix.Exposure;
import org.jointwright.plan.Preference;
import org.jointwright.plan.Purpose;
import org.jointwright.plan.Slab.Coloring;
import org.jointwright.plan.Slab.Finish;
import org.jointwright.plan.Use;

/** The words that plan files use for what the plan has enums for. */
final class FileWords {
  static final String FORMAT = "jointwright-plan";
  static final int VERSION = 1;

  /** The units a plan may be in; centimetres only stand in lengths with their own units. */
  static final LengthUnit[] UNITS = {
    LengthUnit.FOOT, LengthUnit.INCH, LengthUnit.METRE, LengthUnit.MILLIMETRE
  };

  static final Function<Use, String> USE = FileWords::lower;
  static final Function<Finish, String> FINISH = FileWords::lower;
  static final Function<Coloring, String> COLORING = FileWords::lower;
  static final Function<Against, String> AGAINST = FileWords::lower;
  static final Function<JointKind, String> JOINT_KIND = FileWords::lower;
  static final Function<Purpose, String> PURPOSE = FileWords::lower;
  static final Function<FixedKind, String> FIXED_KIND = FileWords::lower;
  static final Function<FeatureKind, String> FEATURE_KIND = FileWords::lower;
  static final Function<Exposure, String> EXPOSURE = FileWords::lower;
  static final Function<Preference.Overall, String> CHOICE = FileWords::lower;

  private FileWords() {}

  private static String lower(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What a joint is there for when the file does not say. */
  static Purpose usualPurpose(JointKind kind) {
    return switch (kind) {
      case CONTRACTION -> Purpose.SPACING;
      case CONSTRUCTION -> Purpose.SHARED_EDGE;
      case ISOLATION -> Purpose.ISOLATION;
    };
  }
}
