/** The window with the log of the day. */
package quoin.workbench.log;
