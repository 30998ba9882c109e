/** Calculations and checks without a window. */
package quoin.commandline;
