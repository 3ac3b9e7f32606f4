/** Brings in what was recorded or planned elsewhere: tables (CSV) and tracks (GPX). */
@NullMarked
package peakproof.intake;

import org.jspecify.annotations.NullMarked;
