package peakproof.cli;

import java.time.DateTimeException;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import peakproof.audit.Auditor;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** From which day a plan is looked at, and by whose numbers. */
final class DayOptions {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(
      names = "--as-of",
      paramLabel = "DATE|today",
      description =
          "The day that splits what was done from what is planned."
              + " Default: the last day of the log, else the day before the plan.")
  private @Nullable String asOf;

  @Mixin private HouseOption house = new HouseOption();

  /** True when the user names a day. */
  boolean saysDay() {
    return asOf != null;
  }

  /** What the user chose, or a usage fault. */
  Auditor.Options chosen(Surroundings surroundings) {
    return new Auditor.Options(date(surroundings), house.named());
  }

  private @Nullable LocalDate date(Surroundings surroundings) {
    return "today".equals(asOf)
        ? LocalDate.now(surroundings.clock())
        : date("--as-of", asOf, ", or today,", command);
  }

  /** What the user wrote as a date, null when nothing; a usage fault when it is none. */
  static @Nullable LocalDate date(
      String option, @Nullable String text, String orElse, CommandSpec command) {
    try {
      return text == null ? null : LocalDate.parse(text);
    } catch (DateTimeException unreadable) {
      throw new ParameterException(
          command.commandLine(),
          "Invalid value for option '"
              + option
              + "': expected a date such as 2027-05-30"
              + orElse
              + " but was '"
              + text
              + "'");
    }
  }
}
