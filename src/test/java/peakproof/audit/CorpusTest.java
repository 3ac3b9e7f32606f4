package peakproof.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import peakproof.Golden;
import peakproof.document.Documents;
import peakproof.document.Dossier;
import peakproof.document.Reading;
import peakproof.rule.Case;
import peakproof.rule.Corpus;
import peakproof.rule.Resolution;
import peakproof.rule.Severity;

/**
 * Sound plans of several athletes, each with one fault at a time: the rule that is about it must be
 * among the first things a coach reads. Plans that only look odd must be let pass.
 */
class CorpusTest {
  private static final int FIRST = 3;
  private static Auditor auditor;
  private static List<Judged> sound;
  private static List<Judged> faults;
  private static List<Judged> fine;

  /** An entry of the corpus with what was found in it, and why it could not be judged or "". */
  private record Judged(Corpus.Entry entry, List<Finding> findings, String unread) {}

  @BeforeAll
  static void judge() {
    auditor = Shipped.auditor();
    Corpus corpus = Corpus.read();
    sound = judged(corpus.sound().stream());
    faults = judged(corpus.faults().parallelStream());
    fine = judged(corpus.fine().parallelStream());
  }

  @Test
  void allCanBeRead() {
    assertThat(
            Stream.of(sound, faults, fine)
                .flatMap(List::stream)
                .map(Judged::unread)
                .filter(why -> !why.isEmpty()))
        .isEmpty();
  }

  @Test
  void soundPlansMayGoOut() {
    assertThat(above(Severity.ASK, sound)).isEmpty();
  }

  @Test
  void oddButFinePlansGiveNothingAboveANote() {
    assertThat(above(Severity.NOTE, fine)).isEmpty();
    assertThat(fine).hasSizeGreaterThanOrEqualTo(30);
  }

  @Test
  void everyFaultIsAmongTheFirstFindings() {
    assertThat(faults.stream().flatMap(CorpusTest::wrong)).isEmpty();
  }

  @Test
  void twoFaultsAtOnceAreBothFound() {
    List<Judged> pairs = judged(Corpus.read().pairs().parallelStream());
    assertThat(pairs).hasSizeGreaterThanOrEqualTo(20);
    assertThat(pairs.stream().flatMap(pair -> notFound(pair).map(why -> said(pair, why))))
        .isEmpty();
  }

  @Test
  void everyRuleHasAFault() {
    Set<String> without = new TreeSet<>(auditor.rules().cards().keySet());
    faults.forEach(fault -> without.removeAll(fault.entry.named()));
    assertThat(without).isEmpty();
  }

  @Test
  void namesOnlyRulesThatAreThere() {
    Set<String> unknown = new TreeSet<>();
    Stream.concat(Corpus.read().faults().stream(), Corpus.read().fine().stream())
        .forEach(entry -> unknown.addAll(entry.tried().finds().keySet()));
    unknown.removeAll(auditor.rules().cards().keySet());
    assertThat(unknown).isEmpty();
  }

  @Test
  void findsWhatItFoundBefore() {
    Map<String, List<String>> found = new TreeMap<>();
    Stream.of(sound, faults, fine)
        .flatMap(List::stream)
        .forEach(
            judged ->
                judged.findings.forEach(
                    finding ->
                        found
                            .computeIfAbsent(
                                finding.rule() + " " + finding.severity(), key -> new ArrayList<>())
                            .add(judged.entry.name())));
    StringBuilder text = new StringBuilder();
    found.forEach(
        (rule, names) -> {
          text.append(rule).append(' ').append(names.size()).append('\n');
          names.forEach(name -> text.append("  ").append(name).append('\n'));
        });
    Golden.assertMatches("corpus/findings.txt", text.toString());
  }

  private static List<Judged> judged(Stream<Corpus.Entry> entries) {
    return entries.map(CorpusTest::judged).toList();
  }

  private static Judged judged(Corpus.Entry entry) {
    Case tried = entry.tried();
    Reading reading =
        Documents.read("rules/base/plan.yaml", tried.plan(), tried.event(), tried.log(), null);
    Dossier dossier = reading.dossier();
    if (dossier == null) {
      return new Judged(entry, List.of(), entry.name() + ": " + reading.faults());
    }
    Resolution resolved =
        entry.named().isEmpty()
            ? Resolution.of(auditor.rules(), dossier)
            : Resolution.trying(tried.rule(), auditor.rules(), dossier);
    Auditor.Outcome outcome = auditor.audit(dossier, resolved, tried.asOf());
    return outcome instanceof Auditor.Outcome.Judged judged
        ? new Judged(entry, judged.audit().findings(), "")
        : new Judged(entry, List.of(), entry.name() + ": " + outcome);
  }

  private static List<String> above(Severity severity, List<Judged> plans) {
    return plans.stream()
        .flatMap(
            plan ->
                plan.findings.stream()
                    .filter(finding -> !severity.atLeast(finding.severity()))
                    .map(finding -> plan.entry.name() + ": " + said(finding)))
        .toList();
  }

  /** What is not as the entry says: rules not found, too far down, or below something unrelated. */
  private static Stream<String> wrong(Judged fault) {
    Stream<String> unrelated =
        fault.findings.stream()
            .filter(finding -> finding.severity() == Severity.HOLD && unasked(fault, finding))
            .map(finding -> "unrelated: " + said(finding));
    return Stream.of(notFound(fault), tooFarDown(fault), unrelated)
        .flatMap(wrong -> wrong)
        .map(why -> said(fault, why));
  }

  private static Stream<String> notFound(Judged fault) {
    return fault.entry.tried().finds().entrySet().stream()
        .filter(
            asked ->
                fault.findings.stream()
                    .noneMatch(
                        finding ->
                            finding.rule().equals(asked.getKey())
                                && finding.severity() == asked.getValue()))
        .map(asked -> "no " + asked.getKey() + " " + asked.getValue());
  }

  private static Stream<String> tooFarDown(Judged fault) {
    return fault.entry.named().stream()
        .flatMap(
            rule -> {
              List<Finding> before =
                  fault.findings.stream().takeWhile(found -> !found.rule().equals(rule)).toList();
              Stream<String> depth =
                  before.size() < FIRST
                      ? Stream.of()
                      : Stream.of(rule + " is not among the first " + FIRST);
              return Stream.concat(
                  depth,
                  before.stream()
                      .filter(finding -> unasked(fault, finding))
                      .map(finding -> "above " + rule + ": " + said(finding)));
            });
  }

  private static boolean unasked(Judged fault, Finding finding) {
    return !fault.entry.tried().finds().containsKey(finding.rule());
  }

  private static String said(Judged fault, String why) {
    return fault.entry.name()
        + ": "
        + why
        + " | found "
        + fault.findings.stream()
            .map(finding -> finding.rule() + " " + finding.severity())
            .collect(Collectors.joining(", "));
  }

  private static String said(Finding finding) {
    return finding.rule() + " " + finding.severity() + " (" + finding.why() + ")";
  }
}
