/** Judges one plan: outcomes, ranking, accepted findings, fingerprints. */
@NullMarked
package peakproof.audit;

import org.jspecify.annotations.NullMarked;
