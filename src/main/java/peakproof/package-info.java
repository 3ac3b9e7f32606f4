/** Peakproof: audits a triathlete's plan and log before a race by rules the club owns. */
package peakproof;
