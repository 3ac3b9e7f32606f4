package peakproof.audit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import peakproof.document.Dossier;

/**
 * The plans of an earlier day, to compare audits with. A plan is known again by athlete and race,
 * so that it may move; but a second plan for the same athlete is a plan of its own, whose findings
 * are new. Any thread may ask.
 */
public final class Baseline {
  private final List<Earlier> earlier;
  private final Present present;
  private final Set<Earlier> claimed = ConcurrentHashMap.newKeySet();

  /** Begins a comparison with these plans. */
  public Baseline(List<Earlier> earlier, Present present) {
    this.earlier = earlier.stream().sorted(Comparator.comparing(Earlier::plan)).toList();
    this.present = present;
  }

  /** Whose way to which race a plan is. */
  public record Who(String athlete, LocalDate race) {
    /** Of a plan that was read. */
    public static Who of(Dossier dossier) {
      return new Who(dossier.plan().athlete().name(), dossier.plan().event().date());
    }
  }

  /** A plan of an earlier day. */
  public interface Earlier {
    /** Its path then. */
    String plan();

    /** Whose it was. */
    Who who();

    /**
     * What was found then, judged as of the same day as now where that can still be done.
     *
     * @param now the audit of the same plan now; null when it is no more
     */
    List<Gone> findings(@Nullable Audit now);
  }

  /** The plans as they lie there now. */
  public interface Present {
    /** True when a file lies at the path. */
    boolean exists(String plan);

    /** Whose plan lies at the path; null when none that can be read. */
    @Nullable Who who(String plan);

    /** True when the path is among those the user named. */
    boolean asked(String plan);
  }

  /** An earlier plan that is no more, with what was found in it. */
  public record Left(String plan, Who who, List<Gone> findings) {}

  /** What is new, known and gone in an audit. */
  public Comparison compare(Audit audit) {
    Earlier its = partner(audit.plan(), new Who(audit.athlete(), audit.raceDate()));
    if (its == null) {
      return Comparison.of(audit, List.of());
    }
    claimed.add(its);
    return Comparison.of(audit, its.findings(audit));
  }

  private @Nullable Earlier partner(String plan, Who who) {
    List<Earlier> same = earlier.stream().filter(one -> one.who().equals(who)).toList();
    return same.stream()
        .filter(one -> one.plan().equals(plan))
        .findFirst()
        .orElseGet(
            () ->
                same.stream()
                    .filter(one -> !who.equals(present.who(one.plan())))
                    .findFirst()
                    .orElse(null));
  }

  /** Once all audits are compared: the plans asked for that nothing took the place of. */
  public List<Left> left() {
    List<Left> left = new ArrayList<>();
    for (Earlier one : earlier) {
      if (!claimed.contains(one) && present.asked(one.plan()) && isNoMore(one)) {
        List<Gone> findings = one.findings(null);
        if (!findings.isEmpty()) {
          left.add(new Left(one.plan(), one.who(), findings));
        }
      }
    }
    return left;
  }

  /** A plan that cannot be read any more is not gone. */
  private boolean isNoMore(Earlier one) {
    Who now = present.who(one.plan());
    return now == null ? !present.exists(one.plan()) : !now.equals(one.who());
  }

  /** What an audit found, as something to compare with. */
  public static List<Gone> findings(Audit audit) {
    return audit.findings().stream().map(finding -> Gone.of(finding, audit)).toList();
  }
}
