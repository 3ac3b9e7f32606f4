package peakproof.cli;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import peakproof.document.ColumnMapping;
import peakproof.document.Fault;
import peakproof.document.Place;
import peakproof.document.Quantity;
import peakproof.document.Sport;
import peakproof.intake.CsvSessions;
import peakproof.intake.GpxSessions;
import peakproof.intake.Received;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How files from elsewhere are read. */
final class IntakeOptions {
  /** A table of many years is smaller, the recording of a long day too. */
  private static final int TABLE_LIMIT = 8 * 1024 * 1024;

  private static final int TRACK_LIMIT = 64 * 1024 * 1024;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(
      names = "--mapping",
      paramLabel = "FILE",
      description =
          "Says which column of a table (CSV) is which; see docs/import.md."
              + " Default: columns named date, sport, duration, distance, rpe and so on.")
  private @Nullable Path mappingFile;

  @Option(
      names = "--zone",
      paramLabel = "ZONE",
      description =
          "Where the athlete was, such as Europe/Oslo: tracks (GPX) tell the time in UTC,"
              + " a log has the local day.")
  private @Nullable String zone;

  @Option(
      names = "--sport",
      paramLabel = "SPORT",
      description =
          "What a track is, or a row without a sport: swim, bike, run, strength or other.")
  private @Nullable Sport sport;

  @Option(
      names = "--where",
      paramLabel = "PLACE",
      description = "Where it was, as in a log: pool, open-water, road, trainer, track, trail ...")
  private @Nullable String where;

  @Option(names = "--dry-run", description = "Say what would be added, and write nothing.")
  private boolean dryRun;

  private @Nullable ColumnMapping mapping;

  /** True when nothing is to be written. */
  boolean dryRun() {
    return dryRun;
  }

  /** The faults of the mapping; none when there is no mapping file. A usage fault comes first. */
  private List<Fault> prepare() {
    zone();
    checked("--where", where == null ? null : Quantity.whereabouts(where));
    if (mappingFile == null) {
      mapping = ColumnMapping.plain();
      return List.of();
    }
    ColumnMapping.Read read = ColumnMapping.read(mappingFile);
    mapping = read.mapping();
    return read.faults();
  }

  private @Nullable ZoneId zone() {
    return checked("--zone", zone == null ? null : Quantity.zone(zone));
  }

  private <T> @Nullable T checked(String option, @Nullable Quantity<T> value) {
    if (value instanceof Quantity.NotThat<T> not) {
      throw wrong(
          "Invalid value for option '"
              + option
              + "': "
              + not.what()
              + "; "
              + not.expected()
              + "; "
              + not.instead());
    }
    return value == null ? null : value.orNull();
  }

  /**
   * What all files hold.
   *
   * @param faults those of the document; the files are read when there are none, and theirs added
   */
  List<Received> all(List<Path> files, Function<Path, Received> read, List<Fault> faults) {
    faults.addAll(prepare());
    List<Received> all = faults.isEmpty() ? files.stream().map(read).toList() : List.of();
    all.forEach(received -> faults.addAll(received.faults()));
    return all;
  }

  /** What a file of things done holds. */
  Received done(Path file) {
    boolean track = named(file, ".gpx");
    if (!track && !named(file, ".csv") && !named(file, ".tsv") && !named(file, ".txt")) {
      return wrong(
          file,
          "the name of this file does not say what it is",
          "expected a table, .csv, or a recorded track, .gpx",
          "rename it, or export it in one of the two");
    }
    if (!track) {
      return table(file, false);
    }
    ZoneId local = zone();
    if (local == null) {
      throw wrong(
          "a track tells the time in UTC; say where the athlete was, for the local day, such as"
              + " --zone Europe/Oslo");
    }
    return contents(
        file, TRACK_LIMIT, bytes -> GpxSessions.read(name(file), bytes, local, sport, where));
  }

  /** What a table of planned sessions holds. */
  Received planned(Path file) {
    return table(file, true);
  }

  private Received table(Path file, boolean planned) {
    ColumnMapping how = mapping == null ? ColumnMapping.plain() : mapping;
    CsvSessions.Defaults defaults = new CsvSessions.Defaults(zone(), sport, where);
    return contents(
        file,
        TABLE_LIMIT,
        bytes ->
            planned
                ? CsvSessions.planned(name(file), bytes, how, defaults)
                : CsvSessions.done(name(file), bytes, how, defaults));
  }

  private static boolean named(Path file, String ending) {
    return file.toString().toLowerCase(Locale.ROOT).endsWith(ending);
  }

  static String name(Path file) {
    return file.toString().replace(File.separatorChar, '/');
  }

  /** Makes sessions of bytes. */
  @FunctionalInterface
  private interface Reader {
    Received read(byte[] bytes);
  }

  private static Received contents(Path file, int limit, Reader reader) {
    if (!Files.isRegularFile(file)) {
      return wrong(file, "there is no such file", "expected a table or a track", "check the path");
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(limit + 1);
      return bytes.length > limit
          ? wrong(
              file,
              "this file is larger than " + limit / 1024 / 1024 + " MiB",
              "expected the records of one athlete",
              "split it, or check that it is the right file")
          : reader.read(bytes);
    } catch (IOException refused) {
      return wrong(
          file,
          "this file cannot be opened",
          "expected one that may be read",
          "check its permissions");
    }
  }

  private static Received wrong(Path file, String what, String expected, String instead) {
    Place top = new Place(name(file), 1, 1);
    return new Received(List.of(), List.of(), List.of(new Fault(top, what, expected, instead)));
  }

  private ParameterException wrong(String message) {
    return new ParameterException(command.commandLine(), message);
  }
}
