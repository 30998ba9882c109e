/** The calculations of the command line: one class each, and the strict reading of their input. */
package quoin.commandline.calculation;
