package quoin.wheelangles.screen;

import java.util.List;
import java.util.Optional;
import org.openide.util.NbBundle.Messages;
import quoin.logbook.Entry;
import quoin.wheelangles.measure.Outcome;
import quoin.wheelangles.screen.Sketch.Place;

/** Toe against travel as measured, on the right half of the sketch: travel upward is bump, to the right is toe-in. */
@Messages({
    "travel.bump=+ bump", "travel.in=+ in", "travel.none=the curve as it is measured"})
final class TravelChart {

    private static final double MIDDLE_X = 76;
    private static final double MIDDLE_Y = 31;
    private static final double HALF_X = 17;
    private static final double HALF_Y = 22;

    private TravelChart() {
    }

    static void draw(Sketch s, Optional<Outcome.Curve> measured) {
        s.arrow(MIDDLE_X, MIDDLE_Y + HALF_Y + 3, MIDDLE_X, MIDDLE_Y - HALF_Y - 3).text(MIDDLE_X, MIDDLE_Y - HALF_Y - 3, Bundle.travel_bump(), Place.RIGHT);
        s.arrow(MIDDLE_X - HALF_X - 3, MIDDLE_Y, MIDDLE_X + HALF_X + 3, MIDDLE_Y).text(MIDDLE_X + HALF_X, MIDDLE_Y, Bundle.travel_in(), Place.BELOW);
        if (measured.isEmpty()) {
            s.text(MIDDLE_X, MIDDLE_Y + HALF_Y + 3, Bundle.travel_none(), Place.BELOW);
            return;
        }
        List<Entry.BumpSteer.Point> points = measured.get().points();
        double travel = points.stream().mapToDouble(p -> Math.abs(p.travelMm())).max().orElse(1);
        double toe = Math.max(1e-6, points.stream().mapToDouble(p -> Math.abs(p.toeInChangeDeg())).max().orElse(1));
        for (int i = 0; i < points.size(); i++) {
            double x = MIDDLE_X + HALF_X * points.get(i).toeInChangeDeg() / toe;
            double y = MIDDLE_Y - HALF_Y * points.get(i).travelMm() / travel;
            s.dot(x, y);
            if (i > 0) {
                s.line(MIDDLE_X + HALF_X * points.get(i - 1).toeInChangeDeg() / toe, MIDDLE_Y - HALF_Y * points.get(i - 1).travelMm() / travel, x, y);
            }
        }
    }
}
