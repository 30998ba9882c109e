/**
 * The weighing for the driver who sits in the car and reads the screen from there: figures readable at 3 m, driven by the
 * keypad alone.
 */
package quoin.seatview;
