/** What the author of a suspension type implements, and the look-up of what is installed. */
package quoin.suspension.spi;
