package peakproof.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Minutes in each intensity domain; null where a part that belongs there has unknown minutes.
 * Passive rest is in none of them.
 *
 * @param unclassified minutes whose domain cannot be told; all of strength work
 */
public record DomainMinutes(
    @Nullable Double moderate,
    @Nullable Double heavy,
    @Nullable Double severe,
    @Nullable Double unclassified) {

  static DomainMinutes of(List<Piece.Work> work) {
    return new DomainMinutes(
        in(Domain.MODERATE, work), in(Domain.HEAVY, work), in(Domain.SEVERE, work), in(null, work));
  }

  /** All of a session in one domain, as a log gives it; null for a domain that cannot be told. */
  public static DomainMinutes whole(@Nullable Domain domain, @Nullable Double minutes) {
    Double none = 0.0;
    Double all = minutes == null ? null : Amount.finite(minutes);
    return new DomainMinutes(
        domain == Domain.MODERATE ? all : none,
        domain == Domain.HEAVY ? all : none,
        domain == Domain.SEVERE ? all : none,
        domain == null ? all : none);
  }

  /** The minutes of a domain. */
  public @Nullable Double in(Domain domain) {
    return switch (domain) {
      case MODERATE -> moderate;
      case HEAVY -> heavy;
      case SEVERE -> severe;
    };
  }

  /** Both together. */
  public DomainMinutes plus(DomainMinutes other) {
    return new DomainMinutes(
        sum(moderate, other.moderate),
        sum(heavy, other.heavy),
        sum(severe, other.severe),
        sum(unclassified, other.unclassified));
  }

  /** The hardest domain held for at least so many minutes; null when none is. */
  public @Nullable Domain hardestHeld(double least) {
    for (Domain domain : List.of(Domain.SEVERE, Domain.HEAVY, Domain.MODERATE)) {
      Double minutes = in(domain);
      if (minutes != null && !Limit.below(minutes, least)) {
        return domain;
      }
    }
    return null;
  }

  /** Whether at least so many minutes are severe; null when what is unclassified could decide. */
  @Nullable Boolean severeFor(double least) {
    if (severe != null && !Limit.below(severe, least)) {
      return true;
    }
    Double most = sum(severe, unclassified);
    return (most == null || !Limit.below(most, least)) ? null : false;
  }

  private static @Nullable Double in(@Nullable Domain domain, List<Piece.Work> work) {
    return SetPieces.minutes(
        work.stream().filter(each -> each.intensity().domain() == domain).toList());
  }

  private static @Nullable Double sum(@Nullable Double one, @Nullable Double other) {
    return one == null || other == null ? null : Amount.finite(one + other);
  }
}
