package org.jointwright.fix;

/**
 * What a joint runs to, as words need it.
 *
 * @param name what it is called: a side by its corners, a joint, an object, a corner
 * @param kind which of these it is, in that order from 0
 */
record Target(Object name, int kind) {
  static Target side(String name) {
    return new Target(name, 0);
  }

  static Target joint(JointName name) {
    return new Target(name, 1);
  }

  static Target object(String name) {
    return new Target(name, 2);
  }

  static Target corner(String letter) {
    return new Target(letter, 3);
  }
}
