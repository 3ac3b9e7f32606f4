package peakproof.audit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Plan.Accepted;
import peakproof.document.Positions;
import peakproof.fact.Where;
import peakproof.rule.Card;
import peakproof.rule.Severity;

/** What the coach has seen and lives with, by the plan's {@code accepted} entries. */
final class Acceptance {
  private static final String EXPIRED = " was accepted until ";
  private static final String TOO_LITTLE = " is a HOLD: accepting it needs `by` and `until`";
  private static final String UNMATCHED = " is accepted, but there is nothing left to accept";

  private final List<Accepted> entries;
  private final LocalDate asOf;
  private final Positions positions;
  private final Set<Accepted> used = new LinkedHashSet<>();
  private final List<String> remarks = new ArrayList<>();

  Acceptance(List<Accepted> entries, LocalDate asOf, Positions positions) {
    this.entries = entries;
    this.asOf = asOf;
    this.positions = positions;
  }

  /** The entry that accepts a report of a rule, or null. */
  @Nullable Accepted of(Card card, Severity severity, List<Where> where) {
    for (Accepted entry : entries) {
      boolean named = entry.rule().equals(card.rule()) || card.was().contains(entry.rule());
      if (named && covers(entry, where)) {
        used.add(entry);
        if (counts(entry, severity)) {
          return entry;
        }
      }
    }
    return null;
  }

  private static boolean covers(Accepted entry, List<Where> where) {
    if (entry.week() == null && entry.day() == null) {
      return true;
    }
    return where.stream()
        .anyMatch(
            place -> {
              LocalDate date = place.date();
              LocalDate week = place.week() == null ? monday(date) : place.week();
              return entry.day() == null
                  ? Objects.equals(entry.week(), week)
                  : entry.day().equals(date);
            });
  }

  private static @Nullable LocalDate monday(@Nullable LocalDate date) {
    return date == null ? null : date.minusDays(date.getDayOfWeek().getValue() - 1L);
  }

  private boolean counts(Accepted entry, Severity severity) {
    if (entry.until() != null && entry.until().isBefore(asOf)) {
      remark(entry, EXPIRED + entry.until() + " and is back");
      return false;
    }
    if (severity == Severity.HOLD && (entry.by() == null || entry.until() == null)) {
      remark(entry, TOO_LITTLE);
      return false;
    }
    return true;
  }

  private void remark(Accepted entry, String what) {
    String text = positions.of(entry.at()) + ": " + entry.rule() + what;
    if (!remarks.contains(text)) {
      remarks.add(text);
    }
  }

  /** What is to be said of the entries: expired, not enough for a HOLD, matching nothing. */
  List<String> remarks() {
    for (Accepted entry : entries) {
      if (!used.contains(entry)) {
        remark(entry, UNMATCHED);
      }
    }
    return remarks;
  }

  /** True for a remark on an entry whose rule is none of these. */
  static boolean isRemark(String remark, Set<String> rules) {
    return Stream.of(EXPIRED, TOO_LITTLE, UNMATCHED).anyMatch(remark::contains)
        && rules.stream().noneMatch(rule -> remark.contains(" " + rule + " "));
  }
}
