package quoin.suspensionliveaxle;

import java.util.ArrayList;
import java.util.List;
import org.openide.util.lookup.ServiceProvider;
import quoin.mechanics.InvalidInputException;
import quoin.mechanics.SpacePoint;
import quoin.quantities.Texts;
import quoin.suspension.Change;
import quoin.suspension.CornerKinematics;
import quoin.suspension.HardPoints;
import quoin.suspension.Link;
import quoin.suspension.Linkage;
import quoin.suspension.Parameter;
import quoin.suspension.ParameterValues;
import quoin.suspension.Side;
import quoin.suspension.spi.SuspensionType;

/**
 * A rigid axle on two lower links and either one upper link or a pair of them, held sideways by a Panhard rod, by Watt's
 * linkage, or by upper links that converge. Travel is of both wheels alike. Beside a sideways link a pair of upper links is
 * one link too many: their bushes are taken to share it.
 */
@ServiceProvider(service = SuspensionType.class)
public final class LiveAxle implements SuspensionType {
    private static final Texts TEXTS = Texts.of(LiveAxle.class);
    private static final String TOP = "topLink";
    private static final String PANHARD = "panhard";
    private static final String WATT = "watt";

    @Override
    public String id() {
        return "live-axle";
    }

    @Override
    public String name() {
        return TEXTS.say("liveAxle");
    }

    @Override
    public List<Parameter> parameters() {
        List<Parameter> parameters = new ArrayList<>(HardPoints.wheel());
        parameters.addAll(HardPoints.link("lower", TEXTS.say("lowerLink")));
        HardPoints.link("upper", TEXTS.say("upperLinkOfAPair")).forEach(p -> parameters.add(p.optional()));
        parameters.addAll(pair(TOP, TEXTS.say("singleUpperLink")));
        parameters.addAll(pair(PANHARD, TEXTS.say("panhardRod")));
        parameters.add(once(WATT + ".pivot", TEXTS.say("wattCrankPivot"), TEXTS.say("centreOfTheCrankSPivotOnTheAxle")));
        for (String which : List.of("upper", "lower")) {
            parameters.add(once(WATT + "." + which + ".outboard", TEXTS.say("watt." + which + ".crank"), TEXTS.say("centreOfTheJoint")));
            parameters.add(once(WATT + "." + which + ".inboard", TEXTS.say("watt." + which + ".body"), TEXTS.say("centreOfTheJoint")));
        }
        parameters.addAll(HardPoints.coil());
        return List.copyOf(parameters);
    }

    private static List<Parameter> pair(String key, String label) {
        return List.of(once(key + ".inboard", TEXTS.say("jointOnBody", label), TEXTS.say("centreOfTheJoint")),
                once(key + ".outboard", TEXTS.say("jointOnAxle", label), TEXTS.say("centreOfTheJoint")));
    }

    private static Parameter once(String key, String label, String help) {
        return Parameter.axlePoint(key, label, TEXTS.say("middleFigure", help)).optional();
    }

    @Override
    public CornerKinematics corner(ParameterValues values, Side side) {
        Linkage linkage = new Linkage(side, HardPoints.wheel(values));
        linkage.otherWheel(mirrored(values.point(HardPoints.WHEEL_CENTRE)));
        Link lower = HardPoints.link(linkage, values, "lower");
        linkage.link("links.lower", mirrored(values.point("links.lower.inboard")),
                linkage.carrier(mirrored(values.point("links.lower.outboard"))));
        linkage.adjuster("lowerLinkLength", Change.lengthen(lower, 1));
        boolean sideways = sideways(linkage, values, side);
        upper(linkage, values, side, sideways);
        HardPoints.coil(linkage, values);
        return linkage.build();
    }

    private static boolean sideways(Linkage linkage, ParameterValues values, Side side) {
        if (values.hasGroup(PANHARD) && values.hasGroup(WATT)) {
            throw new InvalidInputException(WATT, TEXTS.phrase("standsBesideAPanhard"));
        }
        if (values.hasGroup(PANHARD)) {
            Link rod = linkage.link(PANHARD, outboard(values, PANHARD + ".inboard", side),
                    outboard(values, PANHARD + ".outboard", side));
            linkage.adjuster("panhardLength", Change.lengthen(rod, 1));
            return true;
        }
        if (values.hasGroup(WATT)) {
            linkage.watt(WATT, outboard(values, WATT + ".pivot", side),
                    List.of(outboard(values, WATT + ".upper.outboard", side), outboard(values, WATT + ".lower.outboard", side)),
                    List.of(outboard(values, WATT + ".upper.inboard", side), outboard(values, WATT + ".lower.inboard", side)));
            return true;
        }
        return false;
    }

    private static void upper(Linkage linkage, ParameterValues values, Side side, boolean sideways) {
        boolean pair = values.hasGroup("links.upper");
        if (pair == values.hasGroup(TOP)) {
            throw new InvalidInputException(TOP, TEXTS.phrase("giveEitherOneUpper"));
        }
        if (!pair && !sideways) {
            throw new InvalidInputException(PANHARD, TEXTS.phrase("missingOneUpperLink"));
        }
        if (!pair) {
            Link top = linkage.link(TOP, outboard(values, TOP + ".inboard", side), outboard(values, TOP + ".outboard", side));
            linkage.adjuster("upperLinkLength", Change.lengthen(top, 1));
            return;
        }
        List<SpacePoint> inboard = both(values.point("links.upper.inboard"));
        List<SpacePoint> outboard = both(values.point("links.upper.outboard"));
        List<Link> links = sideways ? linkage.shared("links.upper", inboard, outboard)
                : List.of(linkage.link("links.upper", inboard.get(0), outboard.get(0)),
                        linkage.link("links.upper", inboard.get(1), outboard.get(1)));
        linkage.adjuster("upperLinkLength", Change.lengthen(links.get(0), 1));
        linkage.adjuster("upperLinksLength", Change.lengthen(links.get(0), 1).and(Change.lengthen(links.get(1), 1)));
    }

    private static List<SpacePoint> both(SpacePoint own) {
        return List.of(own, mirrored(own));
    }

    private static SpacePoint mirrored(SpacePoint point) {
        return new SpacePoint(point.xMm(), -point.yMm(), point.zMm());
    }

    private static SpacePoint outboard(ParameterValues values, String key, Side side) {
        SpacePoint point = values.point(key);
        return side == Side.LEFT ? point : mirrored(point);
    }
}
