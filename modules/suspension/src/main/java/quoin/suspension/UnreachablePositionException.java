package quoin.suspension;

/** A position that the linkage cannot be moved to: the nearest one on the way that it reached is told. */
public final class UnreachablePositionException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final double travelMm;
    private final double rackLeftMm;
    private final double reachedTravelMm;
    private final double reachedRackLeftMm;

    public UnreachablePositionException(WheelPosition wanted, WheelPosition reached, String why) {
        super(String.format(java.util.Locale.ROOT,
                "the linkage cannot reach %.4g mm of wheel travel with the rack at %.4g mm: %s; it gets as far as %.4g mm of"
                + " travel with the rack at %.4g mm", wanted.travelMm(), wanted.rackLeftMm(), why, reached.travelMm(),
                reached.rackLeftMm()));
        travelMm = wanted.travelMm();
        rackLeftMm = wanted.rackLeftMm();
        reachedTravelMm = reached.travelMm();
        reachedRackLeftMm = reached.rackLeftMm();
    }

    /** The position asked for. */
    public WheelPosition wanted() {
        return new WheelPosition(travelMm, rackLeftMm);
    }

    /** The last position on the way from the design position that the linkage reached. */
    public WheelPosition reached() {
        return new WheelPosition(reachedTravelMm, reachedRackLeftMm);
    }
}
