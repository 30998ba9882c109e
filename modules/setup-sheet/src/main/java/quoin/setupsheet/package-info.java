/** The sheet of a day as text. */
package quoin.setupsheet;
