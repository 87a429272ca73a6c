package org.jointwright.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jointwright.measure.Length;
import org.jointwright.proof.build.Closing;
import org.jointwright.proof.build.Fault;
import org.jointwright.proof.build.Miss;
import org.jointwright.proof.build.Rebuilt;
import org.jointwright.proof.read.Part;
import org.jointwright.proof.read.Place;
import org.jointwright.proof.read.Reading;
import org.jointwright.text.Words;

/** Says what was proven, in the language and the measures of the sheet. */
public final class ProofWords {
  /** A corner that may be off by more steps of the tape is named. */
  private static final double LOOSE = 2;

  private final Proof proof;
  private final Words words;

  /** For a sheet as it is printed. */
  public ProofWords(Proof proof) {
    this.proof = proof;
    Reading reading = proof.reading();
    this.words = Words.of(reading.language(), reading.units()).rounded(reading.units().finest());
  }

  /** The report, line by line. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    Reading reading = proof.reading();
    Rebuilt rebuilt = proof.closing().rebuilt();
    int strips = (int) reading.strips().stream().filter(s -> rebuilt.has(s.number())).count();
    int joints = (int) reading.rows().stream().filter(r -> rebuilt.has(r.number())).count();
    lines.add(
        words.say(
            "proof.rebuilt",
            rebuilt.corners().size(),
            joints,
            strips,
            rebuilt.boxOuts().size(),
            reading.figures().size()));
    if (proof.isProven()) {
      lines.add(worst());
      lines.add(words.say("proof.adds", reading.sides().size()));
      lines.add(words.say("proof.proven"));
      loose().ifPresent(lines::add);
    } else {
      lines.add(words.say("proof.broken", proof.faults().size()));
      proof.faults().forEach(f -> lines.add("  " + say(f)));
    }
    return lines;
  }

  /** The joint, or else the other thing, that comes out farthest from what is printed. */
  private String worst() {
    Optional<Miss> worst =
        proof.closing().judged().stream()
            .map(Closing.Judged::miss)
            .filter(m -> m.kind() != Miss.Kind.RADIUS)
            // Of several as far off the first one counts, whatever the noise of arithmetic.
            .max(Comparator.comparingLong(m -> Math.round(Math.abs(m.off()) * 1000)));
    String zero = words.print(Length.inches(0));
    return worst
        .filter(m -> !length(Math.abs(m.off())).equals(zero))
        .map(m -> words.say("proof.worst", length(Math.abs(m.off())), what(m)))
        .orElseGet(() -> words.say("proof.exact"));
  }

  /** The corners that may stand off their place though all closes, and by how much. */
  private Optional<String> loose() {
    double most = LOOSE * proof.reading().units().rounding().step().inches();
    String all =
        proof.closing().doubts().entrySet().stream()
            .filter(d -> d.getValue() > most)
            .map(d -> words.say("proof.loose.corner", d.getKey(), length(d.getValue())))
            .collect(Collectors.joining(", "));
    return all.isEmpty() ? Optional.empty() : Optional.of(words.say("proof.loose", all));
  }

  private String what(Miss miss) {
    return what(miss.kind(), miss.name());
  }

  private String what(Miss.Kind kind, String name) {
    return words.say("proof.what." + kind.name(), name);
  }

  private String length(double inches) {
    return words.print(Length.inches(inches));
  }

  /** What is wrong, in a sentence that names the place. */
  public String say(Fault fault) {
    String should = fault.should().map(this::length).orElse("");
    String place =
        fault
            .place()
            .map(this::say)
            .or(() -> fault.about().map(k -> what(k, fault.text())))
            .orElse("");
    String key = fault.kind().name();
    return words.say(
        "proof.fault." + key,
        place,
        fault.text(),
        should,
        length(fault.printed()),
        length(fault.allowed()));
  }

  /** Where a figure stands on the sheet. */
  public String say(Place place) {
    String block = words.say("proof.block." + place.block().name(), place.row());
    String part =
        place.part() == Part.MARK ? block : block + ", " + words.say("proof.part." + place.part());
    return words.say("proof.at", String.valueOf(place.page() + 1), part);
  }
}
