package quoin.wheelangles.measure;

import java.util.List;
import java.util.OptionalDouble;
import org.openide.util.NbBundle.Messages;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.mechanics.SlopeCamber;

/** The floor under a wheel whose camber is read against gravity: how it slopes, and how that is known. */
@Messages({
    "floor.choice=The gauge was zeroed", "floor.padLine=on the pads across the axle; nothing to correct",
    "floor.gravity=to gravity; slope of the pads typed", "floor.pads=to gravity; slope from the pad heights",
    "floor.bothWays=to gravity; slope by gauge, both ways round",
    "floor.slope=Slope of the pads, plus = left side higher", "floor.across=Slope across", "floor.heights=Height of the pad tops",
    "floor.padHeight=pad height", "floor.oneWay=One way", "floor.turned=Turned end for end",
    "floor.gaugeAcross=Gauge on a straight edge across the pads, plus = left side higher",
    "# {0} - axle", "# {1} - angle", "floor.leftHigher={0}: pads {1} higher on the left, allowed for",
    "# {0} - axle", "# {1} - angle", "floor.rightHigher={0}: pads {1} higher on the right, allowed for",
    "# {0} - angle", "floor.zero=the gauge itself shows {0} too much when it lies level; zero it, or read every wheel with the same side out"})
final class Floor {

    private static final String CHOICE = "floor";
    private static final String PADS = "pads";
    private static final String SLOPE = "slope";
    private static final String BOTH_WAYS = "both-ways";
    private static final double WORTH_A_WORD_DEG = 0.005;
    private static final double ZERO_DEG = 0.05;

    private Floor() {
    }

    static Choice choice() {
        return Choice.of(CHOICE, Bundle.floor_choice(), new Choice.Option("pad-line", Bundle.floor_padLine()),
                new Choice.Option(SLOPE, Bundle.floor_gravity()), new Choice.Option(PADS, Bundle.floor_pads()),
                new Choice.Option(BOTH_WAYS, Bundle.floor_bothWays()));
    }

    /** The tables of the option in force; none where there is nothing to correct. */
    static List<Table> tables(Setting setting, String option) {
        return switch (option == null ? "" : option) {
            case SLOPE -> List.of(Table.of(Bundle.floor_slope(), List.of(), typed(Axle.FRONT), typed(Axle.REAR)));
            case PADS -> List.of(new Table(Bundle.floor_heights(), List.of(), List.of(Axle.values()).stream()
                    .map(a -> Table.Line.of(a.left() + ", " + a.right(), pad(setting, a.left()), pad(setting, a.right()))).toList()));
            case BOTH_WAYS -> List.of(Table.of(Bundle.floor_gaugeAcross(), List.of(Bundle.floor_oneWay(), Bundle.floor_turned()),
                    across(Axle.FRONT), across(Axle.REAR)));
            default -> List.of();
        };
    }

    static String key() {
        return CHOICE;
    }

    private static Table.Line typed(Axle axle) {
        return Table.Line.of(Common.axle(axle), Field.kept("slope." + axle, Common.name(Common.axle(axle), Bundle.floor_across()),
                Instrument.GAUGE, OptionalDouble.empty()));
    }

    private static Field pad(Setting setting, Corner corner) {
        return Field.kept("pad." + corner, Common.name(corner.words(), Bundle.floor_padHeight()), Instrument.HEIGHT_GAUGE, setting.padHeightMm(corner));
    }

    private static Table.Line across(Axle axle) {
        return Table.Line.of(Common.axle(axle),
                Field.kept("across." + axle, Common.name(Common.axle(axle), Bundle.floor_oneWay()), Instrument.GAUGE, OptionalDouble.empty()),
                Field.kept("turned." + axle, Common.name(Common.axle(axle), Bundle.floor_turned()), Instrument.GAUGE, OptionalDouble.empty()));
    }

    /** How far the pads of an axle rise to the left, deg. */
    static double risesToLeftDeg(Figures figures, Axle axle) {
        return switch (figures.chosen().get(CHOICE)) {
            case SLOPE -> Checked.within("slope." + axle, figures.get("slope." + axle), Checked.SLOPE_DEG, figures.wording());
            case PADS -> Checked.within("pad." + axle.left(), Math.toDegrees(Math.atan((figures.get("pad." + axle.left())
                    - figures.get("pad." + axle.right())) / figures.setting().trackMm(axle))), Checked.SLOPE_DEG, figures.wording());
            case BOTH_WAYS -> Checked.within("across." + axle, (figures.get("across." + axle) + figures.get("turned." + axle)) / 2,
                    Checked.SLOPE_DEG, figures.wording());
            default -> 0;
        };
    }

    /** How far the pads rise forward, deg; known from four pad heights only. */
    private static double risesForwardDeg(Figures figures) {
        if (!figures.is(CHOICE, PADS)) {
            return 0;
        }
        double front = 0;
        double rear = 0;
        for (Axle axle : Axle.values()) {
            if (!figures.any("pad." + axle.left()) || !figures.any("pad." + axle.right())) {
                return 0;
            }
            double mean = (figures.get("pad." + axle.left()) + figures.get("pad." + axle.right())) / 2;
            front = axle == Axle.FRONT ? mean : front;
            rear = axle == Axle.REAR ? mean : rear;
        }
        return Math.toDegrees(Math.atan((front - rear) / figures.setting().car().wheelbaseMm()));
    }

    /** Camber to the plane of the pads from one to gravity. */
    static double camberDeg(Figures figures, Corner corner, String key, double toGravityDeg) {
        Checked.within(key, toGravityDeg, Checked.CAMBER_DEG, figures.wording());
        return Figures.compute(() -> new SlopeCamber(corner.isLeft(), toGravityDeg, figures.setting().toeDeg(corner),
                risesToLeftDeg(figures, corner.axle()), risesForwardDeg(figures)).camberToFloorDeg(), field -> key);
    }

    static void remarks(Outcome.Builder to, Figures figures, Axle axle) {
        double slope = risesToLeftDeg(figures, axle);
        if (Math.abs(slope) >= WORTH_A_WORD_DEG) {
            String size = figures.wording().deg(Math.abs(slope));
            to.says(slope > 0 ? Bundle.floor_leftHigher(Common.axle(axle), size) : Bundle.floor_rightHigher(Common.axle(axle), size));
        }
        if (figures.is(CHOICE, BOTH_WAYS)) {
            double zero = (figures.get("across." + axle) - figures.get("turned." + axle)) / 2;
            if (Math.abs(zero) >= ZERO_DEG) {
                to.warns(Bundle.floor_zero(figures.wording().signedDeg(zero)));
            }
        }
    }
}
