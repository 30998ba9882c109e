/** Scales tested and put right, and weighing with fewer than four. */
package quoin.preparation.scales;
