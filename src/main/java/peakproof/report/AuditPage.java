package peakproof.report;

import java.util.List;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Audit;
import peakproof.audit.Background;
import peakproof.audit.Finding;

/**
 * The page of one audit, part by part.
 *
 * @param heading the files, and whatever to beware of
 * @param taper null without a taper, and where too little is known to draw it
 */
record AuditPage(
    Frame frame,
    String athlete,
    String race,
    List<String> heading,
    List<FindingCard> findings,
    List<String> themes,
    BlockPart block,
    HoursChart hours,
    LoadChart load,
    @Nullable TaperChart taper,
    GoalPart goal,
    LedgerPart ledger,
    MorningPart mornings,
    OpenPart open,
    DecidedPart decided) {
  private static final int WHOLE_AT_ONCE = 3;

  /** Lays an audit out. */
  static String of(Judged judged) {
    return Html.of("audit", page(judged));
  }

  private static AuditPage page(Judged judged) {
    Audit audit = judged.audit();
    Background background = judged.background().get();
    Report report = Report.of(judged, new Choice(true, 0));
    Report usual = Report.of(judged, new Choice(false, WHOLE_AT_ONCE));
    Pins pins = new Pins(report, background.sheet());
    return new AuditPage(
        Frame.of(
                audit.athlete() + " · " + audit.event(),
                "This page holds health entries. It is for the coach, not for passing on.")
            .with("audit.js"),
        audit.athlete(),
        Heading.race(audit),
        Heading.below(report, new Places(audit)),
        FindingCard.all(report, usual, pins),
        audit.findings().stream().map(Finding::theme).distinct().sorted().toList(),
        BlockPart.of(background.sheet(), pins, audit.raceDate(), audit.asOf()),
        HoursChart.of(background.sheet()),
        LoadChart.of(background.sheet()),
        TaperChart.of(background),
        GoalPart.of(background.forecast()),
        LedgerPart.of(background.rehearsed()),
        MorningPart.of(background.log(), audit.asOf(), audit.raceDate()),
        OpenPart.of(report),
        DecidedPart.of(report));
  }
}
