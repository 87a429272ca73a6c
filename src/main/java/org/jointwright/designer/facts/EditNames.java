package org.jointwright.designer.facts;

import org.jointwright.designer.state.Picks;
import org.jointwright.fix.name.Called;
import org.jointwright.plan.Lettering;
import org.jointwright.plan.Plan;
import org.jointwright.plan.edit.BringBack;
import org.jointwright.plan.edit.Edit;
import org.jointwright.plan.edit.FeatureEdit;
import org.jointwright.plan.edit.FixedEdit;
import org.jointwright.plan.edit.GivenEdit;
import org.jointwright.plan.edit.History;
import org.jointwright.plan.edit.JobEdit;
import org.jointwright.plan.edit.JointEdit;
import org.jointwright.plan.edit.MixEdit;
import org.jointwright.plan.edit.Named;
import org.jointwright.plan.edit.PhotoEdit;
import org.jointwright.plan.edit.PourEdit;
import org.jointwright.plan.edit.Ref;
import org.jointwright.plan.edit.SlabEdit;
import org.jointwright.plan.edit.SplitEdit;
import org.jointwright.plan.edit.ThingEdit;
import org.jointwright.plan.edit.Together;
import org.jointwright.plan.edit.ZoneEdit;
import org.jointwright.shape.Motion;
import org.jointwright.text.Words;

/** Names what a step did, for undoing and doing it again. */
public final class EditNames {
  private EditNames() {}

  /** The name of a step. */
  public static String of(History.Step step, Words words) {
    return of(step.edit(), step.before(), words);
  }

  private static String of(Edit edit, Plan before, Words words) {
    return switch (edit) {
      case SlabEdit slab -> slab(slab, before, words);
      case JointEdit joint -> joint(joint, before, words);
      case FeatureEdit.Add add ->
          words.say("window.did.addFeature", FeatureFacts.kind(add.feature().kind(), words));
      case FeatureEdit.Change change ->
          words.say("window.did.changeFeature", FeatureFacts.kind(change.to().kind(), words));
      case FeatureEdit.Remove remove -> words.say("window.did.removeFeature");
      case ZoneEdit.Add add ->
          add.zone().name().isEmpty()
              ? words.say("window.did.addZone")
              : words.say("window.did.addNamedZone", add.zone().name());
      case ZoneEdit.Move move -> words.say("window.did.moveZone");
      case ZoneEdit.Remove remove -> words.say("window.did.removeZone");
      case GivenEdit.Add add -> words.say("window.did.addGiven");
      case GivenEdit.Move move -> words.say("window.did.moveGiven");
      case GivenEdit.Remove remove -> words.say("window.did.removeGiven");
      case ThingEdit things -> things(things, words);
      case SplitEdit.Split split -> words.say("window.did.split", split.slab());
      case SplitEdit.Join join -> words.say("window.did.join", join.slab(), join.other());
      case PhotoEdit photo -> words.say(photo(photo, before));
      case PourEdit pour -> words.say("window.did.pour");
      case MixEdit mix -> words.say("window.did.mix");
      case FixedEdit.Add add -> words.say("window.did.addFixed", add.object().id());
      case FixedEdit.Remove remove -> words.say("window.did.takeOut", remove.id());
      case FixedEdit.Move move -> words.say("window.did.move", move.id());
      case JobEdit job -> words.say("window.did.job");
      case BringBack back -> words.say("window.did.bringBack");
      case Named named -> words.say(named.key(), Called.in(before).in(named.arguments()));
      case Together together ->
          together.edits().isEmpty()
              ? words.say("window.did.change")
              : together(together, before, words);
    };
  }

  private static String photo(PhotoEdit edit, Plan before) {
    if (edit.photo().isEmpty()) {
      return "window.did.removePhoto";
    }
    return before.photo().isEmpty() ? "window.did.addPhoto" : "window.did.changePhoto";
  }

  private static String together(Together together, Plan before, Words words) {
    return switch (together.edits().getFirst()) {
      case SlabEdit.MoveCorner move ->
          move.corner().ring() == Ref.OUTLINE
              ? words.say("window.did.sideLength")
              : words.say("window.did.moveOpening");
      case FixedEdit.Remove remove -> words.say("window.did.changeFixed", remove.id());
      case ZoneEdit.Remove remove -> words.say("window.did.nameZone");
      default -> of(together.edits().getFirst(), before, words);
    };
  }

  private static String things(ThingEdit edit, Words words) {
    String what =
        edit.things().size() == 1
            ? Names.thing(edit.things().getFirst(), words)
            : words.say("window.thing.several", edit.things().size());
    return switch (edit) {
      case ThingEdit.TakeOut out -> words.say("window.did.takeOut", what);
      case ThingEdit.Copy copy -> words.say("window.did.copy", what);
      case ThingEdit.Put put -> {
        boolean isMove = put.motion().equals(Motion.by(put.motion().by()));
        yield words.say(
            put.motion().isMirrored()
                ? "window.did.mirror"
                : isMove ? "window.did.move" : "window.did.turn",
            what);
      }
    };
  }

  private static String slab(SlabEdit edit, Plan before, Words words) {
    return switch (edit) {
      case SlabEdit.Add add -> words.say("window.did.draw", add.slab().id());
      case SlabEdit.Remove remove -> words.say("window.did.takeOut", remove.id());
      case SlabEdit.Rename rename -> words.say("window.did.rename", rename.to());
      case SlabEdit.MoveCorner move ->
          words.say("window.did.moveCorner", letter(move.corner(), before));
      case SlabEdit.MoveSlab move -> words.say("window.did.move", move.id());
      case SlabEdit.AddCorner add -> words.say("window.did.addCorner");
      case SlabEdit.RemoveCorner remove ->
          words.say("window.did.removeCorner", letter(remove.corner(), before));
      case SlabEdit.RoundCorner round ->
          words.say("window.did.roundCorner", letter(round.corner(), before));
      case SlabEdit.SharpenCorner sharpen -> words.say("window.did.sharpenCorner");
      case SlabEdit.BendEdge bend -> words.say("window.did.bend");
      case SlabEdit.SetEdge set -> words.say("window.did.edge");
      case SlabEdit.SetThickness set -> words.say("window.did.thickness", set.id());
      case SlabEdit.SetBase set -> words.say("window.did.base", set.id());
      case SlabEdit.SetFinishing set -> words.say("window.did.finish", set.id());
      case SlabEdit.SetUse set -> words.say("window.did.use", set.id());
      case SlabEdit.SetJointing set -> words.say("window.did.jointing", set.id());
      case SlabEdit.SetPreference set -> words.say("window.did.preference", set.id());
      case SlabEdit.AddOpening add -> words.say("window.did.addOpening");
      case SlabEdit.RemoveOpening remove -> words.say("window.did.removeOpening");
    };
  }

  private static String joint(JointEdit edit, Plan before, Words words) {
    return switch (edit) {
      case JointEdit.Add add -> words.say("window.did.addJoint");
      case JointEdit.AddCornerJoint add ->
          words.say(
              "window.did.addCornerJoint", letter(Ref.outline(add.slab(), add.corner()), before));
      case JointEdit.Remove remove ->
          words.say("window.did.removeJoint", number(remove.slab(), remove.joint(), before, words));
      case JointEdit.Move move ->
          words.say("window.did.moveJoint", number(move.slab(), move.joint(), before, words));
      case JointEdit.SetKind kind ->
          words.say("window.did.jointKind", number(kind.slab(), kind.joint(), before, words));
      case JointEdit.Mend mend -> words.say("window.did.lay", mend.slab());
      case JointEdit.Lay lay -> words.say("window.did.lay", lay.slab());
      case JointEdit.Lock lock ->
          words.say(
              lock.locked() ? "window.did.lock" : "window.did.unlock",
              number(lock.slab(), lock.joint(), before, words));
    };
  }

  private static String letter(Ref ref, Plan before) {
    return Picks.vertex(before, ref)
        .flatMap(p -> Lettering.of(before).cornerAt(p))
        .map(c -> c.letter())
        .orElse("");
  }

  private static String number(String slab, String joint, Plan before, Words words) {
    return Picks.joint(before, new org.jointwright.designer.state.Pick.AtJoint(slab, joint))
        .flatMap(j -> new Names(before, words).number(slab, j))
        .map(n -> Integer.toString(n))
        .orElse("");
  }
}
