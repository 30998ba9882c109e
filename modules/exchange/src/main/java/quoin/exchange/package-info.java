/** In and out: days as CSV and JSON, a car with its days as one file, readings from a spreadsheet. */
package quoin.exchange;
