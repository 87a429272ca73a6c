package org.jointwright.fix.name;

/**
 * What a joint runs to, as words need it.
 *
 * @param name what it is called: a side by its corners, a joint, an object, a corner
 * @param kind which of these it is, in that order from 0
 */
public record Target(Object name, int kind) {
  public static Target side(String name) {
    return new Target(name, 0);
  }

  public static Target joint(JointName name) {
    return new Target(name, 1);
  }

  public static Target object(String name) {
    return new Target(name, 2);
  }

  public static Target corner(String letter) {
    return new Target(letter, 3);
  }
}
