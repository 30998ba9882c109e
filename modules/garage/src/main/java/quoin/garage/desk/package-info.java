/** Cars and days without a window: what is in the library, what was open last, how a day is begun and gone on with. */
package quoin.garage.desk;
