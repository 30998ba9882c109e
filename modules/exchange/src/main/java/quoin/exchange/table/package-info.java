/** Tables as CSV, RFC 4180. */
package quoin.exchange.table;
