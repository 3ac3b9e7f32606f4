/** One class per output format, all fed the same report. */
@NullMarked
package peakproof.report;

import org.jspecify.annotations.NullMarked;
