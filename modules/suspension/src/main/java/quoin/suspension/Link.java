package quoin.suspension;

/** A link of one {@link Linkage}, from a joint on the car's body to a joint on the part that carries the wheel. */
public final class Link {
    private final Joint inboard;
    private final Joint outboard;
    private final int lengthIndex;

    Link(Joint inboard, Joint outboard, int lengthIndex) {
        this.inboard = inboard;
        this.outboard = outboard;
        this.lengthIndex = lengthIndex;
    }

    public Joint inboard() {
        return inboard;
    }

    public Joint outboard() {
        return outboard;
    }

    int lengthIndex() {
        return lengthIndex;
    }
}
