package peakproof.report;

/**
 * What the reader asked to see besides every HOLD.
 *
 * @param all everything, down to the notes
 * @param top how many of the rest when not all
 */
public record Choice(boolean all, int top) {}
