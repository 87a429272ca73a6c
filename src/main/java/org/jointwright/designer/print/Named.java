package org.jointwright.designer.print;

import java.util.function.Function;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;

/** Says things of a list by their names; nobody types them. */
final class Named<T> extends StringConverter<T> {
  private final Function<T, String> name;

  Named(Function<T, String> name) {
    this.name = name;
  }

  @Override
  public String toString(@Nullable T thing) {
    return thing == null ? "" : name.apply(thing);
  }

  @Override
  public T fromString(String text) {
    throw new UnsupportedOperationException("nothing is typed here");
  }
}
