package org.jointwright.house;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.jointwright.house.House.ROOT;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The borders between the packages: who may know whom, and why. */
class ArchitectureTest {
  /** The plan's words that a limit may be looked up by. */
  private static final Set<String> CHOICES =
      Set.of("Use", "How", "SpacingRule", "Jointing", "Exposure");

  @Test
  void measureKnowsNothingElse() {
    only("measure").because("a length means the same everywhere, so it rests on nothing");
  }

  @Test
  void pictureKnowsNothingElse() {
    only("picture").because("what bytes are a picture hangs on no plan and on no toolkit");
  }

  @Test
  void textKnowsMeasuresOnly() {
    only("text", "measure").because("words are for any part of the program, and know none");
  }

  @Test
  void shapeKnowsMeasuresOnly() {
    only("shape", "measure").because("geometry holds for any shape, whatever it is a plan of");
  }

  @Test
  void practiceKnowsMeasuresAndTheUsersChoices() {
    rule(
            "practice",
            inPackages("practice", "measure")
                .or(describe("the user's choices", c -> CHOICES.contains(baseName(c)))))
        .because("limits are data with a source, looked up by what the user chose; judging is not");
  }

  @Test
  void planKnowsShapesOnly() {
    only("plan", "picture", "shape", "measure")
        .because("the document outlives every program that reads it and every toolkit");
  }

  @Test
  void jointKnowsPlansAndLimits() {
    only("joint", "plan", "shape", "practice", "measure")
        .because(
            "what a layout is must not hang on how one is found or judged; how far a box-out"
                + " reaches is a limit like others");
  }

  @Test
  void engineKnowsNoJudgement() {
    only("layout", "joint", "plan", "shape", "practice", "measure")
        .because(
            "engine and checks share measures and limits; an error in one must not hide in both");
  }

  @Test
  void keepingAPatternNeedsNoSearch() {
    noClasses()
        .that(inPackages("layout.keep"))
        .should()
        .dependOnClassesThat(inPackages("layout.search", "layout.exact", "layout.boxout"))
        .because("what is fitted in a frame under a hand must not be able to start a search")
        .check(House.classes());
  }

  @Test
  void surveyKnowsPlansOnly() {
    only("survey", "plan", "shape", "measure").because("taping comes before any joint is laid");
  }

  @Test
  void gradeKnowsPlansOnly() {
    only("grade", "plan", "shape", "practice", "measure")
        .because("heights hang on the outline, not on joints");
  }

  @Test
  void takeoffKnowsNoChecks() {
    only("takeoff", "plan", "joint", "grade", "shape", "practice", "measure", "text")
        .because("quantities are counted whether the layout is good or not");
  }

  @Test
  void quantitiesAreFiguresBeforeTheyAreWords() {
    noClasses()
        .that()
        .resideInAPackage(ROOT + ".takeoff")
        .should()
        .dependOnClassesThat(inPackages("text"))
        .because("a file, a sheet and a price take the same figures")
        .check(House.classes());
  }

  @Test
  void checksKnowNoEngine() {
    only("check", "plan", "joint", "grade", "takeoff", "shape", "practice", "measure")
        .because("a judge that asks the engine would acquit whatever the engine does");
  }

  @Test
  void reasonsAskTheJudgeAndKnowNoEngine() {
    only("reason", "check", "joint", "plan", "shape", "practice", "measure", "text")
        .because("why a joint is needed is found by leaving it out, not by asking who laid it");
  }

  @Test
  void reasonsAreDataBeforeTheyAreWords() {
    noClasses()
        .that()
        .resideInAPackage(ROOT + ".reason")
        .should()
        .dependOnClassesThat(inPackages("text"))
        .because("a file and a window say the same reasons in their own words")
        .check(House.classes());
  }

  @Test
  void evidenceKnowsNoRule() {
    noClasses()
        .that(inPackages("check.evidence", "check.face", "check.along"))
        .should()
        .dependOnClassesThat(
            resideInAPackage(ROOT + ".check")
                .or(
                    inPackages(
                        "check.panel",
                        "check.line",
                        "check.hold",
                        "check.wish",
                        "check.judge",
                        "check.figure")))
        .because("what is there is found before it is judged, and for every rule alike")
        .check(House.classes());
  }

  @Test
  void figuresKnowNoRule() {
    noClasses()
        .that(inPackages("check.figure"))
        .should()
        .dependOnClassesThat(
            resideInAPackage(ROOT + ".check")
                .or(
                    inPackages(
                        "check.panel", "check.line", "check.hold", "check.wish", "check.judge")))
        .because("figures are counted whether the layout is good or not")
        .check(House.classes());
  }

  @Test
  void fixesKnowNoEngine() {
    only("fix", "check", "joint", "plan", "shape", "practice", "measure")
        .because(
            "a fix is a small change that the rules were asked about; laying anew is another offer,"
                + " and made where the engine may be called");
  }

  @Test
  void pourKnowsNoChecks() {
    only("pour", "plan", "joint", "takeoff", "practice", "measure")
        .because("the day's order follows from the layout as it stands");
  }

  @Test
  void drawingKnowsNoEngineAndNoShell() {
    only(
            "drawing",
            "text",
            "check",
            "pour",
            "takeoff",
            "grade",
            "survey",
            "joint",
            "plan",
            "practice",
            "shape",
            "measure")
        .because("marks show what is there, for the window and for paper alike, and lay nothing");
  }

  @Test
  void sheetKnowsWhatIsLaidButNoEngineAndNoJudge() {
    only("sheet", "drawing", "text", "takeoff", "joint", "plan", "practice", "shape", "measure")
        .because("a page says what is laid and what practice asks of it; it decides neither");
  }

  @Test
  void fileKnowsTheDocumentNotItsPictures() {
    only(
            "file",
            "fix",
            "text",
            "check",
            "reason",
            "pour",
            "takeoff",
            "grade",
            "survey",
            "joint",
            "plan",
            "picture",
            "practice",
            "shape",
            "measure")
        .because("a file keeps what is known; it neither lays joints nor draws them");
  }

  @Test
  void proofKnowsNothingOfTheModel() {
    only("proof", "shape", "measure", "text")
        .because("it reads the paper as a finisher does; knowing the plan would be looking it up");
  }

  @Test
  void commandCallsTheApplicationOnly() {
    noClasses()
        .that(inPackages("command"))
        .should()
        .dependOnClassesThat(inPackages("layout", "sheet", "drawing", "proof", "practice"))
        .because("both front ends get the same answers because both ask app")
        .allowEmptyShould(true)
        .check(House.classes());
  }

  @Test
  void windowCallsTheApplicationOnly() {
    noClasses()
        .that(inPackages("designer"))
        .should()
        .dependOnClassesThat(inPackages("layout", "sheet", "proof", "command", "practice"))
        .because("both front ends get the same answers because both ask app")
        .allowEmptyShould(true)
        .check(House.classes());
  }

  @Test
  void readyShapesKnowNoDesk() {
    noClasses()
        .that(inPackages("designer.ready"))
        .should()
        .dependOnClassesThat(
            inPackages(
                "app",
                "designer.state",
                "designer.sketch",
                "designer.shaping",
                "designer.hand",
                "designer.facts",
                "designer.canvas",
                "designer.pane"))
        .because("a shape of some sizes is the same wherever and however it is set down")
        .check(House.classes());
  }

  @Test
  void shapingKnowsNoHandAndNoWords() {
    noClasses()
        .that(inPackages("designer.shaping"))
        .should()
        .dependOnClassesThat(
            inPackages(
                "designer.hand", "designer.facts", "designer.canvas", "designer.pane", "text"))
        .because("dragging, typing and menus change a shape by the same step")
        .check(House.classes());
  }

  @Test
  void nothingBelowTheFrontEndsKnowsThem() {
    noClasses()
        .that(resideInAPackage(ROOT + ".."))
        .and(describe("are no front end", c -> !inPackages("command", "designer").test(c)))
        .and(describe("are not the start", c -> !c.getPackageName().equals(ROOT)))
        .should()
        .dependOnClassesThat(inPackages("command", "designer"))
        .because("the way of the data leads to the front ends, never back")
        .check(House.classes());
  }

  @Test
  void packagesKnowEachOtherOneWayOnly() {
    slices()
        .matching(ROOT + ".(*)..")
        .should()
        .beFreeOfCycles()
        .because("two packages that know each other are one package that is too big")
        .check(House.classes());
  }

  @Test
  void partsOfAPackageKnowEachOtherOneWayOnly() {
    slices()
        .matching(ROOT + ".(**)")
        .should()
        .beFreeOfCycles()
        .because("a part is named for what it knows; knowing each other, they know the same")
        .check(House.classes());
  }

  private record Border(String owner, DescribedPredicate<JavaClass> allowed) {
    /** Checks the border; the reason is printed when it is broken. */
    void because(String reason) {
      noClasses()
          .that(inPackages(owner))
          .should()
          .dependOnClassesThat(resideInAPackage(ROOT + "..").and(DescribedPredicate.not(allowed)))
          .because(reason)
          .allowEmptyShould(true)
          .check(House.classes());
    }
  }

  private static String baseName(JavaClass c) {
    return c.getPackageName().equals(ROOT + ".plan") ? c.getSimpleName() : "";
  }

  private static Border only(String owner, String... others) {
    return rule(
        owner,
        inPackages(Stream.concat(Stream.of(owner), Arrays.stream(others)).toArray(String[]::new)));
  }

  private static Border rule(String owner, DescribedPredicate<JavaClass> allowed) {
    return new Border(owner, allowed);
  }

  private static DescribedPredicate<JavaClass> inPackages(String... names) {
    return resideInAnyPackage(
        Arrays.stream(names).map(n -> ROOT + "." + n + "..").toArray(String[]::new));
  }
}
