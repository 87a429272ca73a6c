package org.jointwright.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jointwright.file.json.Json;
import org.jointwright.measure.LengthUnit;
import org.jointwright.plan.FixedObject;
import org.jointwright.plan.GivenJoint;
import org.jointwright.plan.Job;
import org.jointwright.plan.Mix;
import org.jointwright.plan.Photo;
import org.jointwright.plan.Plan;
import org.jointwright.plan.Pour;
import org.jointwright.plan.Slab;

/** Reads the document as a whole. */
final class DocumentReader {
  private final Reading reading;
  private final Fields fields;

  private DocumentReader(Reading reading, Fields fields) {
    this.reading = reading;
    this.fields = fields;
  }

  /** The plan; empty when there is any problem. */
  static Optional<Plan> read(Reading reading, Json json) {
    return Fields.of(reading, json, new Place.Top())
        .flatMap(f -> new DocumentReader(reading, f).read())
        .filter(p -> reading.problemCount() == 0);
  }

  private Optional<Plan> read() {
    if (!isOurs()) {
      return Optional.empty();
    }
    LengthUnit unit =
        fields.choice("unit", FileWords.UNITS, LengthUnit::symbol).orElse(LengthUnit.FOOT);
    reading.setUnit(unit);
    double north = fields.number("north", -360, 360).orElse(0);
    Job job = fields.object("job").map(this::job).orElse(Job.UNNAMED);
    fields.require("slabs", "[{\"id\": \"slab\", \"outline\": [[x, y], [x, y], [x, y]]}]");
    List<Json> items = fields.list("slabs");
    List<Slab> slabs = slabs(items);
    boolean isWhole = slabs.size() == items.size();
    if (isWhole && reading.problemCount() == 0) {
      SlabPlaces.check(reading, slabs, items);
    }
    List<FixedObject> fixed = new FixedReader(reading, slabs, isWhole).read(fields.list("fixed"));
    checkBoxOuts(slabs, fixed);
    List<GivenJoint> given = given(fields.list("given"));
    Pour pour = fields.object("pour").map(f -> PourFile.read(reading, f)).orElse(Pour.UNLIMITED);
    Mix mix = fields.object("mix").map(f -> MixFile.read(reading, f)).orElse(Mix.USUAL);
    Optional<Photo> photo = fields.object("photo").flatMap(f -> PhotoFile.read(reading, f));
    if (reading.problemCount() > 0) {
      return Optional.empty();
    }
    return Optional.of(
        new Plan(unit, north, job, slabs, fixed, given, pour, mix, photo, fields.kept()));
  }

  private boolean isOurs() {
    Json format = fields.need("format", '"' + FileWords.FORMAT + '"');
    Json version = fields.need("version", Integer.toString(FileWords.VERSION));
    if (format == null || version == null) {
      return false;
    }
    if (!(format instanceof Json.Text t) || !t.value().equals(FileWords.FORMAT)) {
      reading.problem(
          new Place.Top().key("format"), format, "file.otherFormat", Fields.shown(format));
      return false;
    }
    String said = version instanceof Json.Figure n ? n.text() : "";
    if (said.equals(Integer.toString(FileWords.VERSION))) {
      return true;
    }
    boolean isNewer = said.matches("[0-9]{1,9}") && Integer.parseInt(said) > FileWords.VERSION;
    reading.problem(
        new Place.Top().key("version"),
        version,
        isNewer ? "file.newerVersion" : "file.otherVersion",
        Fields.shown(version),
        Integer.toString(FileWords.VERSION));
    return false;
  }

  private Job job(Fields f) {
    return new Job(
        f.text("name"),
        f.text("site"),
        f.text("client"),
        f.text("date"),
        f.text("revision"),
        f.text("notes"),
        f.kept());
  }

  private List<GivenJoint> given(List<Json> items) {
    List<GivenJoint> given = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      Fields.of(reading, items.get(i), new Place.Top().key("given").item(i))
          .ifPresent(
              f ->
                  PathReader.read(reading, f)
                      .ifPresent(path -> given.add(new GivenJoint(path, f.kept()))));
    }
    return given;
  }

  private List<Slab> slabs(List<Json> items) {
    List<Slab> slabs = new ArrayList<>();
    Ids.Names names = new Ids.Names();
    for (int i = 0; i < items.size(); i++) {
      Place place = new Place.Top().key("slabs").item(i);
      int line = items.get(i).line();
      SlabReader.read(reading, items.get(i), place)
          .ifPresent(
              s -> {
                if (!names.add(s.id())) {
                  reading.problem(place.key("id"), line, "file.twoSlabs", s.id());
                }
                Bounds.ofSlab(reading, place, line, s);
                slabs.add(s);
              });
    }
    return slabs.stream().map(s -> s.id().isEmpty() ? s.withId(names.next("slab-")) : s).toList();
  }

  private void checkBoxOuts(List<Slab> slabs, List<FixedObject> fixed) {
    if (reading.problemCount() > 0) {
      return;
    }
    Set<String> names = fixed.stream().map(FixedObject::id).collect(Collectors.toSet());
    for (int i = 0; i < slabs.size(); i++) {
      Set<String> seen = new HashSet<>();
      Place place = new Place.Top().key("slabs").item(i).key("boxouts");
      for (int k = 0; k < slabs.get(i).boxOuts().size(); k++) {
        String name = slabs.get(i).boxOuts().get(k).fixed();
        if (!names.contains(name)) {
          reading.problem(place.item(k), 0, "file.boxOutOfNothing", name);
        } else if (!seen.add(name)) {
          reading.problem(place.item(k), 0, "file.twoBoxOuts", name);
        }
      }
    }
  }
}
