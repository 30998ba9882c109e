package quoin.adjustment.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** Goes through the sets of groups to visit, most promising first, and leaves out those their relaxation rules out. */
public final class VisitSearch {
    /** Most groups a search accepts: the sets of groups double with each. */
    public static final int MOST_GROUPS = 16;

    private final SearchSpace space;
    private final BooleanSupplier cancelled;

    /** A search of one problem; {@code cancelled} is asked now and then. */
    public VisitSearch(SearchSpace space, BooleanSupplier cancelled) {
        if (space.groups() > MOST_GROUPS) {
            throw new IllegalArgumentException("adjusters: " + space.groups() + " visits are more than "
                    + MOST_GROUPS + "; lock some adjusters or plan in two parts");
        }
        this.space = space;
        this.cancelled = cancelled;
    }

    /**
     * Positions found.
     *
     * @param turns one per adjuster
     * @param visits number of groups with a position other than zero
     * @param nodes values tried and relaxations solved, a measure of the work
     * @param proven true when nothing better exists; false when the search was cancelled before that was shown
     */
    public record Found(double[] turns, int visits, long nodes, boolean proven) {
    }

    private record Choice(int mask, double lowerBound) {
    }

    /** The best positions over all sets of groups; empty only when cancelled before the first was found. */
    public Optional<Found> best() {
        List<Choice> choices = new ArrayList<>();
        for (int size = 0; size <= space.groups(); size++) {
            choices.addAll(choices(size));
        }
        return search(choices);
    }

    /** The best positions with exactly this many groups visited; empty when there are none. */
    public Optional<Found> bestVisiting(int visits) {
        return search(choices(visits));
    }

    private Optional<Found> search(List<Choice> choices) {
        choices.sort(Comparator.comparingDouble(Choice::lowerBound).thenComparingInt(Choice::mask));
        Incumbent incumbent = new Incumbent(space);
        long nodes = 0;
        boolean proven = true;
        for (Choice choice : choices) {
            if (choice.lowerBound() > incumbent.objective() + 2 * incumbent.resolution()) {
                break;
            }
            SubsetSearch subset = subset(choice.mask(), incumbent);
            proven = subset.run();
            nodes += subset.nodes();
            if (!proven) {
                break;
            }
        }
        return incumbent.turns() == null ? Optional.empty()
                : Optional.of(new Found(incumbent.turns(), incumbent.visits(), nodes, proven));
    }

    private List<Choice> choices(int size) {
        List<Choice> choices = new ArrayList<>();
        Incumbent none = new Incumbent(space);
        for (int mask = 0; mask < 1 << space.groups(); mask++) {
            if (Integer.bitCount(mask) == size && possible(mask)) {
                choices.add(new Choice(mask, subset(mask, none).lowerBound()));
            }
        }
        return choices;
    }

    /** A group outside the set must be able to rest, a group inside must be able to move. */
    private boolean possible(int mask) {
        int movable = 0;
        for (int j = 0; j < space.adjusters(); j++) {
            int bit = 1 << space.group()[j];
            if ((mask & bit) == 0 && !space.mayRest(j)) {
                return false;
            }
            movable |= space.mayMove(j) ? bit : 0;
        }
        return (mask & ~movable) == 0;
    }

    private SubsetSearch subset(int mask, Incumbent incumbent) {
        int[] adjusters = new int[space.adjusters()];
        int n = 0;
        for (int j = 0; j < adjusters.length; j++) {
            if ((mask >> space.group()[j] & 1) != 0 && space.mayMove(j)) {
                adjusters[n++] = j;
            }
        }
        return new SubsetSearch(space, java.util.Arrays.copyOf(adjusters, n), Integer.bitCount(mask), incumbent,
                cancelled);
    }
}
