package quoin.car;

/** Front or rear axle. */
public enum Axle {
    FRONT, REAR;

    public Axle other() {
        return this == FRONT ? REAR : FRONT;
    }

    public Corner left() {
        return Corner.of(this, true);
    }

    public Corner right() {
        return Corner.of(this, false);
    }
}
