package org.jointwright.designer.facts;

import java.util.List;

/** A figure that was typed and cannot be; carries the message's key and arguments. */
public final class BadFigure extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final String key;
  private final transient List<Object> arguments;

  BadFigure(String key, Object... arguments) {
    super(key);
    this.key = key;
    this.arguments = List.of(arguments);
  }

  /** The message's key. */
  public String key() {
    return key;
  }

  /** The message's arguments. */
  public Object[] arguments() {
    return arguments.toArray();
  }
}
