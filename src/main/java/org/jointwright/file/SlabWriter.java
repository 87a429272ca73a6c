package org.jointwright.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jointwright.file.json.Decimals;
import org.jointwright.file.json.Json;
import org.jointwright.measure.Length;
import org.jointwright.measure.LengthUnit;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.EdgeSetting.Thickened;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Jointing;
import org.jointwright.plan.Kept;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Outline;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Slab.Finishing;
import org.jointwright.plan.Vertex;

/** Writes slabs as the plan file has them. */
final class SlabWriter {
  private final LengthUnit unit;

  SlabWriter(LengthUnit unit) {
    this.unit = unit;
  }

  Json json(Slab slab) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("id", Json.of(slab.id()));
    members.put("use", Json.of(FileWords.USE.apply(slab.use())));
    members.put("thickness", size(slab.kept(), "thickness", slab.thickness()));
    if (!slab.base().equals(Slab.DEFAULT_BASE) || slab.kept().typed().containsKey("base")) {
      members.put("base", size(slab.kept(), "base", slab.base()));
    }
    putFinishing(slab.finishing(), members);
    members.put("outline", ring(slab.outline(), unit));
    if (!slab.openings().isEmpty()) {
      members.put("openings", Json.of(slab.openings().stream().map(this::opening).toList()));
    }
    if (!slab.keepClear().isEmpty()) {
      members.put(
          "keepClear",
          Json.of(slab.keepClear().stream().map(z -> ZoneFile.json(z, unit)).toList()));
    }
    PlanWriter.putUnlessEmpty(members, "edges", edges(slab.edges()));
    PlanWriter.putUnlessEmpty(members, "jointing", jointing(slab.jointing()));
    if (!slab.joints().isEmpty()) {
      members.put("joints", Json.of(slab.joints().stream().map(this::joint).toList()));
    }
    if (!slab.boxOuts().isEmpty()) {
      members.put("boxouts", Json.of(slab.boxOuts().stream().map(this::boxOut).toList()));
    }
    PlanWriter.addUnknown(slab.kept(), members);
    return Json.of(members);
  }

  private static void putFinishing(Finishing finishing, Map<String, Json> members) {
    finishing.finish().ifPresent(f -> members.put("finish", Json.of(FileWords.FINISH.apply(f))));
    if (!finishing.color().isEmpty()) {
      members.put("color", Json.of(finishing.color()));
    }
    if (finishing.coloring() != Finishing.UNSAID.coloring()) {
      members.put("coloring", Json.of(FileWords.COLORING.apply(finishing.coloring())));
    }
    if (!finishing.pattern().isEmpty()) {
      members.put("pattern", Json.of(finishing.pattern()));
    }
  }

  /** A ring as a list of vertices. */
  static Json ring(Outline outline, LengthUnit unit) {
    List<Json> vertices = new ArrayList<>();
    for (Vertex v : outline.vertices()) {
      Json at = JointPath.point(v.kept(), "at", v.at(), unit);
      if (v.via().isEmpty() && v.kept().unknown().isEmpty()) {
        vertices.add(at);
        continue;
      }
      Map<String, Json> members = new LinkedHashMap<>();
      members.put("at", at);
      v.via().ifPresent(via -> members.put("via", JointPath.point(v.kept(), "via", via, unit)));
      PlanWriter.addUnknown(v.kept(), members);
      vertices.add(Json.of(members));
    }
    return Json.of(vertices);
  }

  private Json opening(Opening opening) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("ring", ring(opening.outline(), unit));
    PlanWriter.putUnlessEmpty(members, "edges", edges(opening.edges()));
    PlanWriter.addUnknown(opening.kept(), members);
    return Json.of(members);
  }

  private Map<String, Json> edges(Map<Integer, EdgeSetting> edges) {
    Map<String, Json> members = new LinkedHashMap<>();
    edges.forEach((i, setting) -> members.put(Integer.toString(i), edge(setting)));
    return members;
  }

  private Json edge(EdgeSetting setting) {
    Json against = Json.of(FileWords.AGAINST.apply(setting.against()));
    if (setting.equals(EdgeSetting.against(setting.against()))) {
      return against;
    }
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("against", against);
    if (setting.floats()) {
      members.put("floats", Json.of(true));
    }
    setting.thickened().ifPresent(t -> members.put("thickened", thickened(t)));
    if (!setting.features().isEmpty()) {
      members.put(
          "features",
          Json.of(setting.features().stream().map(f -> FeatureFile.json(f, unit)).toList()));
    }
    PlanWriter.addUnknown(setting.kept(), members);
    return Json.of(members);
  }

  private Json thickened(Thickened edge) {
    Map<String, Json> members = new LinkedHashMap<>();
    edge.depth().ifPresent(d -> members.put("depth", size(edge.kept(), "depth", d)));
    edge.over().ifPresent(o -> members.put("over", size(edge.kept(), "over", o)));
    PlanWriter.addUnknown(edge.kept(), members);
    return Json.of(members);
  }

  private Map<String, Json> jointing(Jointing jointing) {
    Map<String, Json> members = new LinkedHashMap<>();
    jointing.rule().ifPresent(r -> members.put("rule", Json.of(r.word())));
    jointing
        .maxSpacing()
        .ifPresent(s -> members.put("maxSpacing", spacing(jointing.kept(), "maxSpacing", s)));
    jointing.aspect().ifPresent(a -> members.put("aspect", new Json.Figure(Decimals.number(a), 0)));
    jointing
        .minPanel()
        .ifPresent(s -> members.put("minPanel", spacing(jointing.kept(), "minPanel", s)));
    ChoiceFile.json(jointing.preference()).ifPresent(c -> members.put("choice", c));
    PlanWriter.addUnknown(jointing.kept(), members);
    return members;
  }

  private Json joint(Joint joint) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("id", Json.of(joint.id()));
    members.put("kind", Json.of(FileWords.JOINT_KIND.apply(joint.kind())));
    members.put("path", JointPath.json(joint.path(), joint.kept(), unit));
    if (joint.locked()) {
      members.put("locked", Json.of(true));
    }
    if (joint.purpose() != FileWords.usualPurpose(joint.kind())) {
      members.put("purpose", Json.of(FileWords.PURPOSE.apply(joint.purpose())));
    }
    joint.how().ifPresent(h -> members.put("how", Json.of(h.word())));
    joint.depth().ifPresent(d -> members.put("depth", size(joint.kept(), "depth", d)));
    joint.width().ifPresent(w -> members.put("width", size(joint.kept(), "width", w)));
    PlanWriter.addUnknown(joint.kept(), members);
    return Json.of(members);
  }

  private Json boxOut(BoxOut boxOut) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("fixed", Json.of(boxOut.fixed()));
    members.put("ring", ring(boxOut.outline(), unit));
    PlanWriter.addUnknown(boxOut.kept(), members);
    return Json.of(members);
  }

  private Json size(Kept kept, String field, Length length) {
    return Lengths.size(kept, field, length.inches(), unit);
  }

  private Json spacing(Kept kept, String field, Length length) {
    return Lengths.spacing(kept, field, length.inches(), unit);
  }
}
