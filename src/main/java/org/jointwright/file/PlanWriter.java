package org.jointwright.file;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jointwright.file.json.Decimals;
import org.jointwright.file.json.Json;
import org.jointwright.file.json.JsonPrinter;
import org.jointwright.measure.LengthUnit;
import org.jointwright.plan.FixedKind;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.FixedShape;
import org.jointwright.plan.GivenJoint;
import org.jointwright.plan.Job;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Plan;

/** Writes plan files: the same plan always gives the same bytes. */
public final class PlanWriter {
  private PlanWriter() {}

  /** The plan as the text of a file. */
  public static String write(Plan plan) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("format", Json.of(FileWords.FORMAT));
    members.put("version", new Json.Figure(Integer.toString(FileWords.VERSION), 0));
    members.put("unit", Json.of(plan.unit().symbol()));
    if (plan.north() != 0) {
      members.put("north", new Json.Figure(Decimals.number(plan.north()), 0));
    }
    putUnlessEmpty(members, "job", job(plan.job()));
    SlabWriter slabs = new SlabWriter(plan.unit());
    members.put("slabs", Json.of(plan.slabs().stream().map(slabs::json).toList()));
    if (!plan.fixed().isEmpty()) {
      List<Json> fixed = plan.fixed().stream().map(f -> fixed(f, plan.unit())).toList();
      members.put("fixed", Json.of(fixed));
    }
    if (!plan.given().isEmpty()) {
      members.put("given", Json.of(plan.given().stream().map(g -> given(g, plan.unit())).toList()));
    }
    putUnlessEmpty(members, "pour", PourFile.members(plan.pour(), plan.unit()));
    putUnlessEmpty(members, "mix", MixFile.members(plan.mix(), plan.unit()));
    plan.photo().ifPresent(p -> members.put("photo", PhotoFile.json(p, plan.unit())));
    addUnknown(plan.kept(), members);
    return JsonPrinter.pretty(Json.of(members));
  }

  /** The plan as the bytes of a file. */
  public static byte[] bytes(Plan plan) {
    return write(plan).getBytes(StandardCharsets.UTF_8);
  }

  private static Map<String, Json> job(Job job) {
    Map<String, Json> members = new LinkedHashMap<>();
    putText(members, "name", job.name());
    putText(members, "site", job.site());
    putText(members, "client", job.client());
    putText(members, "date", job.date());
    putText(members, "revision", job.revision());
    putText(members, "notes", job.notes());
    addUnknown(job.kept(), members);
    return members;
  }

  private static Json fixed(FixedObject object, LengthUnit unit) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("id", Json.of(object.id()));
    members.put("slab", Json.of(object.slab()));
    if (object.kind() != FixedKind.OTHER) {
      members.put("kind", Json.of(FileWords.FIXED_KIND.apply(object.kind())));
    }
    Map<String, Json> shape = new LinkedHashMap<>();
    switch (object.shape()) {
      case FixedShape.Round r -> {
        shape.put("circle", circle(r, unit));
        RoundKept.addToShape(r.kept(), shape);
      }
      case FixedShape.Outlined o -> {
        shape.put("ring", SlabWriter.ring(o.outline(), unit));
        addUnknown(o.kept(), shape);
      }
    }
    members.put("shape", Json.of(shape));
    addUnknown(object.kept(), members);
    return Json.of(members);
  }

  private static Json given(GivenJoint joint, LengthUnit unit) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("path", JointPath.json(joint.path(), joint.kept(), unit));
    addUnknown(joint.kept(), members);
    return Json.of(members);
  }

  private static Json circle(FixedShape.Round round, LengthUnit unit) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("at", JointPath.point(round.kept(), "at", round.at(), unit));
    members.put(
        "diameter", Lengths.size(round.kept(), "diameter", round.diameter().inches(), unit));
    RoundKept.addToCircle(round.kept(), members);
    return Json.of(members);
  }

  private static void putText(Map<String, Json> members, String name, String text) {
    if (!text.isEmpty()) {
      members.put(name, Json.of(text));
    }
  }

  static void putUnlessEmpty(Map<String, Json> members, String name, Map<String, Json> value) {
    if (!value.isEmpty()) {
      members.put(name, Json.of(value));
    }
  }

  /** Puts back what nobody knew, behind what is known. */
  static void addUnknown(Kept kept, Map<String, Json> members) {
    kept.unknown()
        .forEach(
            (key, text) -> {
              if (!JointPath.isOfVertex(key)) {
                members.putIfAbsent(key, new Json.Raw(text));
              }
            });
  }
}
