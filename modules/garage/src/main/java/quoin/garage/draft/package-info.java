/** The car form without a window: typed texts, what they mean, and what is wrong with them. */
package quoin.garage.draft;
