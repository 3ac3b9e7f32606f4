package peakproof.fact;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A session as small as a test of the rule pipeline needs it. */
public record Outing(
    LocalDate date,
    double minutes,
    @Nullable Double effort,
    Phase phase,
    boolean wet,
    @Nullable Boolean guided,
    @Nullable String place,
    Set<String> kit,
    @Nullable Meet towards)
    implements Fact {
  @Override
  public List<Where> where() {
    return List.of(new Where("/plan/weeks/0", date, null));
  }
}
