/** What stage windows share: the current day, fields, cards, charts. */
package quoin.workbench;
