/** The sheet of a day: content, layout, and how it comes out. */
package quoin.setupsheet;
