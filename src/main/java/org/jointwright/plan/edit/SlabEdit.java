package org.jointwright.plan.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jointwright.measure.Length;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Jointing;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Preference;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Slab.Finishing;
import org.jointwright.plan.Use;
import org.jointwright.plan.Vertex;
import org.jointwright.shape.Motion;
import org.jointwright.shape.Point;

/** An edit of a slab. */
public sealed interface SlabEdit extends Edit {
  /** Adds a slab; its id must be new. */
  record Add(Slab slab) implements SlabEdit {
    @Override
    public Plan applyTo(Plan before) {
      List<Slab> slabs = new ArrayList<>(before.slabs());
      slabs.add(slab);
      return before.withSlabs(slabs);
    }
  }

  /** Takes a slab out, and the fixed objects in it. */
  record Remove(String id) implements SlabEdit {
    @Override
    public Plan applyTo(Plan before) {
      Rings.slab(before, id);
      return before
          .withSlabs(before.slabs().stream().filter(s -> !s.id().equals(id)).toList())
          .withFixed(before.fixed().stream().filter(f -> !f.slab().equals(id)).toList());
    }
  }

  /** Gives a slab another name. */
  record Rename(String id, String to) implements SlabEdit {
    @Override
    public Plan applyTo(Plan before) {
      return before
          .withSlab(id, s -> s.withId(to))
          .withFixed(
              before.fixed().stream().map(f -> f.slab().equals(id) ? f.inSlab(to) : f).toList());
    }
  }

  /** Moves a corner; arcs at it keep their bow. */
  record MoveCorner(Ref corner, Point to) implements SlabEdit {
    @Override
    public Plan applyTo(Plan before) {
      return Rings.change(before, corner, o -> Rings.moved(o, corner.index(), to));
    }

    @Override
    public Optional<Edit> mergedWith(Edit later) {
      return later instanceof MoveCorner m && m.corner.equals(corner)
          ? Optional.of(later)
          : Optional.empty();
    }
  }

  /** Moves a whole slab with its openings, joints, box-outs and fixed objects. */
  record MoveSlab(String id, Point by) implements SlabEdit {
    @Override
    public Plan applyTo(Plan before) {
      return Moved.slab(before, id, Motion.by(by));
    }

    @Override
    public Optional<Edit> mergedWith(Edit later) {
      return later instanceof MoveSlab m && m.id.equals(id)
          ? Optional.of(new MoveSlab(id, by.plus(m.by)))
          : Optional.empty();
    }
  }

  /** Puts a corner on the edge that leaves {@code edge}, at {@code at}; settings stay with it. */
  record AddCorner(Ref edge, Vertex at) implements SlabEdit {
    @Override
    public Plan applyTo(Plan before) {
      return Rings.inserted(before, edge, at);
    }
  }

  /** Takes a corner out; the edge before runs on straight to the next corner. */
  record RemoveCorner(Ref corner) implements SlabEdit {
    @Override
    public Plan applyTo(Plan before) {
      return Rings.removed(before, corner);
    }
  }

  /**
   * Makes a corner between two straight sides round: an arc that runs on from both.
   *
   * @param radius of the arc, inches; above 0 and at most {@link Rounding#most}
   */
  record RoundCorner(Ref corner, double radius) implements SlabEdit {
    @Override
    public Plan applyTo(Plan before) {
      return Rounding.round(before, corner, radius);
    }
  }

  /** Makes a rounded corner sharp again; {@code arc} is the edge that rounds it. */
  record SharpenCorner(Ref arc) implements SlabEdit {
    @Override
    public Plan applyTo(Plan before) {
      return Rounding.sharpen(before, arc);
    }
  }

  /** Bends an edge through a point, or straightens it where there is none. */
  record BendEdge(Ref edge, Optional<Point> via) implements SlabEdit {
    @Override
    public Plan applyTo(Plan before) {
      return Rings.change(before, edge, o -> Rings.bent(o, edge.index(), via));
    }

    @Override
    public Optional<Edit> mergedWith(Edit later) {
      return later instanceof BendEdge b && b.edge.equals(edge)
          ? Optional.of(later)
          : Optional.empty();
    }
  }

  /** Says what an edge is against. */
  record SetEdge(Ref edge, EdgeSetting setting) implements SlabEdit {
    @Override
    public Plan applyTo(Plan before) {
      return Rings.set(before, edge, setting);
    }
  }

  /** Sets a slab's thickness. */
  record SetThickness(String id, Length thickness) implements SlabEdit {
    @Override
    public Plan applyTo(Plan before) {
      return before.withSlab(id, s -> s.withThickness(thickness));
    }
  }

  /** Sets the thickness of the stone under a slab. */
  record SetBase(String id, Length base) implements SlabEdit {
    @Override
    public Plan applyTo(Plan before) {
      return before.withSlab(id, s -> s.withBase(base));
    }
  }

  /** Sets what is made of the surface of a slab. */
  record SetFinishing(String id, Finishing finishing) implements SlabEdit {
    @Override
    public Plan applyTo(Plan before) {
      return before.withSlab(id, s -> s.withFinishing(finishing));
    }
  }

  /** Sets what a slab carries. */
  record SetUse(String id, Use use) implements SlabEdit {
    @Override
    public Plan applyTo(Plan before) {
      return before.withSlab(id, s -> s.withUse(use));
    }
  }

  /** Sets the choices for a slab's joints. */
  record SetJointing(String id, Jointing jointing) implements SlabEdit {
    @Override
    public Plan applyTo(Plan before) {
      return before.withSlab(id, s -> s.withJointing(jointing));
    }
  }

  /** Sets which of several good layouts of a slab is wanted. */
  record SetPreference(String id, Preference preference) implements SlabEdit {
    @Override
    public Plan applyTo(Plan before) {
      return before.withSlab(id, s -> s.withJointing(s.jointing().withPreference(preference)));
    }
  }

  /** Adds an opening. */
  record AddOpening(String id, Opening opening) implements SlabEdit {
    @Override
    public Plan applyTo(Plan before) {
      return before.withSlab(
          id,
          s -> {
            List<Opening> openings = new ArrayList<>(s.openings());
            openings.add(opening);
            return s.withOpenings(openings);
          });
    }
  }

  /** Takes an opening out. */
  record RemoveOpening(String id, int opening) implements SlabEdit {
    @Override
    public Plan applyTo(Plan before) {
      return before.withSlab(
          id,
          s -> {
            List<Opening> openings = new ArrayList<>(s.openings());
            openings.remove(opening);
            return s.withOpenings(openings);
          });
    }
  }
}
