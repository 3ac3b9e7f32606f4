package peakproof.intake;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.document.Plan;
import peakproof.document.PlanDay;
import peakproof.document.Positions;
import peakproof.document.YamlValue;

/** Writes sessions into the days of a plan that have none; weeks that are not there are begun. */
public final class PlanSheet {
  private static final List<String> WEEKDAYS =
      List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");
  private static final String STARTS = "starts";

  private final Map<LocalDate, String> taken = new HashMap<>();
  private YamlValue.Keys content;

  /**
   * @param content what the plan's file says
   * @param positions of the plan as it was read
   */
  public PlanSheet(Plan plan, YamlValue content, Positions positions) {
    this.content = (YamlValue.Keys) content;
    plan.weeks()
        .forEach(
            week -> week.days().forEach((day, its) -> take(week.starts(), day, its, positions)));
  }

  private void take(LocalDate monday, DayOfWeek day, PlanDay written, Positions positions) {
    LocalDate date = monday.plusDays(day.getValue() - 1L);
    if (written.rest() || !written.sessions().isEmpty()) {
      taken.put(
          date,
          (written.rest() ? "the plan says rest, " : "the plan has this day, ")
              + positions.of(written.at()));
    }
  }

  /** What the plan says with all that was added. */
  public YamlValue.Keys content() {
    return content;
  }

  /** Adds the sessions of one file. */
  public List<Decision> add(List<Incoming> sessions) {
    List<Decision> decisions = new ArrayList<>();
    Map<LocalDate, String> now = new HashMap<>();
    Set<Object> rows = new HashSet<>();
    for (Incoming session : sessions) {
      String why = taken.get(session.date());
      if (why == null && !rows.add(List.of(session.date(), session.keys()))) {
        why = "the same as a row above";
      }
      if (why != null) {
        decisions.add(Decision.skipped(session, why));
      } else {
        write(session);
        now.putIfAbsent(session.date(), "filled from " + session.from());
        decisions.add(Decision.of(session));
      }
    }
    taken.putAll(now);
    return decisions;
  }

  private void write(Incoming session) {
    YamlValue.Keys plan = keys(content.get("plan"));
    YamlValue.Items weeks =
        plan.get("weeks") instanceof YamlValue.Items items ? items : YamlValue.items(List.of());
    LocalDate monday = session.date().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    int index = index(weeks, monday);
    boolean there = index < weeks.items().size() && monday.equals(starts(weeks.items().get(index)));
    YamlValue.Keys week =
        there
            ? keys(weeks.items().get(index))
            : YamlValue.Keys.NONE.with(STARTS, monday.toString());
    YamlValue.Keys filled = filled(week, session);
    content =
        content.with(
            "plan",
            plan.with("weeks", there ? weeks.replacing(index, filled) : weeks.with(index, filled)));
  }

  /** Where a week is, or else where it belongs. */
  private static int index(YamlValue.Items weeks, LocalDate monday) {
    for (int i = 0; i < weeks.items().size(); i++) {
      if (monday.equals(starts(weeks.items().get(i)))) {
        return i;
      }
    }
    for (int i = 0; i < weeks.items().size(); i++) {
      if (starts(weeks.items().get(i)).isAfter(monday)) {
        return i;
      }
    }
    return weeks.items().size();
  }

  private static LocalDate starts(YamlValue week) {
    return LocalDate.parse(
        keys(week).get(STARTS) instanceof YamlValue.Text text ? text.text().strip() : "");
  }

  private static YamlValue.Keys keys(@Nullable YamlValue value) {
    return value instanceof YamlValue.Keys keys ? keys : YamlValue.Keys.NONE;
  }

  private static YamlValue.Keys filled(YamlValue.Keys week, Incoming session) {
    String key = week.get("like") == null ? "days" : "but";
    YamlValue.Keys days = keys(week.get(key));
    String day = session.date().getDayOfWeek().name().substring(0, 3).toLowerCase(Locale.ROOT);
    YamlValue.Items its =
        days.get(day) instanceof YamlValue.Items items ? items : YamlValue.items(List.of());
    YamlValue.Items more = its.with(its.items().size(), session.keys());
    return week.with(key, days.inOrder(day, more, Comparator.comparing(WEEKDAYS::indexOf)));
  }
}
