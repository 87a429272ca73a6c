package org.jointwright.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.jointwright.house.House.ROOT;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import java.util.Arrays;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Each toolkit has one door, so that another can take its place. */
class ToolkitTest {
  private static final Set<String> OLD_OVERLAY =
      Set.of("intersection", "union", "difference", "symDifference");

  @Test
  void jtsStaysBehindItsDoor() {
    onlyIn("org.locationtech.jts..", "shape.jts")
        .because("overlay must run on one grid and say where it failed; one door sees to that");
  }

  @Test
  void ojAlgoStaysBehindItsDoor() {
    onlyIn("org.ojalgo..", "layout.exact")
        .because("how near the best a layout is may be proved another way; no search rests on it");
  }

  @Test
  void javaFxStaysInTheWindow() {
    onlyIn("javafx..", "designer").because("the command line must run where there is no screen");
  }

  @Test
  void picocliStaysInTheCommandLine() {
    onlyIn("picocli..", "command").because("arguments are read in one place and mean values after");
  }

  @Test
  void jsonStaysInFiles() {
    onlyIn("tools.jackson..", "file").because("the document is no tree of a JSON library");
  }

  @Test
  void batikStaysInSheets() {
    onlyIn("org.apache.batik..", "sheet.svg").because("the drawing is neutral marks");
  }

  @Test
  void awtStaysInSheets() {
    onlyIn("java.awt..", "sheet.svg", "sheet.pdf")
        .because("it is a second window toolkit and starts threads of its own");
  }

  @Test
  void pdfBoxStaysInSheetsAndProof() {
    onlyIn("org.apache.pdfbox..", "sheet.pdf", "proof")
        .because("one writes the paper and the other reads it, and they share nothing else");
  }

  @Test
  void jtsOverlayIsTheRobustOne() {
    noClasses()
        .should()
        .callMethodWhere(
            DescribedPredicate.describe(
                "call the old overlay",
                (JavaMethodCall call) ->
                    call.getTargetOwner().isAssignableTo("org.locationtech.jts.geom.Geometry")
                        && OLD_OVERLAY.contains(call.getName())))
        .because("the overlay behind these methods throws on nearly coincident lines")
        .check(House.classes());
  }

  private record Door(String toolkit, String... homes) {
    void because(String reason) {
      noClasses()
          .that()
          .resideOutsideOfPackages(
              Arrays.stream(homes).map(h -> ROOT + "." + h + "..").toArray(String[]::new))
          .should()
          .dependOnClassesThat()
          .resideInAPackage(toolkit)
          .because(reason)
          .check(House.classes());
    }
  }

  private static Door onlyIn(String toolkit, String... homes) {
    return new Door(toolkit, homes);
  }
}
