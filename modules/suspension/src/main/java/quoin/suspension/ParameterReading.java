package quoin.suspension;

import java.util.List;

/**
 * Parameters as far as they could be read.
 *
 * @param values   those that could be read
 * @param problems one per field that could not, in the order of the description; then those of unknown keys
 */
public record ParameterReading(ParameterValues values, List<ParameterProblem> problems) {
    public ParameterReading {
        problems = List.copyOf(problems);
    }

    /** True where every field could be read and nothing is missing. */
    public boolean isComplete() {
        return problems.isEmpty();
    }

    /** True where a corner can be made of it: what was typed for another type, and stays with the car, is no hindrance. */
    public boolean isUsable() {
        return problems.stream().allMatch(ParameterProblem::ofAnotherType);
    }
}
