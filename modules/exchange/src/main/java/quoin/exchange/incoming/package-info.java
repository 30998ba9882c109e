/** Readings taken in from a table. */
package quoin.exchange.incoming;
