/** Help inside the application: one page per stage, found by words or from the field in question. No network. */
package quoin.help;
