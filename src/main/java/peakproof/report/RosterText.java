package peakproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import peakproof.rule.Severity;

/** A roster in lines of text: what the squad has in common, then a line an athlete. */
public final class RosterText {
  /** Narrower than this, what stands in columns stands in lines. */
  private static final int TABLE = 84;

  private static final int MARGIN = 5;

  private final Roster roster;
  private final boolean all;
  private final int width;
  private final Ink ink;
  private final List<String> lines = new ArrayList<>();

  private RosterText(Roster roster, boolean all, int width, Ink ink) {
    this.roster = roster;
    this.all = all;
    this.width = width;
    this.ink = ink;
  }

  /**
   * The roster in lines no wider than {@code width}.
   *
   * @param all everything the squad has in common, with a message for each
   */
  public static String of(Roster roster, boolean all, int width, Ink ink) {
    if (roster.lines().isEmpty()) {
      return "";
    }
    RosterText text = new RosterText(roster, all, width, ink);
    text.heading();
    text.inCommon();
    text.athletes();
    text.footer();
    return String.join("\n", text.lines) + "\n";
  }

  private void heading() {
    add(0, Lines.dotted(RosterWords.heading(roster)));
    lines.set(0, ink.bold(lines.get(0)));
    add(2, Summary.nameless(roster.ranks(), roster.plans()));
    String since = RosterWords.since(roster);
    if (since != null) {
      add(2, since);
    }
    lines.add("");
  }

  private void inCommon() {
    List<Shared> shared = roster.shared();
    List<Shared> shown = all ? shared : roster.sharedFirst();
    if (!shown.isEmpty()) {
      lines.add(ink.bold("In common"));
      shown.forEach(this::add);
    }
    int hidden = shared.size() - shown.size();
    if (hidden > 0) {
      lines.add(" ".repeat(MARGIN) + hidden + " more in common: --all");
    }
    if (shared.isEmpty()) {
      add(MARGIN, "In common: nothing that three athletes and a tenth of the squad share.");
    }
    lines.add("");
  }

  private void add(Shared shared) {
    String rule = shared.rule();
    String first = word(shared.severity()) + " ";
    String what = shared.title() + Lines.bound(" (" + shared.share() + ")");
    List<String> told = Lines.wrapped("", 0, what, width - MARGIN);
    int gap = width - MARGIN - Lines.length(told.get(told.size() - 1)) - rule.length();
    for (int i = 0; i < told.size(); i++) {
      boolean beside = i == told.size() - 1 && gap >= 2;
      lines.add(
          (i == 0 ? first : " ".repeat(MARGIN))
              + told.get(i)
              + (beside ? " ".repeat(gap) + rule : ""));
    }
    if (gap < 2) {
      lines.add(" ".repeat(Math.max(MARGIN, width - rule.length())) + rule);
    }
    String message = shared.message();
    if (message != null) {
      lines.addAll(Lines.wrapped("     to the squad: ", MARGIN + 2, message, width));
    }
  }

  private void athletes() {
    boolean table = width >= TABLE;
    RosterTable columns = new RosterTable(width);
    if (table) {
      lines.addAll(columns.head().stream().map(ink::bold).toList());
    }
    for (RosterLine line : roster.lines()) {
      Severity worst = line.rank().heaviest();
      String word = worst == null ? "    " : word(worst);
      if (table) {
        List<String> cells = columns.of(line);
        lines.add(word + cells.get(0));
        cells.stream().skip(1).forEach(rest -> lines.add("    " + rest));
      } else {
        lines.addAll(stacked(line, word));
      }
      changes(line);
    }
    lines.add("");
  }

  private List<String> stacked(RosterLine line, String word) {
    String days = Heading.daysToGo(line.daysToGo());
    List<String> told =
        new ArrayList<>(
            Lines.wrapped(
                " ".repeat(MARGIN),
                MARGIN,
                Lines.dotted(List.of(line.athlete(), Lines.bound(days))),
                width));
    told.set(0, word + " " + told.get(0).substring(MARGIN));
    told.addAll(Lines.wrapped(" ".repeat(MARGIN), MARGIN, RosterWords.first(line), width));
    List<String> rest = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      if (line.found(severity) > 0) {
        rest.add(line.found(severity) + " " + severity.name().toLowerCase(Locale.ROOT));
      }
    }
    rest.add(line.logEnds() == null ? "no log" : "log to " + RosterWords.logEnds(line));
    if (!RosterWords.next(line).isEmpty()) {
      rest.add("next: " + RosterWords.next(line));
    }
    told.addAll(
        Lines.wrapped(
            " ".repeat(MARGIN),
            MARGIN,
            Lines.dotted(rest.stream().map(Lines::bound).toList()),
            width));
    return told;
  }

  private void changes(RosterLine line) {
    SinceDay since = line.since();
    if (since == null) {
      return;
    }
    if (!since.compared()) {
      lines.addAll(
          Lines.wrapped(
              " ".repeat(MARGIN),
              MARGIN + 2,
              "not compared: " + RosterWords.notCompared(line),
              width));
    }
    changed("new", since.added());
    changed("heavier", since.heavier());
    changed("gone", since.gone());
  }

  private void changed(String what, List<Headline> headlines) {
    if (!headlines.isEmpty()) {
      String told =
          headlines.stream()
              .map(one -> one.title() + Lines.bound(" (" + one.severity() + ")"))
              .collect(Collectors.joining("; "));
      lines.addAll(Lines.wrapped(" ".repeat(MARGIN) + what + ": ", MARGIN + 2, told, width));
    }
  }

  private void footer() {
    List<String> missing = roster.notAudited();
    if (!missing.isEmpty()) {
      add(2, "not audited: " + String.join(", ", missing));
    }
    add(0, "Not medical advice; race rules, local law and licensed practitioners come first.");
  }

  private String word(Severity severity) {
    String word = String.format(Locale.ROOT, "%-4s", severity.name());
    return severity == Severity.HOLD ? ink.alarm(word) : ink.bold(word);
  }

  private void add(int indent, String text) {
    lines.addAll(Lines.wrapped("", indent, text, width));
  }
}
