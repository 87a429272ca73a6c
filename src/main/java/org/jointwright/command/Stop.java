package org.jointwright.command;

/** The end of a command before its work is done; what there is to say is said in lines. */
final class Stop extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final int code;

  Stop(int code, String message) {
    super(message, null, false, false);
    this.code = code;
  }

  int code() {
    return code;
  }
}
