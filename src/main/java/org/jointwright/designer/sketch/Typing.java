package org.jointwright.designer.sketch;

/**
 * A sentence as it is typed, edited as text is in any field.
 *
 * @param text the sentence so far
 * @param anchor where what is picked of it begins, or ends
 * @param caret where the next sign goes; between it and the anchor lies what is picked
 */
public record Typing(String text, int anchor, int caret) {
  /** More signs than this are no sentence. */
  public static final int LONGEST = 48;

  /** Nothing typed. */
  public static final Typing NONE = of("");

  /** Where the caret can be led to. */
  public enum Motion {
    /** A sign back. */
    BACK,
    /** A sign on. */
    ON,
    /** To the beginning of the word, or of the one before. */
    WORD_BACK,
    /** To the beginning of the next word. */
    WORD_ON,
    /** Before all of it. */
    START,
    /** Behind all of it. */
    END
  }

  /** A sentence with the caret behind it. */
  public static Typing of(String text) {
    return new Typing(text, text.length(), text.length());
  }

  private Typing at(int place) {
    return new Typing(text, place, place);
  }

  /** Where what is picked begins. */
  public int from() {
    return Math.min(anchor, caret);
  }

  /** Where what is picked ends. */
  public int to() {
    return Math.max(anchor, caret);
  }

  /** What is picked of it; empty where nothing is. */
  public String picked() {
    return text.substring(from(), to());
  }

  /** With all of it picked. */
  public Typing all() {
    return new Typing(text, 0, text.length());
  }

  /** Without what is picked. */
  public Typing cut() {
    return new Typing(text.substring(0, from()) + text.substring(to()), from(), from());
  }

  /** With something put in place of what is picked, as much of it as there is room for. */
  public Typing put(String what) {
    Typing rest = cut();
    String fits = what.substring(0, Math.clamp(LONGEST - rest.text.length(), 0, what.length()));
    String whole = rest.text.substring(0, rest.caret) + fits + rest.text.substring(rest.caret);
    return new Typing(whole, 0, 0).at(rest.caret + fits.length());
  }

  /** With the caret led on; without {@code picking} all is left unpicked, at its nearer end. */
  public Typing moved(Motion motion, boolean picking) {
    if (!picking && anchor != caret && (motion == Motion.BACK || motion == Motion.ON)) {
      return at(motion == Motion.BACK ? from() : to());
    }
    int place = place(motion);
    return new Typing(text, picking ? anchor : place, place);
  }

  /** With the caret at a place, what lies between picked or not. */
  public Typing led(int place, boolean picking) {
    int there = Math.clamp(place, 0, text.length());
    return new Typing(text, picking ? anchor : there, there);
  }

  /** Without what is picked, or else what lies on the way of that motion. */
  public Typing without(Motion motion) {
    return anchor == caret ? moved(motion, true).cut() : cut();
  }

  private int place(Motion motion) {
    return switch (motion) {
      case START -> 0;
      case END -> text.length();
      case BACK -> text.offsetByCodePoints(caret, caret > 0 ? -1 : 0);
      case ON -> text.offsetByCodePoints(caret, caret < text.length() ? 1 : 0);
      case WORD_BACK -> {
        int at = caret;
        while (at > 0 && isSpace(at - 1)) {
          at--;
        }
        while (at > 0 && !isSpace(at - 1)) {
          at--;
        }
        yield at;
      }
      case WORD_ON -> {
        int at = caret;
        while (at < text.length() && !isSpace(at)) {
          at++;
        }
        while (at < text.length() && isSpace(at)) {
          at++;
        }
        yield at;
      }
    };
  }

  private boolean isSpace(int at) {
    return Character.isWhitespace(text.charAt(at));
  }
}
