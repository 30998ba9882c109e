/** What is settled before the first window: the look, the language. */
package quoin.workbench.start;
