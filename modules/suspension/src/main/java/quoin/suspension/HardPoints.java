package quoin.suspension;

import java.util.ArrayList;
import java.util.List;
import quoin.mechanics.InvalidInputException;
import quoin.mechanics.SpacePoint;
import quoin.quantities.Texts;

/** Parameters that types with hard points share, and how they are put into a {@link Linkage}. */
public final class HardPoints {
    private static final Texts TEXTS = Texts.of(HardPoints.class);
    public static final String WHEEL_CENTRE = "wheelCentre";
    public static final String SPIN_AXIS = "spinAxisOutboardUnitVector";
    public static final String LOADED_RADIUS = "loadedRadius_mm";
    private static final String CAMBER = "staticCamber_deg";
    private static final String TOE = "staticToe_deg";
    private static final double NOT_UNIT = 1e-3;
    private static final String COIL = "coilOver";
    private static final String ROCKER = "pushrodRocker";

    private HardPoints() {
    }

    /** Wheel centre, its angles at the design position and its loaded radius. */
    public static List<Parameter> wheel() {
        return List.of(
                Parameter.point(WHEEL_CENTRE, TEXTS.say("wheelCentre"), TEXTS.say("middleOfTheWheelOnItsSpinAxisAtRideHeight")),
                Parameter.angle(CAMBER, TEXTS.say("camberAtRideHeight"), TEXTS.say("plusIsTopOutboard")).optional(),
                Parameter.angle(TOE, TEXTS.say("toeAtRideHeight"), TEXTS.say("ofThisWheelPlusIsToeIn")).optional(),
                Parameter.direction(SPIN_AXIS, TEXTS.say("spinAxis"), TEXTS.say("insteadOfCamberAndToeAVectorOfLength1That")).optional(),
                Parameter.length(LOADED_RADIUS, TEXTS.say("loadedRadius"), TEXTS.say("fromTheWheelCentreToTheGroundInThePlaneOf")));
    }

    /**
     * Reads what {@link #wheel()} asks for.
     *
     * @throws InvalidInputException naming what is missing or no wheel can have
     */
    public static Wheel wheel(ParameterValues values) {
        SpacePoint centre = values.point(WHEEL_CENTRE);
        double radius = values.required(LOADED_RADIUS);
        if (!values.has(SPIN_AXIS)) {
            return Wheel.ofAngles(centre, values.required(CAMBER), values.required(TOE), radius);
        }
        for (String twice : List.of(CAMBER, TOE)) {
            if (values.has(twice)) {
                throw new InvalidInputException(twice, TEXTS.phrase("givenByTheSpin"));
            }
        }
        SpacePoint axis = values.point(SPIN_AXIS);
        double length = Math.hypot(axis.xMm(), Math.hypot(axis.yMm(), axis.zMm()));
        if (Math.abs(length - 1) > NOT_UNIT) {
            throw new InvalidInputException(SPIN_AXIS, TEXTS.phrase("mustHaveLengthHas", length));
        }
        return new Wheel(centre, axis, radius);
    }

    /** Both ends of a link: {@code links.tie.inboard} and {@code links.tie.outboard}. */
    public static List<Parameter> link(String name, String label) {
        return List.of(
                Parameter.point(key(name) + ".inboard", TEXTS.say("innerJointOf", label), TEXTS.say("centreOfTheJointOnTheCarSBody")),
                Parameter.point(key(name) + ".outboard", TEXTS.say("outerJointOf", label), TEXTS.say("centreOfTheJointOnTheUpright")));
    }

    private static String key(String name) {
        return "links." + name;
    }

    /** A link of {@link #link(String, String)}. */
    public static Link link(Linkage linkage, ParameterValues values, String name) {
        return linkage.link(key(name), values.point(key(name) + ".inboard"), values.point(key(name) + ".outboard"));
    }

    /**
     * Two links that meet in one outer joint, the legs of an arm.
     *
     * @throws InvalidInputException where the outer joints are not at one place
     */
    public static List<Link> arm(Linkage linkage, ParameterValues values, String front, String rear) {
        SpacePoint tip = values.point(key(front) + ".outboard");
        SpacePoint other = values.point(key(rear) + ".outboard");
        double apart = Math.hypot(tip.xMm() - other.xMm(), Math.hypot(tip.yMm() - other.yMm(), tip.zMm() - other.zMm()));
        if (apart > 0.01) {
            throw new InvalidInputException(key(rear) + ".outboard", TEXTS.phrase("mustBeTheOuter", key(front)));
        }
        Linkage.apart(key(rear) + ".inboard", Change.array(values.point(key(front) + ".inboard")),
                Change.array(values.point(key(rear) + ".inboard")));
        Link first = link(linkage, values, front);
        return List.of(first, linkage.link(key(rear), values.point(key(rear) + ".inboard"), first.outboard()));
    }

    /** A coil-over straight from the body to the upright or arm; may be left blank altogether. */
    public static List<Parameter> coil() {
        return List.of(
                Parameter.point(COIL + ".body", TEXTS.say("coilOverUpperJoint"), TEXTS.say("centreOfTheJointOnTheCarSBody")).optional(),
                Parameter.point(COIL + ".uprightOrArm", TEXTS.say("coilOverLowerJoint"), TEXTS.say("centreOfTheJointOnTheUprightOrArm"))
                        .optional());
    }

    /** Adds the coil-over of {@link #coil()} where it is described, held by the part that carries the wheel. */
    public static void coil(Linkage linkage, ParameterValues values) {
        if (values.hasGroup(COIL)) {
            linkage.coil(COIL + ".uprightOrArm", values.point(COIL + ".body"),
                    linkage.carrier(values.point(COIL + ".uprightOrArm")));
        }
    }

    /** The same, held by the arm that two links form. */
    public static void coilOnArm(Linkage linkage, ParameterValues values, List<Link> arm) {
        if (values.hasGroup(COIL)) {
            linkage.coil(COIL + ".uprightOrArm", values.point(COIL + ".body"), arm.get(0), arm.get(1),
                    values.point(COIL + ".uprightOrArm"));
        }
    }

    /**
     * A push- or pullrod with rocker and coil-over; may be left blank altogether.
     *
     * @param holders what the rod's outer end can be fixed to
     */
    public static List<Parameter> rocker(List<String> holders) {
        List<Parameter> parameters = new ArrayList<>();
        parameters.add(Parameter.point(ROCKER + ".rockerPivot", TEXTS.say("rockerPivot"), TEXTS.say("aPointOfTheRockerSAxis")));
        parameters.add(Parameter.direction(ROCKER + ".rockerAxis", TEXTS.say("rockerAxis"),
                TEXTS.say("directionOfTheRockerSAxisTheDifferenceOfTwoOf")));
        parameters.add(Parameter.point(ROCKER + ".pushrodInboard", TEXTS.say("pushOrPullrodInnerJoint"), TEXTS.say("onTheRocker")));
        parameters.add(Parameter.point(ROCKER + ".pushrodOutboard", TEXTS.say("pushOrPullrodOuterJoint"), TEXTS.say("onTheArmOrUpright")));
        parameters.add(Parameter.choice(ROCKER + ".pushrodOutboardOn", TEXTS.say("outerJointIsOn"),
                TEXTS.say("whatCarriesTheRodSOuterJoint"), holders));
        parameters.add(Parameter.point(ROCKER + ".coilOverOnRocker", TEXTS.say("coilOverOnTheRocker"), TEXTS.say("centreOfTheJoint")));
        parameters.add(Parameter.point(ROCKER + ".coilOverOnBody", TEXTS.say("coilOverOnTheBody"), TEXTS.say("centreOfTheJoint")));
        return parameters.stream().map(Parameter::optional).toList();
    }

    /** Whether any field of {@link #rocker(List)} is filled in. */
    public static boolean hasRocker(ParameterValues values) {
        return values.hasGroup(ROCKER);
    }

    /** Reads what {@link #rocker(List)} asks for. */
    public static Rocker rocker(ParameterValues values) {
        return new Rocker(ROCKER, values.point(ROCKER + ".rockerPivot"), values.point(ROCKER + ".rockerAxis"),
                values.point(ROCKER + ".pushrodInboard"), values.point(ROCKER + ".pushrodOutboard"),
                values.point(ROCKER + ".coilOverOnRocker"), values.point(ROCKER + ".coilOverOnBody"));
    }

    /** What carries the rod's outer joint. */
    public static String rockerHolder(ParameterValues values) {
        return values.choice(ROCKER + ".pushrodOutboardOn")
                .orElseThrow(() -> InvalidInputException.missing(ROCKER + ".pushrodOutboardOn"));
    }
}
