package org.jointwright.check.evidence;

import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A value worked out the first time it is asked for. One that cannot be worked out throws each
 * time, so that every rule that needs it says so itself and the rules that do not still run.
 */
final class Once<T> {
  private final Supplier<T> maker;
  private @Nullable T value;

  Once(Supplier<T> maker) {
    this.maker = maker;
  }

  T get() {
    if (value == null) {
      value = maker.get();
    }
    return Objects.requireNonNull(value);
  }
}
