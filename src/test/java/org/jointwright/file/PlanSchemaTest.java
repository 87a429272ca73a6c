package org.jointwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jointwright.app.PlanSchema;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The schema accepts what the program reads and writes, and refuses what a schema can tell. */
class PlanSchemaTest {
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(PlanSchema.text(), InputFormat.JSON);

  static List<Path> plans() {
    return PlanRoundTripTest.plans();
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everySampleAndCaseIsValid(Path file) throws IOException {
    String text = Files.readString(file);
    assertThat(SCHEMA.validate(text, InputFormat.JSON)).isEmpty();
    String written = PlanWriter.write(PlanRoundTripTest.read(text));
    assertThat(SCHEMA.validate(written, InputFormat.JSON)).isEmpty();
  }

  @Test
  void planWithEverythingInItIsValid() throws IOException {
    Path odd = Path.of("src/test/resources/cases/odd/everything.jointwright.json");
    String text = Files.readString(odd);
    assertThat(SCHEMA.validate(text, InputFormat.JSON)).isEmpty();
    String written = PlanWriter.write(PlanRoundTripTest.read(text));
    assertThat(SCHEMA.validate(written, InputFormat.JSON)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "list-at-the-top",
        "empty-object",
        "other-format",
        "newer-version",
        "no-slabs",
        "slabs-as-an-object",
        "slab-as-a-number",
        "no-outline",
        "outline-of-none",
        "vertex-of-three",
        "vertex-of-words",
        "vertex-missing",
        "vertex-without-at",
        "thickness-below-nothing",
        "thickness-in-words",
        "unit-of-yards",
        "use-for-aircraft",
        "against-the-sea",
        "edge-below-nothing",
        "edge-in-words",
        "post-without-a-shape",
        "post-of-two-shapes",
        "post-of-an-unknown-kind",
        "joint-of-one-vertex",
        "joint-without-a-path",
        "joint-of-an-unknown-kind",
        "lock-in-words",
        "aspect-of-nothing",
        "rule-of-thumb",
        "north-in-words",
        "job-as-a-list",
        "name-as-a-number",
        "id-without-end",
        "id-of-spaces",
        "coordinates-of-another-planet",
        "feature-before-its-edge",
        "feature-without-an-end",
        "feature-of-an-unknown-kind",
        "features-in-words",
        "zone-without-a-ring",
        "choice-of-the-cheapest",
        "choice-of-an-edge-in-words",
        "given-joint-of-one-point",
        "given-joint-without-a-path",
        "pour-in-square-feet",
        "pour-below-nothing"
      })
  void whatASchemaCanTellIsInvalid(String name) throws IOException {
    String text = Files.readString(Path.of("src/test/resources/cases/bad", name + ".json"));
    assertThat(SCHEMA.validate(text, InputFormat.JSON)).isNotEmpty();
  }
}
