package peakproof.rule;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import org.drools.compiler.builder.impl.KnowledgeBuilderConfigurationImpl;
import org.drools.compiler.compiler.io.memory.MemoryFileSystem;
import org.drools.compiler.lang.descr.CompositePackageDescr;
import org.drools.core.impl.RuleBaseFactory;
import org.drools.drl.ast.descr.AndDescr;
import org.drools.drl.ast.descr.BaseDescr;
import org.drools.drl.ast.descr.ConditionalElementDescr;
import org.drools.drl.ast.descr.ExistsDescr;
import org.drools.drl.ast.descr.ExprConstraintDescr;
import org.drools.drl.ast.descr.GlobalDescr;
import org.drools.drl.ast.descr.ImportDescr;
import org.drools.drl.ast.descr.NotDescr;
import org.drools.drl.ast.descr.PackageDescr;
import org.drools.drl.ast.descr.PatternDescr;
import org.drools.drl.ast.descr.QueryDescr;
import org.drools.drl.ast.descr.RuleDescr;
import org.drools.drl.parser.DrlParser;
import org.drools.drl.parser.DroolsError;
import org.drools.drl.parser.DroolsParserException;
import org.drools.drl.parser.ParserError;
import org.drools.model.Model;
import org.drools.model.codegen.execmodel.JavaParserCompiler;
import org.drools.model.codegen.execmodel.ModelBuilderImpl;
import org.drools.model.codegen.execmodel.ModelWriter;
import org.drools.model.codegen.execmodel.PackageSources;
import org.drools.modelcompiler.KieBaseBuilder;
import org.jspecify.annotations.Nullable;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.kie.api.io.Resource;
import org.kie.api.io.ResourceType;
import org.kie.internal.builder.KnowledgeBuilderFactory;
import org.kie.internal.builder.conf.LanguageLevelOption;
import org.kie.memorycompiler.CompilationResult;
import peakproof.fact.Findings;

/**
 * The one class that touches the engine's inside: from a rule's text to its shape, from vetted
 * rules to classes, from classes to a rule base. A new version of the engine is paid for here.
 */
final class Engine {
  /**
   * How the package of each rule begins, in which the engine puts the classes it makes of it. A
   * word comes before the rule's name, since that may be a keyword of Java.
   */
  private static final String GENERATED = "peakproof.rules.rule_";

  private final String text;
  private final List<RuleShape.Piece> strays = new ArrayList<>();

  private Engine(String text) {
    this.text = text;
  }

  /** A rule file as the engine read it; the shape is what the vetting judges. */
  static final class Parsed {
    private final PackageDescr descr;
    private final RuleShape shape;

    private Parsed(PackageDescr descr, RuleShape shape) {
      this.descr = descr;
      this.shape = shape;
    }

    RuleShape shape() {
      return shape;
    }
  }

  /** A file that cannot be read, with the engine's own words; line and column count from 1. */
  static final class Unreadable extends Exception {
    private static final long serialVersionUID = 1;
    final int line;
    final int column;

    private Unreadable(Throwable failure) {
      super(failure);
      line = 1;
      column = 1;
    }

    private Unreadable(DroolsError error) {
      super(String.valueOf(error.getMessage()));
      line = error instanceof ParserError place ? place.getRow() : 1;
      column = error instanceof ParserError place ? place.getCol() + 1 : 1;
    }
  }

  /**
   * The classes of some rules.
   *
   * @param models names of the classes that describe the rules to the engine
   */
  record Built(Map<String, byte[]> classes, List<String> models) {}

  static Parsed parse(String text) throws Unreadable {
    DrlParser parser = new DrlParser(LanguageLevelOption.DRL6);
    try {
      PackageDescr descr = parser.parse(false, text);
      if (parser.hasErrors()) {
        throw new Unreadable(parser.getErrors().get(0));
      }
      return new Parsed(descr, new Engine(text).shape(descr));
    } catch (DroolsParserException | RuntimeException | StackOverflowError e) {
      throw new Unreadable(e);
    }
  }

  private RuleShape shape(PackageDescr descr) {
    strays("a 'function'", descr.getFunctions());
    strays("an imported function", descr.getFunctionImports());
    strays("an imported accumulate function", descr.getAccumulateImports());
    strays("a 'global'", descr.getGlobals());
    strays("a declared type", descr.getTypeDeclarations());
    strays("a declared enum", descr.getEnumDeclarations());
    strays("a declared entry point", descr.getEntryPointDeclarations());
    strays("a declared window", descr.getWindowDeclarations());
    strays("an attribute", descr.getAttributes());
    strayIf(descr.getUnit() != null, "a 'unit'", descr);
    return new RuleShape(
        descr.getName(),
        descr.getImports().stream()
            .map(line -> new RuleShape.Piece(line.getTarget(), offset(line)))
            .toList(),
        strays,
        descr.getRules().stream().map(this::rule).toList());
  }

  private RuleShape.Rule rule(RuleDescr rule) {
    strayIf(rule instanceof QueryDescr, "a 'query'", rule);
    strayIf(rule.getParentName() != null, "'extends'", rule);
    strayIf(rule.getUnit() != null, "a 'unit'", rule);
    strayIf(!rule.getNamedConsequences().isEmpty(), "a second consequence", rule);
    strayIf(!rule.getAnnotationNames().isEmpty(), "an annotation", rule);
    rule.getAttributes()
        .forEach(
            (name, each) ->
                strays.add(
                    new RuleShape.Piece(
                        "the attribute '" + name + "'",
                        Math.max(0, text.lastIndexOf(name, offset(each))))));
    List<RuleShape.Condition> conditions = new ArrayList<>();
    if (rule.getLhs() != null) {
      rule.getLhs().getDescrs().forEach(each -> condition(each, conditions));
    }
    String consequence = String.valueOf(rule.getConsequence());
    int then = text.indexOf(consequence.strip(), RuleText.offset(text, rule.getConsequenceLine()));
    return new RuleShape.Rule(
        rule.getName(),
        offset(rule),
        conditions,
        new RuleShape.Piece(
            consequence, then >= 0 ? then : RuleText.offset(text, rule.getConsequenceLine())));
  }

  /** Exact classes only: a descendant may carry more than its parent shows. */
  private void condition(BaseDescr descr, List<RuleShape.Condition> conditions) {
    if (isPattern(descr)) {
      conditions.add(pattern((PatternDescr) descr));
    } else if (descr.getClass() == NotDescr.class || descr.getClass() == ExistsDescr.class) {
      List<RuleShape.Pattern> inner = new ArrayList<>();
      for (BaseDescr each : inside((ConditionalElementDescr) descr)) {
        if (isPattern(each)) {
          inner.add(pattern((PatternDescr) each));
        } else {
          strayIf(true, word(each) + " inside brackets", each);
        }
      }
      conditions.add(new RuleShape.Group(descr.getClass() == NotDescr.class, inner));
    } else {
      strayIf(true, word(descr) + " between facts", descr);
    }
  }

  /** A pattern without a type is a path through objects. */
  private static boolean isPattern(BaseDescr descr) {
    return descr.getClass() == PatternDescr.class && ((PatternDescr) descr).getObjectType() != null;
  }

  private static List<? extends BaseDescr> inside(ConditionalElementDescr group) {
    List<? extends BaseDescr> descrs = group.getDescrs();
    return descrs.size() == 1 && descrs.get(0).getClass() == AndDescr.class
        ? ((AndDescr) descrs.get(0)).getDescrs()
        : descrs;
  }

  private RuleShape.Pattern pattern(PatternDescr descr) {
    strayIf(descr.getSource() != null, "'from' or 'accumulate'", descr);
    strayIf(!descr.getBehaviors().isEmpty(), "a window over facts", descr);
    strayIf(!descr.getAnnotationNames().isEmpty(), "an annotation", descr);
    strayIf(descr.isUnification() || descr.isQuery(), "a unification or query", descr);
    List<RuleShape.Piece> constraints = new ArrayList<>();
    for (BaseDescr each : descr.getDescrs()) {
      if (each.getClass() == ExprConstraintDescr.class
          && ((ExprConstraintDescr) each).getType() == ExprConstraintDescr.Type.NAMED) {
        String expression = ((ExprConstraintDescr) each).getExpression();
        constraints.add(new RuleShape.Piece(expression, offset(each)));
      } else {
        strayIf(true, "a field by its position", each);
      }
    }
    return new RuleShape.Pattern(
        String.valueOf(descr.getObjectType()), descr.getIdentifier(), constraints, offset(descr));
  }

  private static String word(BaseDescr descr) {
    String name = descr.getClass().getSimpleName().replace("Descr", "");
    if (descr.getClass() == PatternDescr.class) {
      return "a path through objects";
    }
    return name.contains("Consequence") || name.contains("Branch")
        ? "a second consequence"
        : "'" + name.toLowerCase(java.util.Locale.ROOT) + "'";
  }

  private void strays(String name, Collection<? extends BaseDescr> found) {
    found.forEach(each -> strayIf(true, name, each));
  }

  private void strayIf(boolean found, String name, BaseDescr descr) {
    if (found) {
      strays.add(new RuleShape.Piece(name, offset(descr)));
    }
  }

  private int offset(BaseDescr descr) {
    return descr.getStartCharacter() >= 0
        ? descr.getStartCharacter()
        : RuleText.offset(text, descr.getLine());
  }

  /**
   * Makes classes of vetted rules; each gets a package of its own, so that one rule's mistake
   * cannot show in another. Null when the engine cannot, for which it has an exception as often as
   * an error; in its words, which speak of files nobody wrote, there is nothing for a coach.
   *
   * @param rules by slug
   * @param words the lists of words whose constants a rule may name
   */
  static @Nullable Built build(Map<String, Parsed> rules, Collection<Class<?>> words) {
    try {
      return compile(model(rules, words));
    } catch (RuntimeException | StackOverflowError e) {
      return null;
    }
  }

  private static @Nullable Collection<PackageSources> model(
      Map<String, Parsed> rules, Collection<Class<?>> words) {
    ModelBuilderImpl<PackageSources> builder =
        new ModelBuilderImpl<>(
            PackageSources::dumpSources,
            KnowledgeBuilderFactory.newKnowledgeBuilderConfiguration(
                    new Properties(), Engine.class.getClassLoader())
                .as(KnowledgeBuilderConfigurationImpl.KEY),
            KieServices.get().newReleaseId("peakproof", "rules", "1"),
            false);
    List<CompositePackageDescr> packages = new ArrayList<>();
    rules.forEach((slug, parsed) -> packages.add(complete(slug, parsed.descr, words)));
    builder.buildPackages(packages);
    return builder.hasErrors() ? null : builder.getPackageSources();
  }

  private static CompositePackageDescr complete(
      String slug, PackageDescr descr, Collection<Class<?>> words) {
    descr.setName(packageOf(slug));
    descr.addGlobal(new GlobalDescr("findings", Findings.class.getName()));
    words.forEach(list -> descr.addImport(new ImportDescr(list.getName())));
    Resource resource =
        KieServices.get()
            .getResources()
            .newByteArrayResource(slug.getBytes(StandardCharsets.UTF_8))
            .setSourcePath(slug + ".drl")
            .setResourceType(ResourceType.DRL);
    return new CompositePackageDescr(resource, descr);
  }

  private static @Nullable Built compile(@Nullable Collection<PackageSources> packages) {
    if (packages == null) {
      return null;
    }
    MemoryFileSystem sources = new MemoryFileSystem();
    MemoryFileSystem compiled = new MemoryFileSystem();
    ModelWriter.Result model = new ModelWriter().writeModel(sources, packages);
    String[] files = model.getSourceFiles().toArray(String[]::new);
    CompilationResult result =
        JavaParserCompiler.getCompiler()
            .compile(files, sources, compiled, Engine.class.getClassLoader());
    if (result.getErrors().length > 0) {
      return null;
    }
    Map<String, byte[]> classes = new TreeMap<>();
    compiled.getMap().forEach((path, bytes) -> classes.put(path.asClassName(), bytes));
    return new Built(classes, model.getModelFiles());
  }

  /** Makes the rule base of classes built before. */
  static KieBase load(VettedClasses vetted) {
    ClassLoader loader = new GeneratedClasses(vetted);
    List<Model> instances = new ArrayList<>();
    try {
      for (String model : vetted.models()) {
        instances.add((Model) loader.loadClass(model).getDeclaredConstructor().newInstance());
      }
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
    return KieBaseBuilder.createKieBaseFromModel(
        instances, RuleBaseFactory.newKnowledgeBaseConfiguration(new Properties(), loader));
  }

  /** The package of a rule's classes. */
  static String packageOf(String slug) {
    return GENERATED + slug.replace('-', '_');
  }

  /** The rule whose class it is; null for any other class. */
  static @Nullable String ruleOf(String className) {
    if (!className.startsWith(GENERATED)) {
      return null;
    }
    String rest = className.substring(GENERATED.length());
    int end = rest.indexOf('.');
    return (end < 0 ? rest : rest.substring(0, end)).replace('_', '-');
  }
}
