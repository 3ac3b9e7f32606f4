package peakproof.document;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads the text beside a session's sport: a set line, or a bare duration or distance. */
final class WorkReader {
  /** No set line begins with a letter. */
  private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]*");

  private final Desk desk;
  private final boolean log;

  WorkReader(Desk desk, boolean log) {
    this.desk = desk;
    this.log = log;
  }

  /**
   * What a session consists of.
   *
   * @param seconds a log's bare duration
   * @param metres a log's bare distance
   * @param words free words after the duration of an {@code other} session
   */
  record Work(
      @Nullable SetLine set,
      @Nullable Double seconds,
      @Nullable Double metres,
      @Nullable String words) {}

  /** The work; null when it cannot be read. */
  @Nullable Work read(Fields fields, Sport sport) {
    Node node = fields.node(sport.word());
    Tree.Scalar scalar = node == null ? null : desk.scalar(node);
    if (scalar == null) {
      return null;
    }
    String text = scalar.text().strip();
    if (!sport.racing()) {
      return timed(scalar, sport, text);
    }
    if (log && Quantity.amount(text, sport, false) instanceof Quantity.Of<SetLine.Work> amount) {
      return bare(amount.value(), null);
    }
    if (!desk.sessions().isEmpty() && NAME.matcher(text).matches()) {
      scalar = named(scalar, text);
    }
    return scalar == null ? null : line(scalar, sport);
  }

  private Tree.@Nullable Scalar named(Tree.Scalar scalar, String name) {
    Tree.Scalar line = desk.sessions().get(name);
    if (line == null) {
      Set<String> known = desk.sessions().keySet();
      String near = Nearest.among(name, known);
      desk.fault(
          scalar.place(),
          "the house has no session '" + name + "'",
          "expected a set line, or one of: " + String.join(", ", known),
          near == null
              ? "write its set line, or name it in house.yaml"
              : "did you mean '" + near + "'?");
    }
    return line;
  }

  private @Nullable Work line(Tree.Scalar scalar, Sport sport) {
    SetLines.Outcome outcome = SetLines.parse(scalar.text(), sport);
    outcome
        .problems()
        .forEach(problem -> desk.faults().add(problem.why().at(scalar.at(problem.offset()))));
    return outcome.line() == null ? null : new Work(outcome.line(), null, null, null);
  }

  private @Nullable Work timed(Tree.Scalar scalar, Sport sport, String text) {
    String[] halves = text.split("\\s+", 2);
    Quantity<SetLine.Work> whole = Quantity.amount(text, sport, false);
    boolean worded = halves.length == 2 && !(whole instanceof Quantity.Of<SetLine.Work>);
    Quantity<SetLine.Work> amount = worded ? Quantity.amount(halves[0], sport, false) : whole;
    if (amount instanceof Quantity.NotThat<SetLine.Work> not) {
      desk.faults().add(not.at(scalar.place()));
      return null;
    }
    String words = worded ? halves[1] : null;
    if (words != null && sport == Sport.STRENGTH) {
      desk.fault(
          scalar.at(scalar.text().indexOf(words)),
          "'" + words + "' follows the duration",
          "expected the duration alone",
          "say it in 'load', 'for' or 'note'");
      return null;
    }
    SetLine.Work work = ((Quantity.Of<SetLine.Work>) amount).value();
    if (log) {
      return bare(work, words);
    }
    SetLine.Part part = new SetLine.Part(1, work, null, null, Set.of(), null);
    return new Work(new SetLine(text, List.of(part)), null, null, words);
  }

  private static Work bare(SetLine.Work work, @Nullable String words) {
    return new Work(
        null,
        work instanceof SetLine.Time time ? time.seconds() : null,
        work instanceof SetLine.Distance distance ? distance.metres() : null,
        words);
  }
}
