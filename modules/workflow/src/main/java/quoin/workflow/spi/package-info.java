/** What a stage of the day brings with it. Stages register themselves as services of {@link quoin.workflow.spi.Stage}. */
package quoin.workflow.spi;
