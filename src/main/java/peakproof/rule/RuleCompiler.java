package peakproof.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import peakproof.document.Fault;

/**
 * From rule files to a rule base: read, vet, hold against facts and card, build, load. A file with
 * a fault is left out and never spoils another.
 */
final class RuleCompiler {
  /** A rule's file. */
  record Source(String slug, String theme, RuleText text) {}

  /**
   * What came of the files.
   *
   * @param classes those of the sound rules
   * @param rules what each rule without a fault of its own reports and reads, by slug
   */
  record Compiled(
      VettedClasses classes, Map<String, RuleTyping.Result> rules, List<Fault> faults) {}

  private final Supplier<FactTypes> facts;
  private final List<Fault> faults = new ArrayList<>();
  private final Map<String, Source> sources = new TreeMap<>();
  private final Map<String, Engine.Parsed> parsed = new TreeMap<>();
  private final Map<String, RuleTyping.Result> results = new TreeMap<>();
  private final Set<String> ofHealth = new TreeSet<>();

  private RuleCompiler(Supplier<FactTypes> facts) {
    this.facts = facts;
  }

  /**
   * Compiles the files that have a card, sound or not, so that faults of both come together; the
   * card of each other is somebody else's fault.
   */
  static Compiled compile(
      List<Source> sources, Map<String, Card> cards, Supplier<FactTypes> facts) {
    RuleCompiler compiler = new RuleCompiler(facts);
    for (Source source : sources) {
      Card card = cards.get(source.slug());
      compiler.read(source, card);
    }
    return compiler.build();
  }

  private void read(Source source, @Nullable Card card) {
    List<Fault> before = source.text().faults();
    faults.addAll(before);
    if (!before.isEmpty()) {
      return;
    }
    RuleFaults own = new RuleFaults(source.text());
    try {
      Engine.Parsed file = Engine.parse(source.text().text());
      Vetting.check(source.text(), source.slug(), source.theme(), file.shape(), own);
      if (card != null && file.shape().rules().size() == 1) {
        RuleShape.Rule rule = file.shape().rules().get(0);
        RuleTyping.Result result =
            RuleTyping.check(facts.get(), new References(card, facts.get()), rule, own);
        if (own.all().isEmpty()) {
          sources.put(source.slug(), source);
          parsed.put(source.slug(), file);
          results.put(source.slug(), result);
          if (HealthRules.isOne(card, source.text().text())) {
            ofHealth.add(source.slug());
          }
        }
      }
    } catch (Engine.Unreadable e) {
      SyntaxTrouble.tell(e, source, own);
    }
    faults.addAll(own.all());
  }

  private Compiled build() {
    VettedClasses vetted = new VettedClasses(Once.of(() -> AllowedMembers.of(facts.get())));
    Engine.Built all =
        parsed.isEmpty() ? null : Engine.build(parsed, facts.get().wordLists().values());
    for (Source source : sources.values()) {
      Engine.Built built = all == null ? one(source) : all;
      if (built == null) {
        refuse(source, SyntaxTrouble.unbuilt(source));
        continue;
      }
      List<String> refusals = vetted.add(source.slug(), built, ofHealth.contains(source.slug()));
      if (!refusals.isEmpty()) {
        refuse(source, SyntaxTrouble.refused(source, refusals.get(0)));
      }
    }
    return new Compiled(vetted, results, faults);
  }

  private void refuse(Source source, Fault fault) {
    results.remove(source.slug());
    faults.add(fault);
  }

  /** Builds one rule alone, from a fresh reading: the engine may have changed the first. */
  private Engine.@Nullable Built one(Source source) {
    try {
      Engine.Parsed file = Engine.parse(source.text().text());
      return Engine.build(Map.of(source.slug(), file), facts.get().wordLists().values());
    } catch (Engine.Unreadable e) {
      throw new IllegalStateException(e);
    }
  }
}
