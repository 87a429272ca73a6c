package org.jointwright.file;

import java.util.Optional;
import org.jointwright.file.json.Json;
import org.jointwright.measure.Length;
import org.jointwright.plan.How;
import org.jointwright.plan.Joint;
import org.jointwright.plan.JointKind;
import org.jointwright.plan.Purpose;
import org.jointwright.shape.Path;

/** Reads one joint. */
final class JointReader {
  private final Reading reading;
  private final Fields fields;

  private JointReader(Reading reading, Fields fields) {
    this.reading = reading;
    this.fields = fields;
  }

  /** The joint; its id is empty where the file gives none. */
  static Optional<Joint> read(Reading reading, Json json, Place place) {
    return Fields.of(reading, json, place).flatMap(f -> new JointReader(reading, f).read());
  }

  private Optional<Joint> read() {
    int before = reading.problemCount();
    String id = Ids.read(reading, fields);
    Optional<JointKind> kind = fields.choice("kind", JointKind.values(), FileWords.JOINT_KIND);
    Optional<Path> path = PathReader.read(reading, fields);
    boolean locked = fields.flag("locked");
    Optional<Purpose> purpose = fields.choice("purpose", Purpose.values(), FileWords.PURPOSE);
    Optional<How> how = fields.choice("how", How.values(), How::word);
    Optional<Length> depth = fields.length("depth", Bounds.DEPTH);
    Optional<Length> width = fields.length("width", Bounds.WIDTH);
    if (path.isEmpty() || reading.problemCount() > before) {
      return Optional.empty();
    }
    JointKind sure = kind.orElse(JointKind.CONTRACTION);
    return Optional.of(
        new Joint(
            id,
            sure,
            path.get(),
            locked,
            purpose.orElse(FileWords.usualPurpose(sure)),
            how,
            depth,
            width,
            fields.kept()));
  }
}
