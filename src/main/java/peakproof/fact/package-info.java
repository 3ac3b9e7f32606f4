/** What a rule may see: the race, the athlete, weeks, days, sessions, symptoms. */
@NullMarked
package peakproof.fact;

import org.jspecify.annotations.NullMarked;
