package peakproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The brief as CommonMark with tables. Every text is escaped, whoever wrote it. */
public final class BriefMarkdown {
  private static final Pattern SPECIAL = Pattern.compile("[\\\\`*_\\[\\]<>#|~&]");
  private static final Pattern LINK = Pattern.compile("(?i)(://|www\\.)");
  private static final Pattern BEGINNING = Pattern.compile("^([-+=]|(?<=^)\\d{1,9}(?=[.)]))");

  private final List<String> lines = new ArrayList<>();

  private BriefMarkdown() {}

  /** The whole brief; lines end in a line feed. */
  public static String of(Brief brief) {
    BriefMarkdown page = new BriefMarkdown();
    page.write(brief);
    return String.join("\n", page.lines) + "\n";
  }

  private void write(Brief brief) {
    Brief.Race race = brief.race();
    heading("#", brief.athlete() + ": the way to " + race.name());
    String start = race.startWords();
    paragraph(
        "**"
            + escaped(Dates.full(race.date()))
            + "**"
            + (start == null ? "" : ", start " + escaped(start)));
    bullets(race.facts());
    goals(brief.goals());
    for (Brief.Week week : brief.weeks()) {
      heading("##", week.title());
      week.days().forEach(this::day);
    }
    String open = brief.open();
    if (open != null) {
      paragraph(escaped(open));
    }
    section(
        "What to rehearse, and when",
        brief.rehearsals().stream().map(each -> each.what() + ": " + each.when()).toList());
    section("Eating and drinking in the race", brief.fuelling());
    section("Race week", brief.raceWeek());
    card(brief.card());
    section("Take care", brief.cautions());
    paragraph("Plan as of " + escaped(Dates.full(brief.asOf())) + ".");
    lines.remove(lines.size() - 1);
  }

  private void goals(List<Brief.Goal> goals) {
    if (goals.isEmpty()) {
      return;
    }
    heading("##", "Goals");
    lines.add("| leg | length | goal | hold |");
    lines.add("|---|---|---|---|");
    for (Brief.Goal goal : goals) {
      row(goal.leg(), goal.length(), goal.time(), goal.hold());
    }
    lines.add("");
  }

  private void card(RaceCard card) {
    heading("##", "Race-day card");
    lines.add("| | goal | at the latest |");
    lines.add("|---|---|---|");
    card.rows().forEach(row -> row(row.what(), row.goal(), row.latest()));
    lines.add("");
    bullets(card.notes());
  }

  private void row(@Nullable String... cells) {
    StringBuilder row = new StringBuilder("|");
    for (String cell : cells) {
      row.append(' ').append(cell == null ? "" : escaped(cell)).append(" |");
    }
    lines.add(row.toString());
  }

  private void day(Brief.Day day) {
    heading("###", day.title());
    bullets(day.warnings());
    if (day.raceDay()) {
      paragraph("Race day: see the card below.");
    } else if (day.sessions().isEmpty()) {
      paragraph("Rest.");
    }
    for (Brief.Session session : day.sessions()) {
      paragraph("**" + escaped(session.heading()) + "**");
      for (Brief.Leg leg : session.legs()) {
        if (!leg.title().isEmpty()) {
          paragraph(escaped(leg.title()));
        }
        steps("", leg.steps());
        bullets(leg.details());
      }
    }
  }

  private void steps(String indent, List<Brief.Step> steps) {
    for (Brief.Step step : steps) {
      lines.add(indent + "- " + begun(step.words()));
      steps(indent + "  ", step.rounds());
    }
  }

  private void section(String title, List<String> items) {
    if (!items.isEmpty()) {
      heading("##", title);
      bullets(items);
    }
  }

  private void bullets(List<String> items) {
    items.forEach(item -> lines.add("- " + begun(item)));
    if (!lines.get(lines.size() - 1).isEmpty()) {
      lines.add("");
    }
  }

  private void heading(String level, String text) {
    lines.add(level + " " + escaped(text));
    lines.add("");
  }

  private void paragraph(String text) {
    lines.add(text);
    lines.add("");
  }

  /** Escaped, also at the beginning of a block, where more characters have a meaning. */
  private static String begun(String text) {
    return BEGINNING
        .matcher(escaped(text))
        .replaceFirst(
            found ->
                found.group().matches("\\d+") ? found.group() + "\\\\" : "\\\\" + found.group());
  }

  private static String escaped(String text) {
    String marked = SPECIAL.matcher(text.strip()).replaceAll("\\\\$0");
    return LINK.matcher(marked)
        .replaceAll(
            found ->
                found.group().startsWith(":")
                    ? "\\\\://"
                    : found.group(1).substring(0, 3) + "\\\\.");
  }
}
