package quoin.suspension;

import quoin.car.Corner;

/** Side of the car, seen by the driver in his seat. */
public enum Side {
    /** y is positive. */
    LEFT,
    /** y is negative. */
    RIGHT;

    public static Side of(Corner corner) {
        return corner.isLeft() ? LEFT : RIGHT;
    }

    /** +1 for the left, -1 for the right: distance outboard times this is y. */
    public double sign() {
        return this == LEFT ? 1 : -1;
    }
}
