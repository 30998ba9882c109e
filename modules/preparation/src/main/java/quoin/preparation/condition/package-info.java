/** What is looked at on the car before the day. */
package quoin.preparation.condition;
