/** The rounds benchmark: simulated cars, strategies and the driver that compares them. */
package quoin.adjustment.bench;
