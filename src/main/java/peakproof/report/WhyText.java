package peakproof.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Explanation;
import peakproof.audit.Explanation.Verdict;
import peakproof.audit.Finding;
import peakproof.document.Place;
import peakproof.fact.Fact;
import peakproof.fact.Where;
import peakproof.fact.Words;
import peakproof.rule.Account;
import peakproof.rule.FactWords;
import peakproof.rule.RuleInForce;

/** Why a rule says what it says of a plan, line by line, for somebody who has to answer for it. */
public final class WhyText {
  private static final int MARGIN = 11;

  /** So begins the label of a week, which is named by its day anyway. */
  private static final String WEEK = "the week of ";

  /** More of the same teaches nobody anything. */
  private static final int MATCHES = 12;

  private final Explanation explanation;
  private final Audit audit;
  private final Places places;
  private final FactWords facts = FactWords.shipped();
  private final int width;
  private final Ink ink;
  private final List<String> lines = new ArrayList<>();

  private WhyText(Explanation explanation, int width, Ink ink) {
    this.explanation = explanation;
    this.audit = explanation.audit();
    this.places = new Places(audit);
    this.width = width;
    this.ink = ink;
  }

  /** What a rule asks, without any plan. */
  public static String of(RuleInForce standing, int width, Ink ink) {
    return String.join("\n", RuleSheet.brief(standing, width, ink)) + "\n";
  }

  /** What a rule asks and what it makes of a plan. */
  public static String of(Explanation explanation, int width, Ink ink) {
    WhyText text = new WhyText(explanation, width, ink);
    text.lines.addAll(RuleSheet.brief(explanation.standing(), width, ink));
    text.lines.add("");
    text.verdict();
    text.account();
    return String.join("\n", text.lines) + "\n";
  }

  private void verdict() {
    String plan =
        audit.athlete() + ", " + audit.plan() + ", as of " + Dates.full(audit.asOf()) + ": ";
    Verdict verdict = explanation.verdict();
    if (verdict instanceof Verdict.Clear) {
      head(plan, "clear", "it found nothing to say.");
    } else if (verdict instanceof Verdict.NotJudged unjudged) {
      head(plan, "not judged", "an entry is missing. This would settle it:");
      block("write", Words.missing(unjudged.missing()));
    } else if (verdict instanceof Verdict.NotFor other) {
      head(plan, "not for this plan", other.because());
    } else if (verdict instanceof Verdict.Silenced silenced) {
      head(plan, "silenced by the house", silenced.because());
    } else if (verdict instanceof Verdict.Found found) {
      found(plan, found);
    }
    if (!explanation.standing().on() && explanation.standing().silenced() == null) {
      block("", "The rule is off; this is what it would say if the house asked for it.");
    }
  }

  private void head(String plan, String outcome, String rest) {
    String sentence = plan + outcome + "; " + rest;
    boolean ends = sentence.endsWith(".") || sentence.endsWith(":");
    lines.addAll(Lines.wrapped("", 0, sentence + (ends ? "" : "."), width));
  }

  private void found(String plan, Verdict.Found found) {
    if (found.findings().isEmpty()) {
      head(plan, "accepted", "it found this, and the coach lives with it:");
    } else {
      head(plan, "found", "it says:");
    }
    found.findings().forEach(this::finding);
    for (Audit.AcceptedFinding accepted : found.accepted()) {
      finding(accepted.finding());
      block(
          "accepted",
          accepted.because()
              + (accepted.by() == null ? "" : ", by " + accepted.by())
              + (accepted.until() == null ? "" : ", until " + Dates.full(accepted.until())));
    }
  }

  private void finding(Finding finding) {
    block(finding.severity().name(), finding.title());
    block("", Lines.dotted(places.of(finding.where(), true)));
    block("why", finding.why());
    block("do", finding.remedy());
    block("care", finding.care());
  }

  private void account() {
    Account account = explanation.account();
    if (account == null || explanation.verdict() instanceof Verdict.NotFor) {
      return;
    }
    looks(account);
    if (!account.matches().isEmpty()) {
      lines.add("");
      lines.add(
          explanation.verdict() instanceof Verdict.NotJudged
              ? "So far, line by line"
              : "Line by line");
      account.matches().stream().limit(MATCHES).forEach(this::match);
      int more = account.matches().size() - MATCHES;
      if (more > 0) {
        lines.add("  and " + more + " more of the same");
      }
    } else if (account.nearest() != null) {
      lines.add("");
      lines.add(ink.bold("What came nearest"));
      match(account.nearest());
    }
    words(account);
  }

  /** What the words of the conditions mean, each once. */
  private void words(Account account) {
    Map<String, String> meanings = new LinkedHashMap<>();
    for (Account.Look look : account.looks()) {
      for (Account.Sieve sieve : look.of() == 0 ? List.<Account.Sieve>of() : look.sieves()) {
        for (String field : sieve.fields()) {
          String meaning = facts.meaning(look.type(), field);
          if (meaning != null) {
            String word = FactWords.plain(field) + " (" + facts.one(look.type()) + ")";
            meanings.putIfAbsent(word, meaning);
          }
        }
      }
    }
    if (!meanings.isEmpty()) {
      lines.add("");
      lines.add(ink.bold("What the words mean"));
    }
    meanings.forEach(
        (word, meaning) -> lines.addAll(Lines.wrapped("  ", 6, word + ": " + meaning, width)));
  }

  private void looks(Account account) {
    lines.add("");
    lines.add(ink.bold("What it looked at, and how many were left after each question"));
    for (Account.Look look : account.looks()) {
      String many = look.of() == 1 ? facts.one(look.type()) : facts.many(look.type());
      String count = look.of() == 0 ? "no" : String.valueOf(look.of());
      lines.add("  " + count + " " + many + (look.absent() ? ", of which none may be" : ""));
      if (look.of() == 0) {
        continue;
      }
      for (Account.Sieve sieve : look.sieves()) {
        String left = String.format(Locale.ROOT, "%8d  ", sieve.left());
        lines.addAll(Lines.wrapped(left, left.length(), sieve.condition(), width));
      }
    }
  }

  private void match(Account.Match match) {
    String mark = "  - ";
    for (Account.Seen seen : match.seen()) {
      lines.addAll(Lines.wrapped(mark, 4, named(seen), width));
      mark = "    ";
      seen.holds().forEach(this::condition);
      if (seen.fails() != null) {
        condition("but " + seen.fails());
      }
    }
  }

  private void condition(String words) {
    lines.addAll(Lines.wrapped("        ", 10, words, width));
  }

  /** {@code run 1h45 easy, Sun 13 Jun, plan.yaml:81}. */
  private String named(Account.Seen seen) {
    Fact fact = seen.fact();
    Where where = fact.where().get(0);
    Place place = explanation.positions().of(where.pointer());
    String when =
        where.date() != null
            ? Dates.day(where.date(), audit.raceDate()) + ", "
            : where.week() != null ? Dates.week(where.week(), audit.raceDate()) + ", " : "";
    String type = facts.one(seen.type());
    String label = seen.label();
    String named =
        label == null || label.startsWith(WEEK)
            ? type
            : label.startsWith(type + " ") ? label : type + " (" + label + ")";
    return named + ", " + when + places.line(place);
  }

  private void block(String label, @Nullable String text) {
    if (text != null && !text.isBlank()) {
      String first = String.format(Locale.ROOT, "%-" + MARGIN + "s", label);
      lines.addAll(Lines.wrapped(first, MARGIN, text, width));
    }
  }
}
