/** Cards, settings and the pipeline from a rule file to a rule base. */
@NullMarked
package peakproof.rule;

import org.jspecify.annotations.NullMarked;
