package quoin.curves.set;

import quoin.suspension.WheelPosition;

/** What the curves run along. */
public enum Sweep {
    /** Both wheels of the axle rise alike, the rack in the middle; mm, plus is bump. */
    TRAVEL,
    /** The rack moves with the wheels at ride height; mm, plus is to the left. */
    RACK;

    /** The position at a place along the sweep, mm. */
    public WheelPosition at(double mm) {
        return this == TRAVEL ? new WheelPosition(mm, 0) : new WheelPosition(0, mm);
    }

    /** The place of a position along the sweep, mm. */
    public double of(WheelPosition position) {
        return this == TRAVEL ? position.travelMm() : position.rackLeftMm();
    }
}
