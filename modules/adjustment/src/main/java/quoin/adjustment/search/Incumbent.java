package quoin.adjustment.search;

/**
 * The best positions found so far, under a total order, so that the answer does not depend on the order of the search.
 * The order: the smaller objective; where two agree within {@link SearchSpace#resolution}, fewer visits, then fewer turns
 * altogether, then, adjuster by adjuster in the order given, the smaller turn, and of two opposite turns the positive one.
 */
final class Incumbent {
    private static final double SAME_TURNS = 1e-9;

    private final SearchSpace space;
    private final double resolution;
    private double[] turns;
    private int visits;
    private double objective = Double.POSITIVE_INFINITY;
    private double totalTurns = Double.POSITIVE_INFINITY;

    Incumbent(SearchSpace space) {
        this.space = space;
        this.resolution = space.resolution();
    }

    /** Objective of the best so far, price of visits included; infinite while there is none. */
    double objective() {
        return objective;
    }

    double resolution() {
        return resolution;
    }

    double totalTurns() {
        return totalTurns;
    }

    /** Best positions so far, or null while there are none. */
    double[] turns() {
        return turns;
    }

    int visits() {
        return visits;
    }

    /** Takes a copy of the positions if they come before the best so far. */
    void offer(double[] candidate, int candidateVisits) {
        double candidateObjective = space.cost(candidate) + space.visitPrice() * candidateVisits;
        double candidateTotal = 0;
        for (double t : candidate) {
            candidateTotal += Math.abs(t);
        }
        if (turns == null || comesFirst(candidate, candidateVisits, candidateObjective, candidateTotal)) {
            turns = candidate.clone();
            visits = candidateVisits;
            objective = candidateObjective;
            totalTurns = candidateTotal;
        }
    }

    private boolean comesFirst(double[] candidate, int candidateVisits, double candidateObjective, double candidateTotal) {
        int order = Double.compare(Math.rint(candidateObjective / resolution), Math.rint(objective / resolution));
        if (order == 0) {
            order = Integer.compare(candidateVisits, visits);
        }
        if (order == 0) {
            order = Double.compare(Math.rint(candidateTotal / SAME_TURNS), Math.rint(totalTurns / SAME_TURNS));
        }
        for (int j = 0; order == 0 && j < candidate.length; j++) {
            order = Double.compare(Math.abs(candidate[j]), Math.abs(turns[j]));
            if (order == 0) {
                order = Double.compare(turns[j], candidate[j]);
            }
        }
        return order < 0;
    }
}
