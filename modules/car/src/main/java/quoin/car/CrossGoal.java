package quoin.car;

/** Which kind of cross weight the racer wants; see {@link Targets}. */
public enum CrossGoal {
    /** RF+LR is half of the total. */
    EQUAL_DIAGONALS,
    /** LF equals RF; RF+LR per cent then equals the left share where the tracks are equal. */
    EQUAL_FRONTS,
    /** The front share is the same on each side: cross = f + l - 2 f l with front share f and left share l. */
    SAME_FRONT_SHARE,
    /** The value typed as the cross target. */
    WANTED
}
