/** The day as an append-only logbook: entries, the fold to the day, the journal file. */
package quoin.logbook;
