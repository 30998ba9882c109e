package quoin.workflow;

/**
 * A reading as it stood at one moment: the mean of what was read in one and the same state of the car.
 *
 * @param value       the mean, base unit
 * @param uncertainty its standard uncertainty, base unit (JCGM 100:2008, 4.2.3 and F.2.2.1)
 * @param count       how many readings it is the mean of, 1 or more
 * @param entry       number of the last entry that holds one of them
 */
public record Measured(double value, double uncertainty, int count, long entry) {
}
