package org.jointwright.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jointwright.measure.LengthUnit;

/**
 * The whole document. Geometry is in inches whatever {@code unit} says.
 *
 * @param unit the unit the file's bare numbers are written in; foot, inch, metre or millimetre
 * @param north where north lies on the paper, degrees clockwise from straight up
 * @param job the job's facts
 * @param slabs the slabs, in the order they were drawn; ids differ
 * @param fixed the fixed objects; ids differ
 * @param given joints that are there already in concrete beside the slabs
 * @param pour how much is poured at a time
 * @param mix the concrete that is ordered
 * @param photo the photo that lies beneath
 * @param kept what the file said besides
 */
public record Plan(
    LengthUnit unit,
    double north,
    Job job,
    List<Slab> slabs,
    List<FixedObject> fixed,
    List<GivenJoint> given,
    Pour pour,
    Mix mix,
    Optional<Photo> photo,
    Kept kept) {
  /** A plan with nothing in it yet. */
  public static final Plan EMPTY =
      new Plan(
          LengthUnit.FOOT,
          0,
          Job.UNNAMED,
          List.of(),
          List.of(),
          List.of(),
          Pour.UNLIMITED,
          Mix.USUAL,
          Optional.empty(),
          Kept.NOTHING);

  /** A plan of the usual concrete, without a photo beneath. */
  public Plan(
      LengthUnit unit,
      double north,
      Job job,
      List<Slab> slabs,
      List<FixedObject> fixed,
      List<GivenJoint> given,
      Pour pour,
      Kept kept) {
    this(unit, north, job, slabs, fixed, given, pour, Mix.USUAL, Optional.empty(), kept);
  }

  /** Copies the lists and refuses two slabs or two fixed objects of one name. */
  public Plan {
    slabs = List.copyOf(slabs);
    fixed = List.copyOf(fixed);
    given = List.copyOf(given);
    Set<String> seen = new HashSet<>();
    for (Slab s : slabs) {
      if (!seen.add(s.id())) {
        throw new IllegalArgumentException("two slabs are named " + s.id());
      }
    }
    seen.clear();
    for (FixedObject f : fixed) {
      if (!seen.add(f.id())) {
        throw new IllegalArgumentException("two fixed objects are named " + f.id());
      }
    }
  }

  /** The slab of that name, if there is one. */
  public Optional<Slab> slab(String id) {
    return slabs.stream().filter(s -> s.id().equals(id)).findFirst();
  }

  /** The fixed object of that name, if there is one. */
  public Optional<FixedObject> fixedObject(String id) {
    return fixed.stream().filter(f -> f.id().equals(id)).findFirst();
  }

  /** The fixed objects that stand in a slab. */
  public List<FixedObject> fixedIn(String slabId) {
    return fixed.stream().filter(f -> f.slab().equals(slabId)).toList();
  }

  /** The objects that a box-out of a slab is round: several where they share it. */
  public List<FixedObject> boxedOut(String slabId, BoxOut box) {
    Slab slab = slab(slabId).orElseThrow();
    return slab.boxOuts().stream()
        .filter(b -> b.equals(box) || b.outline().ring().equals(box.outline().ring()))
        .flatMap(b -> fixedObject(b.fixed()).stream())
        .toList();
  }

  /** Whether any slab has joints. */
  public boolean isLaid() {
    return slabs.stream().anyMatch(s -> !s.joints().isEmpty());
  }

  /** This plan with the slab of that name changed; a name that is not there is refused. */
  public Plan withSlab(String id, UnaryOperator<Slab> change) {
    if (slab(id).isEmpty()) {
      throw new IllegalArgumentException("no slab is named " + id);
    }
    List<Slab> changed = new ArrayList<>();
    for (Slab s : slabs) {
      changed.add(s.id().equals(id) ? change.apply(s) : s);
    }
    return withSlabs(changed);
  }

  /** This plan with its bare numbers written in another unit; nothing in it moves. */
  public Plan in(LengthUnit value) {
    return new Plan(value, north, job, slabs, fixed, given, pour, mix, photo, kept);
  }

  /** This plan with other slabs. */
  public Plan withSlabs(List<Slab> value) {
    return new Plan(unit, north, job, value, fixed, given, pour, mix, photo, kept);
  }

  /** This plan with other fixed objects. */
  public Plan withFixed(List<FixedObject> value) {
    return new Plan(unit, north, job, slabs, value, given, pour, mix, photo, kept);
  }

  /** This plan with other facts of the job. */
  public Plan withJob(Job value) {
    return new Plan(unit, north, value, slabs, fixed, given, pour, mix, photo, kept);
  }

  /** This plan with other joints beside its slabs. */
  public Plan withGiven(List<GivenJoint> value) {
    return new Plan(unit, north, job, slabs, fixed, value, pour, mix, photo, kept);
  }

  /** This plan with other limits of a pour. */
  public Plan withPour(Pour value) {
    return new Plan(unit, north, job, slabs, fixed, given, value, mix, photo, kept);
  }

  /** This plan of other concrete. */
  public Plan withMix(Mix value) {
    return new Plan(unit, north, job, slabs, fixed, given, pour, value, photo, kept);
  }

  /** This plan with another photo beneath, or none. */
  public Plan withPhoto(Optional<Photo> value) {
    return new Plan(unit, north, job, slabs, fixed, given, pour, mix, value, kept);
  }
}
