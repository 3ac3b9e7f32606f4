package peakproof.audit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import peakproof.document.Plan;
import peakproof.document.PlanWeek;
import peakproof.fact.Facts;
import peakproof.fact.Words;

/** What an audit says once about a plan, beside its findings. */
final class Footer {
  private Footer() {}

  /** {@code 3 peak + 2 taper weeks}. */
  static String shape(Facts facts) {
    Double peak = facts.block().peakWeeks();
    Double taper = facts.block().taperWeeks();
    if (peak == null && taper == null) {
      return "phases not written";
    }
    String parts =
        Stream.of(part(peak, "peak"), part(taper, "taper"))
            .filter(part -> !part.isEmpty())
            .collect(Collectors.joining(" + "));
    return parts + (Double.valueOf(1).equals(taper) ? " week" : " weeks");
  }

  private static String part(@Nullable Double weeks, String word) {
    return weeks == null ? "" : Words.number(weeks) + " " + word;
  }

  /** Lists of declarations the plan leaves out, which are read as "none declared". */
  static List<String> notDeclared(Plan plan) {
    List<String> absent = new ArrayList<>();
    add(absent, "injuries", plan.athlete().health().injuries().isEmpty());
    add(absent, "medicines", plan.raceDay() == null || plan.raceDay().medicines().isEmpty());
    add(absent, "changes", plan.changes().isEmpty());
    add(absent, "first-use", plan.raceDay() == null || plan.raceDay().firstUse().isEmpty());
    add(absent, "aims", plan.aims().isEmpty());
    return absent;
  }

  private static void add(List<String> absent, String word, boolean empty) {
    if (empty) {
      absent.add(word);
    }
  }

  /** What is said once of each condition the athlete declares. */
  static List<String> cautions(Plan plan, Map<String, String> cautions) {
    List<String> said = new ArrayList<>();
    for (String condition : new TreeSet<>(plan.athlete().health().conditions())) {
      String caution = cautions.get(condition);
      if (caution != null) {
        said.add("care, " + condition + ": " + caution);
      }
    }
    return said;
  }

  /** Declared gaps and absences of the weeks to come, which take rules out of judgement. */
  static List<String> gaps(Plan plan, LocalDate asOf) {
    List<String> gaps = new ArrayList<>();
    for (PlanWeek week : plan.weeks()) {
      if (week.starts().plusDays(6).isBefore(asOf)) {
        continue;
      }
      String label = "week of " + Words.day(week.starts());
      week.without()
          .forEach(
              (sport, because) ->
                  gaps.add(label + ": no " + sport + " (" + because + "), not judged for it"));
      if (week.away() != null) {
        gaps.add(label + ": away (" + week.away() + "), not judged by rules of single weeks");
      }
    }
    return gaps;
  }
}
