package quoin.suspension;

import java.util.Locale;
import quoin.quantities.NotTakenException;
import quoin.quantities.Phrase;
import quoin.quantities.Texts;

/** A position that the linkage cannot be moved to: the nearest one on the way that it reached is told. */
public final class UnreachablePositionException extends NotTakenException {
    private static final long serialVersionUID = 1L;

    private static final Texts TEXTS = Texts.of(UnreachablePositionException.class);

    private final double travelMm;
    private final double rackLeftMm;
    private final double reachedTravelMm;
    private final double reachedRackLeftMm;

    /** @param why what stands in the way, said after a colon */
    public UnreachablePositionException(WheelPosition wanted, WheelPosition reached, Phrase why) {
        super(TEXTS.phrase("unreachable", mm(wanted.travelMm()), mm(wanted.rackLeftMm()), why, mm(reached.travelMm()),
                mm(reached.rackLeftMm())));
        travelMm = wanted.travelMm();
        rackLeftMm = wanted.rackLeftMm();
        reachedTravelMm = reached.travelMm();
        reachedRackLeftMm = reached.rackLeftMm();
    }

    private static double mm(double figure) {
        return Double.parseDouble(String.format(Locale.ROOT, "%.4g", figure));
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
