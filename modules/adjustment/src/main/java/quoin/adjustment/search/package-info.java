/** The search for the best whole steps, on plain arrays: implementation of the planner, not exported. */
package quoin.adjustment.search;
