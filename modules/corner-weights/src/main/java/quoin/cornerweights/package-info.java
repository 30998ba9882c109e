/** Loads, shares, diagonals and the plan. */
package quoin.cornerweights;
