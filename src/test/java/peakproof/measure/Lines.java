package peakproof.measure;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import peakproof.document.Effort;
import peakproof.document.SetLine;
import peakproof.document.Target;

/** Set lines put together by hand, so that these tests need no reader. */
public final class Lines {
  private Lines() {}

  public static SetLine line(SetLine.Part... parts) {
    return new SetLine("", List.of(parts));
  }

  public static SetLine.Work metres(double metres) {
    return new SetLine.Distance(metres);
  }

  public static SetLine.Work minutes(double minutes) {
    return new SetLine.Time(60 * minutes);
  }

  public static SetLine.Work group(SetLine.Part... parts) {
    return new SetLine.Group(List.of(parts));
  }

  public static SetLine.Part part(SetLine.Work work, @Nullable Effort effort) {
    return part(1, work, effort, null, null);
  }

  public static SetLine.Part at(SetLine.Work work, Target target) {
    return part(1, work, null, target, null);
  }

  public static SetLine.Part part(
      int count,
      SetLine.Work work,
      @Nullable Effort effort,
      @Nullable Target target,
      SetLine.@Nullable Rest rest) {
    return new SetLine.Part(count, work, effort, target, Set.of(), rest);
  }

  public static SetLine.Rest rest(double seconds) {
    return new SetLine.After(seconds);
  }

  public static SetLine.Rest off(double seconds) {
    return new SetLine.SendOff(seconds);
  }
}
