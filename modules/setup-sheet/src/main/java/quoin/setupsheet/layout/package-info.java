/** Lays the content of a sheet out on paper. */
package quoin.setupsheet.layout;
