/** What stands on a sheet, in words, before anything is laid out. */
package quoin.setupsheet.content;
