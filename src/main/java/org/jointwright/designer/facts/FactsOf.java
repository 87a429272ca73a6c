package org.jointwright.designer.facts;

import org.jointwright.designer.state.Desk;
import org.jointwright.designer.state.Pick;
import org.jointwright.designer.state.Step;
import org.jointwright.text.Words;

/** Finds the facts of what is picked on a desk. */
public final class FactsOf {
  private static final String TAKE_OUT = "take-out";

  private FactsOf() {}

  /** The facts to show. */
  public static Facts desk(Desk desk, Words words) {
    Facts job = new JobFacts(desk, words).facts();
    if (desk.draft().isPresent()) {
      return new DraftFacts(desk, desk.draft().get(), words).facts();
    }
    if (desk.hand().shape().isPresent()) {
      return new ReadyFacts(desk, desk.hand().shape().get(), words).facts();
    }
    if (desk.hand().addition().isPresent()) {
      return new AdditionFacts(desk, desk.hand().addition().get(), words).facts();
    }
    if (desk.sight().step() == Step.ORDER) {
      return new OrderFacts(desk, words).facts();
    }
    if (desk.sight().step() == Step.SHEETS) {
      return new SheetFacts(desk, words).facts();
    }
    return switch (desk.picked()) {
      case Pick.Nothing n -> job;
      case Pick.Several s -> new WholeFacts(desk, s.things(), words).facts();
      case Pick.WholeSlab s ->
          desk.plan().slab(s.slab()).map(x -> new SlabFacts(desk, x, words).facts()).orElse(job);
      case Pick.AtCorner c -> new CornerFacts(desk, c.corner(), words).facts().orElse(job);
      case Pick.AtEdge e -> new EdgeFacts(desk, e.edge(), words).facts().orElse(job);
      case Pick.AtJoint j -> new JointFacts(desk, j, words).facts().orElse(job);
      case Pick.AtFixed f ->
          desk.plan()
              .fixedObject(f.id())
              .map(x -> new FixedFacts(desk, x, words).facts())
              .orElse(job);
      case Pick.AtFeature f -> new FeatureFacts(desk, f, words).facts().orElse(job);
      case Pick.AtZone z -> new GroundFacts(desk, words).zone(z).orElse(job);
      case Pick.AtGiven g -> new GroundFacts(desk, words).given(g).orElse(job);
      case Pick.AtPhoto p ->
          desk.plan().photo().map(x -> new PhotoFacts(desk, x, words).facts()).orElse(job);
      case Pick.Scaling s ->
          desk.plan().photo().map(x -> new PhotoFacts(desk, x, words).scaling(s)).orElse(job);
      case Pick.AtOpening o -> new OpeningFacts(desk, o, words).facts().orElse(job);
    };
  }

  /** The desk without what is picked: the deed of its facts, so that both always agree. */
  public static Desk takenOut(Desk desk, Words words) {
    return desk(desk, words).deeds().stream()
        .filter(d -> d.id().equals(TAKE_OUT))
        .map(Deed::what)
        .findFirst()
        .map(what -> what instanceof Deed.OnDesk on ? on.change().apply(desk) : desk)
        .orElse(desk);
  }
}
