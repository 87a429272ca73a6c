package org.jointwright.plan;

import java.util.Optional;
import org.jointwright.measure.Length;
import org.jointwright.shape.Path;

/**
 * A joint, laid or locked.
 *
 * @param id its name within the slab
 * @param kind what kind it is
 * @param path where it runs; straight or one arc unless it is an isolation joint
 * @param locked whether the user holds it where it is
 * @param purpose what it is there for
 * @param how how it is made; empty for what the slab's joints are made like
 * @param depth its depth where it is said
 * @param width its width where it is said
 * @param kept what the file said besides
 */
public record Joint(
    String id,
    JointKind kind,
    Path path,
    boolean locked,
    Purpose purpose,
    Optional<How> how,
    Optional<Length> depth,
    Optional<Length> width,
    Kept kept) {
  /** A joint with nothing said about how it is made. */
  public static Joint of(String id, JointKind kind, Path path, Purpose purpose) {
    return new Joint(
        id,
        kind,
        path,
        false,
        purpose,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Kept.NOTHING);
  }

  /** This joint, locked or set free. */
  public Joint withLocked(boolean value) {
    return new Joint(id, kind, path, value, purpose, how, depth, width, kept);
  }

  /** This joint on another path. */
  public Joint withPath(Path value) {
    return new Joint(id, kind, value, locked, purpose, how, depth, width, kept);
  }

  /** This joint as one of another kind. */
  public Joint withKind(JointKind value) {
    return new Joint(id, value, path, locked, purpose, how, depth, width, kept);
  }

  /** This joint under another name. */
  public Joint withId(String value) {
    return new Joint(value, kind, path, locked, purpose, how, depth, width, kept);
  }
}
