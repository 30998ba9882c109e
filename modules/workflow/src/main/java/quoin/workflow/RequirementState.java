package quoin.workflow;

import quoin.workflow.spi.Requirement;

/**
 * A requirement as it stands now.
 *
 * @param requirement what is asked for
 * @param holds       whether it holds now
 */
public record RequirementState(Requirement requirement, boolean holds) {
}
