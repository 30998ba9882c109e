/** How days and cars lie on disk: JSON text, the append-only file, its lock, and safe replacement. */
package quoin.logbook.file;
