/** The window in which angles are measured, with its drawings. */
package quoin.wheelangles.screen;
