package org.jointwright.app;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jointwright.file.json.Decimals;
import org.jointwright.file.json.Json;
import org.jointwright.file.json.JsonPrinter;
import org.jointwright.proof.Proof;
import org.jointwright.proof.ProofWords;
import org.jointwright.proof.build.BoxOutShape;
import org.jointwright.proof.build.Closing;
import org.jointwright.proof.build.Fault;
import org.jointwright.proof.build.Miss;
import org.jointwright.shape.Path;
import org.jointwright.shape.Point;

/** Writes a proof for other programs; lengths and places are inches. */
final class ProofFile {
  private static final int DECIMALS = 4;

  private ProofFile() {}

  static String write(Proof proof) {
    ProofWords words = new ProofWords(proof);
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("proven", Json.of(proof.isProven()));
    members.put("figures", figure(proof.reading().figures().size()));
    members.put(
        "corners",
        each(
            proof.closing().rebuilt().corners().entrySet().stream()
                .map(e -> entry("letter", Json.of(e.getKey()), "at", point(e.getValue())))
                .toList()));
    members.put(
        "joints",
        each(
            proof.closing().rebuilt().joints().entrySet().stream()
                .map(e -> joint(e.getKey(), e.getValue()))
                .toList()));
    members.put(
        "boxOuts",
        each(
            proof.closing().rebuilt().boxOuts().entrySet().stream()
                .map(e -> boxOut(e.getKey(), e.getValue()))
                .toList()));
    members.put(
        "compared", each(proof.closing().judged().stream().map(ProofFile::judged).toList()));
    members.put("faults", each(proof.faults().stream().map(f -> fault(f, words)).toList()));
    return JsonPrinter.pretty(Json.of(members));
  }

  private static Json each(List<Json> items) {
    return Json.of(items);
  }

  private static Json figure(double value) {
    return new Json.Figure(Decimals.rounded(value, DECIMALS), 0);
  }

  private static Json point(Point p) {
    return Json.of(List.of(figure(p.x()), figure(p.y())));
  }

  private static Json entry(String one, Json first, String two, Json second) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put(one, first);
    members.put(two, second);
    return Json.of(members);
  }

  private static Json joint(int number, Path path) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("number", figure(number));
    members.put("from", point(path.start()));
    members.put("to", point(path.end()));
    members.put("length", figure(path.length()));
    return Json.of(members);
  }

  private static Json boxOut(int number, BoxOutShape shape) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("number", figure(number));
    members.put("middle", point(shape.middle()));
    shape.radius().ifPresent(r -> members.put("radius", figure(r)));
    members.put("corners", each(shape.corners().stream().map(ProofFile::point).toList()));
    return Json.of(members);
  }

  private static Json judged(Closing.Judged judged) {
    Miss miss = judged.miss();
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("what", word(miss.kind()));
    members.put("name", Json.of(miss.name()));
    members.put("rebuilt", figure(miss.is()));
    members.put("printed", figure(miss.printed()));
    members.put("allowed", figure(judged.allowed()));
    return Json.of(members);
  }

  private static Json fault(Fault fault, ProofWords words) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("kind", word(fault.kind()));
    fault.place().ifPresent(p -> members.put("page", figure(p.page() + 1.0)));
    fault.place().ifPresent(p -> members.put("block", word(p.block())));
    fault.place().ifPresent(p -> members.put("row", Json.of(p.row())));
    members.put("text", Json.of(fault.text()));
    fault.should().ifPresent(s -> members.put("should", figure(s)));
    members.put("said", Json.of(words.say(fault)));
    return Json.of(members);
  }

  private static Json word(Enum<?> value) {
    return Json.of(value.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }
}
