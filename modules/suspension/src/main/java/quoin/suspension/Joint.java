package quoin.suspension;

/** A joint of one {@link Linkage}: on the car's body, or on the part that carries the wheel. */
public final class Joint {
    private final boolean onBody;
    private final int index;

    Joint(boolean onBody, int index) {
        this.onBody = onBody;
        this.index = index;
    }

    boolean onBody() {
        return onBody;
    }

    int index() {
        return index;
    }
}
