/** Cars and days: new, open, recent, demo. */
package quoin.garage;
