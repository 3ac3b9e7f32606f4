package peakproof.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import peakproof.document.Fault;
import peakproof.rule.Corpus;

/**
 * Sound plans spoiled at random, thousands of them: whatever stands in a dossier, it is judged or
 * refused in words, the same way every time. The numbers drawn are the same in every run.
 */
class MutationsTest {
  private static final int PLANS = 2_000;
  private static final int SAMPLE = 40;
  private static final long SEED = 20_270_704;

  private static List<PliableDossier> sound;
  private static List<Said> asTheyAre;
  private static List<Spoiled> spoiled;

  /**
   * A spoiled plan and what came of it.
   *
   * @param name the plan and what was done to it
   * @param broke what went wrong with the program, or ""
   */
  private record Spoiled(String name, PliableDossier dossier, Said said, String broke) {}

  /** What an audit says: the outcome of each rule, or why the plan was refused. */
  private record Said(Map<String, String> outcomes, List<Fault> refused) {}

  @BeforeAll
  static void spoil() {
    List<Corpus.Entry> entries = Corpus.read().sound();
    sound = entries.stream().map(entry -> PliableDossier.of(entry.tried())).toList();
    asTheyAre = sound.stream().map(plan -> said(plan.judged())).toList();
    spoiled = IntStream.range(0, PLANS).parallel().mapToObj(MutationsTest::spoiled).toList();
  }

  private static Spoiled spoiled(int number) {
    Random random = new Random(SEED + number);
    PliableDossier dossier = sound.get(number % sound.size()).copy();
    List<Mutation> done = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(3); i++) {
      Mutation mutation = Mutation.pick(List.of(Mutation.values()), random);
      done.add(mutation);
      mutation.apply(dossier, random);
    }
    String name = number + " " + done;
    try {
      return new Spoiled(name, dossier, said(dossier.judged()), "");
    } catch (RuntimeException | StackOverflowError e) {
      return new Spoiled(name, dossier, new Said(Map.of(), List.of()), name + ": " + e);
    }
  }

  @Test
  void nothingBreaksTheProgram() {
    assertThat(spoiled.stream().map(Spoiled::broke).filter(broke -> !broke.isEmpty())).isEmpty();
  }

  @Test
  void everyPlanIsRefusedInWordsOrJudgedByEveryRule() {
    Set<String> rules = Shipped.auditor().rules().cards().keySet();
    assertThat(spoiled)
        .allMatch(
            plan ->
                plan.said.refused.isEmpty()
                    ? plan.said.outcomes.keySet().equals(rules)
                    : plan.said.outcomes.isEmpty());
  }

  /** Else the rest of this class would say little. */
  @Test
  void mostPlansAreJudgedAndMostOfTheseHaveFindings() {
    List<Said> judged =
        spoiled.stream().map(Spoiled::said).filter(said -> said.refused.isEmpty()).toList();
    assertThat(judged).hasSizeGreaterThan(PLANS * 2 / 3);
    assertThat(judged.stream().filter(said -> said.outcomes.toString().contains("found")))
        .hasSizeGreaterThan(judged.size() / 2);
  }

  @Test
  void theSamePlanGetsTheSameAuditToTheLetter() {
    assertThat(sample().filter(plan -> !plan.dossier.judged().equals(plan.dossier.judged())))
        .isEmpty();
  }

  @Test
  void theSameContentWrittenInAnotherWayGetsTheSameOutcomes() {
    assertThat(
            sample()
                .filter(plan -> plan.said.refused.isEmpty())
                .filter(plan -> !said(plan.dossier.judgedRewritten()).equals(plan.said))
                .map(Spoiled::name))
        .isEmpty();
  }

  @Test
  void everyRuleIsFoundInSomePlan() {
    Set<String> never = new TreeSet<>(Shipped.auditor().rules().cards().keySet());
    Corpus.read().faults().forEach(fault -> never.removeAll(fault.named()));
    spoiled.forEach(
        plan ->
            plan.said.outcomes.forEach(
                (rule, outcome) -> {
                  if (outcome.startsWith("found")) {
                    never.remove(rule);
                  }
                }));
    assertThat(never).isEmpty();
  }

  private static Stream<Spoiled> sample() {
    return IntStream.range(0, PLANS / SAMPLE).mapToObj(i -> spoiled.get(i * SAMPLE + i % SAMPLE));
  }

  private static Said said(Auditor.Outcome outcome) {
    if (outcome instanceof Auditor.Outcome.Judged judged) {
      return new Said(RuleOutcomes.of(judged.audit()), List.of());
    }
    if (outcome instanceof Auditor.Outcome.Wrong wrong && !wrong.faults().isEmpty()) {
      return new Said(Map.of(), wrong.faults());
    }
    throw new IllegalStateException("neither judged nor refused: " + outcome);
  }
}
