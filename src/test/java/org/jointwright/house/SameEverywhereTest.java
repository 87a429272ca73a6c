package org.jointwright.house;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;
import static org.jointwright.house.House.ROOT;

import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The same plan gives the same bytes on every machine, on every day, in every country. */
class SameEverywhereTest {
  private static final Set<String> CLOCKS =
      Set.of(
          "java.time.LocalDate",
          "java.time.LocalTime",
          "java.time.LocalDateTime",
          "java.time.ZonedDateTime",
          "java.time.OffsetDateTime",
          "java.time.Instant",
          "java.time.Year");

  private static final Set<String> NEED_A_LOCALE =
      Set.of(
          "java.lang.String.format(java.lang.String, [Ljava.lang.Object;)",
          "java.lang.String.formatted([Ljava.lang.Object;)",
          "java.lang.String.toUpperCase()",
          "java.lang.String.toLowerCase()",
          "java.io.PrintStream.printf(java.lang.String, [Ljava.lang.Object;)",
          "java.io.PrintStream.format(java.lang.String, [Ljava.lang.Object;)",
          "java.io.PrintWriter.printf(java.lang.String, [Ljava.lang.Object;)",
          "java.io.PrintWriter.format(java.lang.String, [Ljava.lang.Object;)",
          "java.util.Formatter.<init>()",
          "java.text.MessageFormat.<init>(java.lang.String)",
          "java.text.MessageFormat.format(java.lang.String, [Ljava.lang.Object;)",
          "java.text.DecimalFormat.<init>(java.lang.String)",
          "java.text.SimpleDateFormat.<init>(java.lang.String)",
          "java.text.NumberFormat.getInstance()",
          "java.text.NumberFormat.getNumberInstance()",
          "java.text.NumberFormat.getIntegerInstance()",
          "java.text.Collator.getInstance()");

  @Test
  void noClockAndNoChanceBelowTheApplication() {
    noClasses()
        .that(
            describe("are below app", c -> !inAny(c, "app", "command", "designer") && !isStart(c)))
        .should()
        .callCodeUnitWhere(describe("asks a clock or chance", SameEverywhereTest::isClockOrChance))
        .because("a layout that hangs on the hour or on luck cannot be trusted twice")
        .check(House.classes());
  }

  @Test
  void onlyTheCommandLineWritesToTheStandardStreams() {
    noClasses()
        .that(describe("are outside command", c -> !inAny(c, "command") && !isStart(c)))
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .orShould()
        .callMethodWhere(describe("print a trace", c -> c.getName().equals("printStackTrace")))
        .because("standard output belongs to what was asked for, standard error to clear messages")
        .check(House.classes());
  }

  @Test
  void everyFormatNamesItsLocale() {
    noClasses()
        .should()
        .callCodeUnitWhere(
            describe(
                "formats in the machine's language", c -> NEED_A_LOCALE.contains(signature(c))))
        .because("a comma for a point in an SVG or a plan file breaks it")
        .check(House.classes());
  }

  @Test
  void noMachinePathStandsInTheSources() {
    List<String> found =
        House.files(House.MAIN, ".java").stream()
            .filter(
                f -> House.text(f).matches("(?s).*\"(/home/|/tmp/|/root/|/work/|[A-Z]:\\\\\\\\).*"))
            .map(Object::toString)
            .toList();
    assertThat(found).as("the program must not know the machine it was written on").isEmpty();
  }

  private static boolean isClockOrChance(JavaCall<?> call) {
    String owner = call.getTargetOwner().getFullName();
    String name = call.getName();
    return (CLOCKS.contains(owner) && name.equals("now"))
        || owner.equals("java.util.UUID") && name.equals("randomUUID")
        || owner.equals("java.lang.Math") && name.equals("random")
        || owner.equals("java.lang.System") && name.matches("currentTimeMillis|nanoTime")
        || owner.equals("java.time.Clock") && name.startsWith("system")
        || owner.equals("java.util.Date") && signature(call).endsWith("<init>()")
        || owner.equals("java.util.Random") && signature(call).endsWith("<init>()")
        || owner.equals("java.util.concurrent.ThreadLocalRandom")
        || owner.equals("java.security.SecureRandom");
  }

  private static String signature(JavaCall<?> call) {
    return call.getTarget().getFullName();
  }

  private static boolean isStart(JavaClass c) {
    return c.getPackageName().equals(ROOT);
  }

  private static boolean inAny(JavaClass c, String... packages) {
    for (String p : packages) {
      String whole = ROOT + "." + p;
      if (c.getPackageName().equals(whole) || c.getPackageName().startsWith(whole + ".")) {
        return true;
      }
    }
    return false;
  }
}
