package org.jointwright.file;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jointwright.file.json.Json;
import org.jointwright.measure.Length;
import org.jointwright.plan.BoxOut;
import org.jointwright.plan.EdgeSetting;
import org.jointwright.plan.Joint;
import org.jointwright.plan.Jointing;
import org.jointwright.plan.KeepClear;
import org.jointwright.plan.Opening;
import org.jointwright.plan.Slab;
import org.jointwright.plan.Slab.Coloring;
import org.jointwright.plan.Slab.Finish;
import org.jointwright.plan.Slab.Finishing;
import org.jointwright.plan.SpacingRule;
import org.jointwright.plan.Use;

/** Reads one slab. */
final class SlabReader {
  private final Reading reading;
  private final Fields fields;

  private SlabReader(Reading reading, Fields fields) {
    this.reading = reading;
    this.fields = fields;
  }

  /** The slab; its id is empty where the file gives none. */
  static Optional<Slab> read(Reading reading, Json json, Place place) {
    return Fields.of(reading, json, place).flatMap(f -> new SlabReader(reading, f).read());
  }

  private Optional<Slab> read() {
    int before = reading.problemCount();
    String id = Ids.read(reading, fields);
    Use use = fields.choice("use", Use.values(), FileWords.USE).orElse(Use.CAR);
    Length thickness = fields.length("thickness", Bounds.THICKNESS).orElse(Slab.DEFAULT_THICKNESS);
    Length base = fields.length("base", Bounds.BASE).orElse(Slab.DEFAULT_BASE);
    Finishing finishing = finishing();
    Json outlineJson = fields.need("outline", "[[x, y], [x, y], [x, y]]");
    Optional<RingReader.ReadRing> outline = ring(outlineJson, "outline");
    Map<Integer, EdgeSetting> edges = EdgesReader.read(reading, fields.object("edges"), outline);
    List<Opening> openings = openings(outline);
    List<KeepClear> keepClear = ZoneFile.read(reading, fields, outline);
    Jointing jointing =
        fields.object("jointing").map(f -> jointing(f, outline)).orElse(Jointing.DEFAULT);
    List<Joint> joints = joints();
    List<BoxOut> boxOuts = boxOuts();
    if (outline.isEmpty() || reading.problemCount() > before) {
      return Optional.empty();
    }
    return Optional.of(
        new Slab(
            id,
            use,
            thickness,
            base,
            finishing,
            outline.get().outline(),
            openings,
            keepClear,
            edges,
            jointing,
            joints,
            boxOuts,
            fields.kept()));
  }

  private Finishing finishing() {
    return new Finishing(
        fields.choice("finish", Finish.values(), FileWords.FINISH),
        called("color"),
        coloring(),
        called("pattern"));
  }

  private Coloring coloring() {
    boolean isWord =
        fields.members().get("coloring") instanceof Json.Text t
            && Arrays.stream(Coloring.values())
                .anyMatch(c -> FileWords.COLORING.apply(c).equals(t.value()));
    return isWord
        ? fields
            .choice("coloring", Coloring.values(), FileWords.COLORING)
            .orElse(Finishing.UNSAID.coloring())
        : leftAsItIs("coloring", Finishing.UNSAID.coloring());
  }

  /** What its maker calls something, in a few words; empty when absent. */
  private String called(String key) {
    return fields.members().get(key) instanceof Json.Text t
            && t.value().length() <= Finishing.LONGEST
        ? fields.text(key).strip()
        : leftAsItIs(key, "");
  }

  /** Before these keys had a meaning, others may have used them: such files are read as before. */
  private <T> T leftAsItIs(String key, T instead) {
    Json value = fields.members().get(key);
    if (value != null && !(value instanceof Json.Nothing)) {
      reading.repair(fields.place().key(key), value.line(), "file.colorUnread", Finishing.LONGEST);
    }
    return instead;
  }

  private Optional<RingReader.ReadRing> ring(
      @org.jspecify.annotations.Nullable Json json, String name) {
    return json == null
        ? Optional.empty()
        : RingReader.read(reading, json, fields.place().key(name));
  }

  private Jointing jointing(Fields f, Optional<RingReader.ReadRing> outline) {
    return new Jointing(
        f.choice("rule", SpacingRule.values(), SpacingRule::word),
        f.length("maxSpacing", Bounds.SPACING),
        f.number("aspect", 1, 4),
        f.length("minPanel", Bounds.SPACING),
        ChoiceFile.read(reading, f, outline),
        f.kept());
  }

  private List<Opening> openings(Optional<RingReader.ReadRing> outline) {
    List<Opening> openings = new ArrayList<>();
    OpeningPlaces places = new OpeningPlaces(reading, outline.map(r -> r.outline().ring()));
    List<Json> items = fields.list("openings");
    for (int i = 0; i < items.size(); i++) {
      Place place = fields.place().key("openings").item(i);
      Json json = items.get(i);
      opening(json, place)
          .filter(o -> places.fits(o.outline().ring(), place, json))
          .ifPresent(openings::add);
    }
    return openings;
  }

  private Optional<Opening> opening(Json json, Place place) {
    if (json instanceof Json.Items) {
      return RingReader.read(reading, json, place)
          .map(r -> new Opening(r.outline(), Map.of(), org.jointwright.plan.Kept.NOTHING));
    }
    Optional<Fields> opening = Fields.of(reading, json, place);
    Json ringJson = opening.map(o -> o.need("ring", "[[x, y], [x, y], [x, y]]")).orElse(null);
    if (opening.isEmpty() || ringJson == null) {
      return Optional.empty();
    }
    Fields f = opening.get();
    Optional<RingReader.ReadRing> ring = RingReader.read(reading, ringJson, place.key("ring"));
    Map<Integer, EdgeSetting> edges = EdgesReader.read(reading, f.object("edges"), ring);
    return ring.map(r -> new Opening(r.outline(), edges, f.kept()));
  }

  private List<Joint> joints() {
    List<Joint> joints = new ArrayList<>();
    Ids.Names names = new Ids.Names();
    List<Json> items = fields.list("joints");
    for (int i = 0; i < items.size(); i++) {
      Place place = fields.place().key("joints").item(i);
      int line = items.get(i).line();
      JointReader.read(reading, items.get(i), place)
          .ifPresent(
              j -> {
                if (!names.add(j.id())) {
                  reading.problem(place.key("id"), line, "file.twoJoints", j.id());
                }
                joints.add(j);
              });
    }
    return joints.stream().map(j -> j.id().isEmpty() ? j.withId(names.next("J")) : j).toList();
  }

  private List<BoxOut> boxOuts() {
    List<BoxOut> boxOuts = new ArrayList<>();
    List<Json> items = fields.list("boxouts");
    for (int i = 0; i < items.size(); i++) {
      Place place = fields.place().key("boxouts").item(i);
      Fields.of(reading, items.get(i), place)
          .flatMap(f -> boxOut(f, place))
          .ifPresent(boxOuts::add);
    }
    return boxOuts;
  }

  private Optional<BoxOut> boxOut(Fields f, Place place) {
    Json ring = f.need("ring", "[[x, y], [x, y], [x, y]]");
    String fixed = f.text("fixed");
    return ring == null
        ? Optional.empty()
        : RingReader.read(reading, ring, place.key("ring"))
            .map(r -> new BoxOut(fixed, r.outline(), f.kept()));
  }
}
