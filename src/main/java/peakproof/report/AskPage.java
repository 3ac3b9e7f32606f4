package peakproof.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Audit.NotJudged;
import peakproof.report.Questions.Question;
import peakproof.rule.Card;
import peakproof.rule.Ruleset;
import peakproof.rule.Severity;

/**
 * A message to an athlete that asks for what is missing, and below it what the coach does with the
 * answers. What would let most and heaviest rules judge comes first.
 */
public final class AskPage {
  private static final int TEXT_INDENT = 3;

  private final Audit audit;
  private final List<Asked> asked = new ArrayList<>();
  private final List<Asked> forCoach = new ArrayList<>();
  private final int hidden;
  private final StringBuilder page = new StringBuilder();

  /** A question, or an entry that nobody knows how to ask for, with the rules it would settle. */
  private record Asked(
      @Nullable Question question, TreeSet<String> entries, TreeSet<String> rules) {
    long holds(Set<String> canHold) {
      return rules.stream().filter(canHold::contains).count();
    }

    long fixes(Ruleset known) {
      return rules.stream()
          .map(known.cards()::get)
          .filter(card -> card != null && weighs(card))
          .count();
    }

    private static boolean weighs(Card card) {
      return card.severity().atLeast(Severity.FIX)
          || card.steps().stream().anyMatch(step -> step.severity().atLeast(Severity.FIX));
    }
  }

  private AskPage(Audit audit, Ruleset rules, int top) {
    this.audit = audit;
    Set<String> canHold = new TreeSet<>();
    Map<String, Asked> all = new LinkedHashMap<>();
    Questions questions = Questions.shipped();
    for (NotJudged rule : audit.notJudged()) {
      if (rule.canHold()) {
        canHold.add(rule.rule());
      }
      for (String missing : rule.missing()) {
        Question question = questions.of(missing);
        String name = question == null || question.forCoach() ? missing : question.ask();
        Asked its =
            all.computeIfAbsent(
                name, none -> new Asked(question, new TreeSet<>(), new TreeSet<>()));
        its.entries().add(missing);
        its.rules().add(rule.rule());
      }
    }
    Comparator<Asked> order =
        Comparator.<Asked>comparingLong(one -> -one.holds(canHold))
            .thenComparingLong(one -> -one.fixes(rules))
            .thenComparingInt(one -> -one.rules().size())
            .thenComparing(one -> one.entries().first());
    all.values().stream()
        .sorted(order)
        .forEach(one -> (isForAthlete(one) ? asked : forCoach).add(one));
    this.hidden = Math.max(0, asked.size() - top);
    if (hidden > 0) {
      asked.subList(top, asked.size()).clear();
    }
  }

  private static boolean isForAthlete(Asked one) {
    return one.question() != null && !one.question().forCoach();
  }

  /**
   * The message as text.
   *
   * @param top how many questions at most
   */
  public static String text(Audit audit, Ruleset rules, int top, int width) {
    AskPage page = new AskPage(audit, rules, top);
    page.write(
        text -> Printable.of(text),
        (mark, text) ->
            String.join("\n", Lines.wrapped(mark, mark.isEmpty() ? 0 : TEXT_INDENT, text, width)),
        "-".repeat(width) + "\nFor the coach");
    return page.page.toString();
  }

  /** The message in Markdown. */
  public static String markdown(Audit audit, Ruleset rules, int top) {
    AskPage page = new AskPage(audit, rules, top);
    page.write(Markdown::text, (mark, text) -> mark + text, "---\n\n## For the coach");
    return page.page.toString();
  }

  /** Lays a paragraph out behind its mark. */
  @FunctionalInterface
  private interface Paragraph {
    String of(String mark, String text);
  }

  private void write(UnaryOperator<String> words, Paragraph paragraph, String heading) {
    if (!asked.isEmpty()) {
      add(paragraph.of("", words.apply("Hello " + firstName() + ",")));
      add(
          paragraph.of(
              "",
              "before I send you the plan for "
                  + words.apply(audit.event())
                  + ", can you help me with "
                  + (asked.size() == 1 ? "one question" : asked.size() + " questions")
                  + "? A line is enough, and a rough answer is better than none."));
      for (int i = 0; i < asked.size(); i++) {
        Question question = Objects.requireNonNull(asked.get(i).question());
        String optional = question.optional() ? " (Only if you want to.)" : "";
        add(
            paragraph.of(
                (i + 1) + ". ",
                words.apply(
                    question.ask() + optional + " For example: " + question.example() + ".")));
      }
      add("Thank you!");
    }
    add(heading);
    coach(words, paragraph);
  }

  private void coach(UnaryOperator<String> words, Paragraph paragraph) {
    if (asked.isEmpty()) {
      add("Nothing to ask the athlete.");
    }
    for (int i = 0; i < asked.size(); i++) {
      Question question = Objects.requireNonNull(asked.get(i).question());
      String key = "answer " + (i + 1) + " goes to " + question.key() + settles(asked.get(i));
      String missing = String.join("; ", asked.get(i).entries());
      item(paragraph.of("-  ", words.apply(key + ": " + missing)));
    }
    if (hidden > 0) {
      item(
          paragraph.of(
              "-  ", (hidden == 1 ? "1 more question" : hidden + " more questions") + ": --all"));
    }
    for (Asked one : forCoach) {
      String what = one.entries().first();
      String how = one.question() == null ? "" : "; " + one.question().ask();
      item(paragraph.of("-  ", words.apply(what + settles(one) + how)));
    }
  }

  private static String settles(Asked one) {
    return " (" + one.rules().size() + (one.rules().size() == 1 ? " rule" : " rules") + ")";
  }

  private String firstName() {
    return audit.athlete().strip().split("\\s+", 2)[0];
  }

  private void add(String paragraph) {
    page.append(paragraph).append("\n\n");
  }

  private void item(String line) {
    page.append(line).append('\n');
  }
}
