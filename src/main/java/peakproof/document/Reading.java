package peakproof.document;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A plan read with everything that belongs to it.
 *
 * @param dossier null when there is any fault
 * @param faults of all its files, in the order of files, lines and columns
 */
public record Reading(@Nullable Dossier dossier, List<Fault> faults) {}
