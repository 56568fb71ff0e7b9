package dev.fillplane;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Which package may use which, lowest first. */
class ArchitectureTest {

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("dev.fillplane");

  private static final Map<String, String> MAY_USE = new LinkedHashMap<>();

  static {
    MAY_USE.put("quantity", "");
    MAY_USE.put("finding", "quantity");
    MAY_USE.put("room", "quantity finding");
    MAY_USE.put("survey", "quantity finding");
    MAY_USE.put("surface", "quantity finding room survey");
    MAY_USE.put("target", "quantity finding room surface");
    MAY_USE.put("depth", "quantity finding room surface target");
    MAY_USE.put("material", "quantity finding");
    MAY_USE.put("heat", "quantity finding material");
    MAY_USE.put("supply", "quantity finding room depth material");
    MAY_USE.put("bay", "quantity finding room depth material");
    MAY_USE.put("screed", "quantity finding room depth bay");
    MAY_USE.put("pour", "quantity finding depth room material heat supply bay");
    MAY_USE.put("flatness", "quantity finding room survey surface depth material");
    MAY_USE.put("safety", "quantity finding room depth material heat supply pour");
    String below = String.join(" ", MAY_USE.keySet());
    MAY_USE.put("trace", "");
    MAY_USE.put("plan", below);
    MAY_USE.put("estimate", below + " plan");
    MAY_USE.put("render", below + " plan");
    MAY_USE.put("job", below + " plan estimate trace");
    MAY_USE.put("web", below + " plan estimate render trace job openapi");
    MAY_USE.put("app", below + " plan estimate render trace job web openapi client");
  }

  @Test
  void eachPackageUsesOnlyWhatItsRowNames() {
    Set<String> broken = new TreeSet<>();
    for (JavaClass type : CLASSES) {
      String from = subject(type);
      if (!MAY_USE.containsKey(from)) {
        continue;
      }
      Set<String> allowed = new TreeSet<>(Arrays.asList(MAY_USE.get(from).split(" ")));
      for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
        String to = subject(dependency.getTargetClass());
        if (!to.isEmpty() && !to.equals(from) && !allowed.contains(to)) {
          broken.add(from + " uses " + to + ": " + dependency.getDescription());
        }
      }
    }
    assertEquals(Set.of(), broken);
  }

  @Test
  void everyPackageHasItsRow() {
    Set<String> unknown = new TreeSet<>();
    for (JavaClass type : CLASSES) {
      unknown.add(subject(type));
    }
    unknown.removeAll(MAY_USE.keySet());
    unknown.removeAll(Set.of("openapi", "client"));
    assertEquals(Set.of(), unknown);
  }

  @Test
  void packagesDoNotGoRound() {
    slices().matching("dev.fillplane.(*)..").should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void onlyTheEdgeKnowsJsonAndHttp() {
    List<String> edge = List.of("job", "web", "app", "openapi", "client");
    List<String> foreign =
        List.of("com.fasterxml.jackson", "io.javalin", "jakarta.servlet", "org.eclipse.jetty");
    Set<String> broken = new TreeSet<>();
    for (JavaClass type : CLASSES) {
      if (edge.contains(subject(type))) {
        continue;
      }
      for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
        String target = dependency.getTargetClass().getPackageName();
        if (foreign.stream().anyMatch(target::startsWith)) {
          broken.add(dependency.getDescription());
        }
      }
    }
    assertEquals(Set.of(), broken);
  }

  /** The package below {@code dev.fillplane}, or nothing for a class from elsewhere. */
  private static String subject(JavaClass type) {
    String name = type.getPackageName();
    return name.startsWith("dev.fillplane.") ? name.split("\\.")[2] : "";
  }
}
