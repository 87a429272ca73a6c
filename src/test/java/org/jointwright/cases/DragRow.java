package org.jointwright.cases;

/** What the drags of one case gave. */
final class DragRow {
  private final OpenCase of;
  private final Steadiness hand = new Steadiness();
  private final Steadiness sampled = new Steadiness();
  private final Steadiness anew = new Steadiness();
  private int asked;

  DragRow(OpenCase of) {
    this.of = of;
  }

  OpenCase of() {
    return of;
  }

  /** All drags, each as far as its pattern fits. */
  Steadiness hand() {
    return hand;
  }

  /** Some of the drags, the pattern kept while it fits. */
  Steadiness sampled() {
    return sampled;
  }

  /** The same drags, laid anew at each step. */
  Steadiness anew() {
    return anew;
  }

  void ask(int steps) {
    asked += steps;
  }

  /** How many steps the drags have. */
  int asked() {
    return asked;
  }

  void add(DragRow other) {
    hand.add(other.hand);
    sampled.add(other.sampled);
    anew.add(other.anew);
    asked += other.asked;
  }
}
