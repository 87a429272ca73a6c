package org.jointwright.plan;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jointwright.measure.Length;
import org.jointwright.shape.Region;

/**
 * One slab.
 *
 * @param id its name within the plan, shown to the user
 * @param use what it carries
 * @param thickness its thickness
 * @param base the thickness of the stone base under it
 * @param finishing what is made of its surface
 * @param outline its edge, counter-clockwise
 * @param openings openings in it
 * @param keepClear zones where no new joint may run
 * @param edges what its edges are against, by edge number; open ground where absent
 * @param jointing the user's choices for its joints
 * @param joints what was laid last, and what the user locked
 * @param boxOuts the box-outs laid last
 * @param kept what the file said besides
 */
public record Slab(
    String id,
    Use use,
    Length thickness,
    Length base,
    Finishing finishing,
    Outline outline,
    List<Opening> openings,
    List<KeepClear> keepClear,
    Map<Integer, EdgeSetting> edges,
    Jointing jointing,
    List<Joint> joints,
    List<BoxOut> boxOuts,
    Kept kept) {
  /** Thickness where the plan says none: 4 in, the plan format's default. */
  public static final Length DEFAULT_THICKNESS = Length.inches(4);

  /** Base where the plan says none: 4 in (IRC R506.2.2 as quoted by a 2009 IRC summary). */
  public static final Length DEFAULT_BASE = Length.inches(4);

  /** How the surface of a slab is finished. */
  public enum Finish {
    /** Dragged with a broom. */
    BROOM,
    /** Left as the float leaves it. */
    FLOAT,
    /** Smoothed with a trowel. */
    TROWEL,
    /** Washed until the stone shows. */
    EXPOSED_AGGREGATE,
    /** Pressed with stamps. */
    STAMPED,
    /** Colored, and broomed. */
    COLORED
  }

  /** How a color comes into a slab; the trade's words, common practice, no source. */
  public enum Coloring {
    /** Mixed into all of the concrete at the plant. */
    INTEGRAL,
    /** Shaken dry on the fresh surface and floated in. */
    SHAKE_ON
  }

  /**
   * What is made of the surface of a slab, as far as anyone has said. Colors and patterns are the
   * words of who sells them: nothing is worked out from them.
   *
   * @param finish how it is finished; empty where nobody has said
   * @param color what its color is called; empty for none, or one that is not chosen yet
   * @param coloring how the color comes into it, where it gets one
   * @param pattern what the pattern of its stamps is called; told only of what is stamped
   */
  public record Finishing(
      Optional<Finish> finish, String color, Coloring coloring, String pattern) {
    /** Longer names of colors and patterns are refused; characters. */
    public static final int LONGEST = 60;

    /** Nobody has said anything. */
    public static final Finishing UNSAID =
        new Finishing(Optional.empty(), "", Coloring.INTEGRAL, "");

    /** Whether it gets a color, be it chosen or not. */
    public boolean isColored() {
      return !color.isBlank() || finish.filter(f -> f == Finish.COLORED).isPresent();
    }

    /** What tells its color apart. */
    public String colorKey() {
      return keyOf(color);
    }

    /** Equal for names that differ in capitals and spaces only: nobody means two by that. */
    public static String keyOf(String name) {
      return name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    /** Whether the plant has to color the concrete. */
    public boolean isMixColored() {
      return isColored() && coloring == Coloring.INTEGRAL;
    }

    /** Whether it is pressed with stamps. */
    public boolean isStamped() {
      return finish.filter(f -> f == Finish.STAMPED).isPresent();
    }

    /**
     * What is left without its color: what is colored is broomed, and only stamps have a pattern.
     */
    public Finishing uncolored() {
      return new Finishing(
          finish.map(f -> f == Finish.COLORED ? Finish.BROOM : f),
          "",
          UNSAID.coloring(),
          isStamped() ? pattern : "");
    }

    /** This finished otherwise, or as nobody has said yet. */
    public Finishing withFinish(Optional<Finish> value) {
      return new Finishing(value, color, coloring, pattern);
    }

    /** This in another color. */
    public Finishing withColor(String value) {
      return new Finishing(finish, value, coloring, pattern);
    }

    /** This colored in another way. */
    public Finishing withColoring(Coloring value) {
      return new Finishing(finish, color, value, pattern);
    }

    /** This with stamps of another pattern. */
    public Finishing withPattern(String value) {
      return new Finishing(finish, color, coloring, value);
    }
  }

  /** Copies the collections. */
  public Slab {
    openings = List.copyOf(openings);
    keepClear = List.copyOf(keepClear);
    edges = Collections.unmodifiableMap(new TreeMap<>(edges));
    joints = List.copyOf(joints);
    boxOuts = List.copyOf(boxOuts);
  }

  /** A slab of which only the outline is known, 4 in thick, for cars. */
  public static Slab of(String id, Outline outline) {
    return new Slab(
        id,
        Use.CAR,
        DEFAULT_THICKNESS,
        DEFAULT_BASE,
        Finishing.UNSAID,
        outline,
        List.of(),
        List.of(),
        Map.of(),
        Jointing.DEFAULT,
        List.of(),
        List.of(),
        Kept.NOTHING);
  }

  /** How its surface is finished; empty where nobody has said. */
  public Optional<Finish> finish() {
    return finishing.finish();
  }

  /** What edge {@code i} is against. */
  public EdgeSetting edge(int i) {
    return edges.getOrDefault(i, EdgeSetting.OPEN);
  }

  /** The slab with its openings taken out, box-outs not. */
  public Region region() {
    return new Region(outline.ring(), openings.stream().map(o -> o.outline().ring()).toList());
  }

  /** The joints the user locked. */
  public List<Joint> lockedJoints() {
    return joints.stream().filter(Joint::locked).toList();
  }

  /** This slab under another name. */
  public Slab withId(String value) {
    return new Slab(
        value, use, thickness, base, finishing, outline, openings, keepClear, edges, jointing,
        joints, boxOuts, kept);
  }

  /** This slab for another use. */
  public Slab withUse(Use value) {
    return new Slab(
        id, value, thickness, base, finishing, outline, openings, keepClear, edges, jointing,
        joints, boxOuts, kept);
  }

  /** This slab at another thickness. */
  public Slab withThickness(Length value) {
    return new Slab(
        id, use, value, base, finishing, outline, openings, keepClear, edges, jointing, joints,
        boxOuts, kept);
  }

  /** This slab on another base. */
  public Slab withBase(Length value) {
    return new Slab(
        id, use, thickness, value, finishing, outline, openings, keepClear, edges, jointing, joints,
        boxOuts, kept);
  }

  /** This slab with something else made of its surface. */
  public Slab withFinishing(Finishing value) {
    return new Slab(
        id, use, thickness, base, value, outline, openings, keepClear, edges, jointing, joints,
        boxOuts, kept);
  }

  /** This slab with another outline. */
  public Slab withOutline(Outline value) {
    return new Slab(
        id, use, thickness, base, finishing, value, openings, keepClear, edges, jointing, joints,
        boxOuts, kept);
  }

  /** This slab with other openings. */
  public Slab withOpenings(List<Opening> value) {
    return new Slab(
        id, use, thickness, base, finishing, outline, value, keepClear, edges, jointing, joints,
        boxOuts, kept);
  }

  /** This slab with other zones to keep clear. */
  public Slab withKeepClear(List<KeepClear> value) {
    return new Slab(
        id, use, thickness, base, finishing, outline, openings, value, edges, jointing, joints,
        boxOuts, kept);
  }

  /** This slab with other things along its edges. */
  public Slab withEdges(Map<Integer, EdgeSetting> value) {
    return new Slab(
        id, use, thickness, base, finishing, outline, openings, keepClear, value, jointing, joints,
        boxOuts, kept);
  }

  /** This slab with other choices for its joints. */
  public Slab withJointing(Jointing value) {
    return new Slab(
        id, use, thickness, base, finishing, outline, openings, keepClear, edges, value, joints,
        boxOuts, kept);
  }

  /** This slab with these joints and box-outs. */
  public Slab withLaid(List<Joint> newJoints, List<BoxOut> newBoxOuts) {
    return new Slab(
        id,
        use,
        thickness,
        base,
        finishing,
        outline,
        openings,
        keepClear,
        edges,
        jointing,
        newJoints,
        newBoxOuts,
        kept);
  }
}
