package org.jointwright.check;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Says which of the four cases that every rule needs a test is. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
public @interface Case {
  /** The case. */
  Kind value();

  /** The four cases. */
  enum Kind {
    PASSES,
    BREAKS,
    JUST_INSIDE,
    JUST_OUTSIDE
  }
}
