package peakproof.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
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
  private static final int MEDDLED = 20;
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
  private record Said(Map<String, String> outcomes, List<Fault> refused) {
    /** The rules that found something. */
    Set<String> found() {
      Set<String> found = new TreeSet<>(outcomes.keySet());
      found.removeIf(rule -> !outcomes.getOrDefault(rule, "").startsWith("found"));
      return found;
    }
  }

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
    while (done.isEmpty() || random.nextInt(3) > 0) {
      done.add(Mutation.pick(List.of(Mutation.values()), random));
    }
    done.sort(Comparator.naturalOrder());
    done.forEach(mutation -> mutation.apply(dossier, random));
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
    Set<String> rules = asTheyAre.get(0).outcomes.keySet();
    assertThat(rules).hasSizeGreaterThan(100);
    assertThat(
            spoiled.stream()
                .filter(plan -> plan.broke.isEmpty() && plan.said.refused.isEmpty())
                .filter(plan -> !plan.said.outcomes.keySet().equals(rules))
                .map(Spoiled::name))
        .isEmpty();
  }

  /** Else the rest of this class would say little. */
  @Test
  void mostPlansAreJudgedAndManyOfTheseHaveFindings() {
    long judged = spoiled.stream().filter(plan -> plan.said.refused.isEmpty()).count();
    long found = spoiled.stream().filter(plan -> !plan.said.found().isEmpty()).count();
    assertThat(judged).isGreaterThan(PLANS / 2);
    assertThat(found).isGreaterThan(judged / 3);
    Set<String> reached = new TreeSet<>();
    spoiled.forEach(plan -> reached.addAll(plan.said.found()));
    assertThat(reached).hasSizeGreaterThan(50);
  }

  @Test
  void theSamePlanGetsTheSameAuditToTheLetter() {
    assertThat(
            sample()
                .filter(plan -> !told(plan.dossier.judged()).equals(told(plan.dossier.judged())))
                .map(Spoiled::name))
        .isEmpty();
  }

  /** Without what may be drawn behind an audit, which is worked out only when it is asked for. */
  private static Object told(Auditor.Outcome outcome) {
    return outcome instanceof Auditor.Outcome.Judged judged
        ? List.of(judged.audit(), judged.complete())
        : outcome;
  }

  @Test
  void theSameContentWrittenInAnotherWayGetsTheSameOutcomes() {
    assertThat(
            sample()
                .filter(plan -> plan.said.refused.isEmpty())
                .map(
                    plan ->
                        plan.name
                            + different(plan.said.outcomes, said(plan.dossier.judgedRewritten())))
                .filter(text -> text.contains("instead of")))
        .isEmpty();
  }

  @Test
  void aRuleStaysAsItIsWhateverHappensElsewhere() {
    assertThat(
            IntStream.range(0, MEDDLED * Meddling.values().length)
                .parallel()
                .mapToObj(MutationsTest::meddled)
                .filter(text -> text.contains("instead of")))
        .isEmpty();
  }

  private static String meddled(int number) {
    Meddling meddling = Meddling.values()[number % Meddling.values().length];
    int plan = number / Meddling.values().length % sound.size();
    PliableDossier dossier = sound.get(plan).copy();
    meddling.with(dossier, new Random(SEED - number));
    Said now = said(dossier.judged());
    Map<String, String> before = new TreeMap<>(asTheyAre.get(plan).outcomes);
    before.keySet().removeIf(rule -> meddling.mayConcern(rule) || !now.refused.isEmpty());
    return number + " " + meddling + different(before, now);
  }

  @Test
  void everyRuleIsFoundInSomePlan() {
    Set<String> never = new TreeSet<>(Shipped.auditor().rules().cards().keySet());
    Corpus.read().faults().forEach(fault -> never.removeAll(fault.named()));
    spoiled.forEach(plan -> never.removeAll(plan.said.found()));
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

  /** The rules whose outcome is not the same, with both. */
  private static String different(Map<String, String> before, Said now) {
    StringBuilder text = new StringBuilder();
    before.forEach(
        (rule, outcome) -> {
          String is = String.valueOf(now.outcomes.get(rule));
          if (!is.equals(outcome)) {
            text.append("\n  ").append(rule).append(": ").append(is);
            text.append(" instead of ").append(outcome);
          }
        });
    return text.toString();
  }
}
