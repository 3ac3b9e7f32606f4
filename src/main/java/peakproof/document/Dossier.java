package peakproof.document;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * Everything that belongs to one plan, read without fault.
 *
 * @param planFile the plan's path as the user gave it
 * @param logFile the log's path, or null without a log
 * @param houseFile the house file that counts, or null
 * @param positions where each JSON pointer stands; pointers begin with {@code /plan}, {@code
 *     /event}, {@code /log} or {@code /house}, which tells the file
 */
public record Dossier(
    Path planFile,
    @Nullable Path logFile,
    @Nullable Path houseFile,
    Plan plan,
    @Nullable Log log,
    @Nullable House house,
    Positions positions) {}
