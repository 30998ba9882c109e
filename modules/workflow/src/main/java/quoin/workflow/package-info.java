/** The order of work: stages, gates, staleness, the state of the day. */
package quoin.workflow;
