/** The response of the readings to the adjusters, the planner, the verdict. */
package quoin.adjustment;
