package org.jointwright.reason.words;

/** What a joint is called where its reasons are read. */
@FunctionalInterface
public interface JointName {
  /** The name of a joint of a slab, to stand within a sentence. */
  String of(String slab, String joint);
}
