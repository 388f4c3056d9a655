package wallbook;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The few rules about who may know whom that keep the stages apart. */
@Order(4)
class StagesTest {
  private static final JavaClasses OURS =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("wallbook");

  private static final Path SOURCES = Path.of("src/main/java/wallbook");

  /** What each package may know beside itself, libraries apart. */
  private static final Map<String, Set<String>> KNOWS =
      Map.ofEntries(
          Map.entry("quantity", Set.of()),
          Map.entry("reference", Set.of()),
          Map.entry("picture", Set.of()),
          Map.entry("bundle", Set.of()),
          Map.entry("wording", Set.of("quantity")),
          Map.entry("finding", Set.of("wording")),
          Map.entry("record", Set.of("quantity", "finding", "picture")),
          Map.entry("geometry", Set.of("quantity", "record")),
          Map.entry("stock", Set.of("finding", "record", "reference", "wording")),
          Map.entry(
              "read",
              Set.of("finding", "picture", "quantity", "record", "reference", "stock", "wording")),
          Map.entry(
              "check",
              Set.of(
                  "finding", "geometry", "picture", "quantity", "record", "reference", "wording")),
          Map.entry("assess", Set.of("geometry", "quantity", "record", "reference", "wording")),
          Map.entry(
              "compose",
              Set.of(
                  "assess",
                  "finding",
                  "geometry",
                  "picture",
                  "quantity",
                  "record",
                  "reference",
                  "stock",
                  "wording")),
          Map.entry(
              "render",
              Set.of(
                  "assess",
                  "compose",
                  "finding",
                  "picture",
                  "quantity",
                  "reference",
                  "stock",
                  "wording")));

  private static final Pattern SAYS_ITS_UNIT =
      Pattern.compile(
          ".*(Db|Decibels|Mm|Metres|Pt|Hz|Megahertz|Ohms|Watts|Volts|Amperes|Newtons|Degrees"
              + "|Radians|Celsius|Kelvin|Nanoseconds|Factor|Ratio|Share|Fraction|PerCent"
              + "|At)$|(ratio|share|factor|fraction|decibels)");

  static Stream<Map.Entry<String, Set<String>>> packages() {
    return KNOWS.entrySet().stream();
  }

  @ParameterizedTest
  @MethodSource("packages")
  void aStageKnowsOnlyWhatLiesBeforeIt(Map.Entry<String, Set<String>> stage) {
    String[] allowed =
        Stream.concat(stage.getValue().stream(), Stream.of(stage.getKey()))
            .map(name -> "wallbook." + name + "..")
            .toArray(String[]::new);
    noClasses()
        .that()
        .resideInAPackage("wallbook." + stage.getKey() + "..")
        .should()
        .dependOnClassesThat(resideInAnyPackage("wallbook..").and(resideOutsideOfPackages(allowed)))
        .check(OURS);
  }

  @Test
  void everyPackageButTheCommandLineHasItsPlaceInTheOrder() {
    Set<String> there =
        OURS.stream()
            .map(c -> c.getPackageName().split("\\.")[1])
            .collect(Collectors.toCollection(TreeSet::new));
    there.remove("cli");
    assertEquals(new TreeSet<>(KNOWS.keySet()), there);
  }

  @Test
  void noPackagesKnowEachOther() {
    slices().matching("wallbook.(*)..").should().beFreeOfCycles().check(OURS);
  }

  @Test
  void pagesAreMadeInRenderOnly() {
    noClasses()
        .that()
        .resideOutsideOfPackage("wallbook.render..")
        .should()
        .dependOnClassesThat(
            resideInAnyPackage(
                "org.apache.pdfbox..", "org.jsoup..", "com.vladsch..", "freemarker.."))
        .check(OURS);
  }

  @Test
  void yamlIsReadInReadOnly() {
    noClasses()
        .that()
        .resideOutsideOfPackage("wallbook.read..")
        .should()
        .dependOnClassesThat(resideInAnyPackage("org.yaml.."))
        .check(OURS);
  }

  @Test
  void computationDoesNoInputOrOutput() {
    noClasses()
        .that()
        .resideInAPackage("wallbook.assess..")
        .should()
        .dependOnClassesThat(resideInAnyPackage("java.io..", "java.nio..", "java.net.."))
        .check(OURS);
    noClasses()
        .that()
        .resideInAPackage("wallbook.assess..")
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .check(OURS);
  }

  @Test
  void nothingOpensAConnection() {
    noClasses()
        .should()
        .dependOnClassesThat(resideInAnyPackage("java.net.http..", "javax.net.."))
        .orShould()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.net.Socket")
        .check(OURS);
  }

  /** A bare number must at least say its unit in the method's name. */
  @Test
  void whatComputationGivesHasAUnit() {
    methods()
        .that()
        .areDeclaredInClassesThat()
        .resideInAPackage("wallbook.assess..")
        .and()
        .arePublic()
        .and()
        .haveRawReturnType(double.class)
        .should(sayTheirUnit())
        .check(OURS);
  }

  private static ArchCondition<JavaMethod> sayTheirUnit() {
    return new ArchCondition<>("say their unit, where others can call them") {
      @Override
      public void check(JavaMethod method, ConditionEvents events) {
        boolean says = SAYS_ITS_UNIT.matcher(method.getName()).matches();
        if (isSeenOutside(method.getOwner()) && !says) {
          events.add(SimpleConditionEvent.violated(method, method.getFullName()));
        }
      }
    };
  }

  private static boolean isSeenOutside(JavaClass type) {
    return type.getModifiers().contains(JavaModifier.PUBLIC)
        && type.getEnclosingClass().map(StagesTest::isSeenOutside).orElse(true);
  }

  @Test
  void everyStageSaysWhatItTakesGivesAndDoesNotKnow() {
    List<String> silent =
        KNOWS.keySet().stream()
            .filter(name -> !Files.exists(SOURCES.resolve(name).resolve("package-info.java")))
            .toList();
    assertEquals(List.of(), silent);
  }
}
