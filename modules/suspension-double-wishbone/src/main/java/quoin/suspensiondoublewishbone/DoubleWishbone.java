package quoin.suspensiondoublewishbone;

import java.util.ArrayList;
import java.util.List;
import org.openide.util.lookup.ServiceProvider;
import quoin.car.AdjusterKind;
import quoin.mechanics.InvalidInputException;
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

/** Two arms and a tie rod or toe link, with a push- or pullrod and rocker, or a coil-over straight on an arm. */
@ServiceProvider(service = SuspensionType.class)
public final class DoubleWishbone implements SuspensionType {
    private static final Texts TEXTS = Texts.of(DoubleWishbone.class);
    private static final String LOWER_ARM = "lowerArm";
    private static final String UPPER_ARM = "upperArm";
    private static final String UPRIGHT = "upright";
    private static final String COIL_ON = "coilOverOn";
    private static final String CAMBER_ROD_AT = "camberRodAt";
    private static final String CAMBER_SHIM_AT = "camberShimAt";
    private static final String PIVOTS = "upperArmPivots";
    private static final List<String> HOLDERS = List.of(LOWER_ARM, UPPER_ARM, UPRIGHT);

    @Override
    public String id() {
        return "double-wishbone";
    }

    @Override
    public String name() {
        return TEXTS.say("doubleWishbone");
    }

    @Override
    public List<Parameter> parameters() {
        List<Parameter> parameters = new ArrayList<>(HardPoints.wheel());
        parameters.addAll(HardPoints.link("upper_front", TEXTS.say("upperArmFrontLeg")));
        parameters.addAll(HardPoints.link("upper_rear", TEXTS.say("upperArmRearLeg")));
        parameters.addAll(HardPoints.link("lower_front", TEXTS.say("lowerArmFrontLeg")));
        parameters.addAll(HardPoints.link("lower_rear", TEXTS.say("lowerArmRearLeg")));
        parameters.addAll(HardPoints.link("tie", TEXTS.say("tieRodOrToeLink")));
        parameters.addAll(HardPoints.rocker(HOLDERS));
        parameters.addAll(HardPoints.coil());
        parameters.add(Parameter.choice(COIL_ON, TEXTS.say("coilOverSLowerJointIsOn"), TEXTS.say("lowerArmWhereLeftBlank"), HOLDERS)
                .optional());
        parameters.add(Parameter.choice(CAMBER_ROD_AT, TEXTS.say("camberRodsAreIn"),
                TEXTS.say("theArmWhoseTwoLegsAreTurnedAlikeForCamberUpper"),
                List.of(UPPER_ARM, LOWER_ARM)).optional());
        parameters.add(Parameter.choice(CAMBER_SHIM_AT, TEXTS.say("camberShimsAreAt"),
                TEXTS.say("atTheUpperArmSTwoPivotsOrBetweenUprightAnd"),
                List.of(UPRIGHT, PIVOTS)).optional());
        return List.copyOf(parameters);
    }

    @Override
    public CornerKinematics corner(ParameterValues values, Side side) {
        Linkage linkage = new Linkage(side, HardPoints.wheel(values));
        List<Link> upper = HardPoints.arm(linkage, values, "upper_front", "upper_rear");
        List<Link> lower = HardPoints.arm(linkage, values, "lower_front", "lower_rear");
        Link tie = HardPoints.link(linkage, values, "tie");
        linkage.rack(tie.inboard());
        linkage.steeringAxis(lower.get(0).outboard(), upper.get(0).outboard());
        spring(linkage, values, upper, lower);
        named(linkage, upper, lower, tie);
        fitted(linkage, values, upper, lower, tie);
        return linkage.build();
    }

    private static void spring(Linkage linkage, ParameterValues values, List<Link> upper, List<Link> lower) {
        if (HardPoints.hasRocker(values)) {
            if (values.hasGroup("coilOver")) {
                throw new InvalidInputException("coilOver", TEXTS.phrase("standsBesideARocker"));
            }
            switch (HardPoints.rockerHolder(values)) {
                case LOWER_ARM -> linkage.rocker(HardPoints.rocker(values), lower.get(0), lower.get(1));
                case UPPER_ARM -> linkage.rocker(HardPoints.rocker(values), upper.get(0), upper.get(1));
                default -> linkage.rocker(HardPoints.rocker(values));
            }
        } else {
            switch (values.choice(COIL_ON).orElse(LOWER_ARM)) {
                case LOWER_ARM -> HardPoints.coilOnArm(linkage, values, lower);
                case UPPER_ARM -> HardPoints.coilOnArm(linkage, values, upper);
                default -> HardPoints.coil(linkage, values);
            }
        }
    }

    private static void named(Linkage linkage, List<Link> upper, List<Link> lower, Link tie) {
        linkage.adjuster("tieRodLength", Change.lengthen(tie, 1));
        legs(linkage, "upperArm", upper);
        legs(linkage, "lowerArm", lower);
        linkage.adjuster("upperArmShimBothPivotsOutboard", outboard(upper.get(0)).and(outboard(upper.get(1))));
        linkage.adjuster("upperArmShimFrontPivotOutboard", outboard(upper.get(0)));
        linkage.adjuster("upperArmShimRearPivotOutboard", outboard(upper.get(1)));
        linkage.adjuster("uprightTopShimOutboard", Change.shift(upper.get(0).outboard(), 0, 1, 0));
        linkage.adjuster("tieRodInnerHeight", Change.shift(tie.inboard(), 0, 0, 1));
    }

    private static void legs(Linkage linkage, String arm, List<Link> legs) {
        linkage.adjuster(arm + "FrontLegLength", Change.lengthen(legs.get(0), 1));
        linkage.adjuster(arm + "RearLegLength", Change.lengthen(legs.get(1), 1));
        linkage.adjuster(arm + "BothLegsLength", both(legs));
    }

    private static Change both(List<Link> legs) {
        return Change.lengthen(legs.get(0), 1).and(Change.lengthen(legs.get(1), 1));
    }

    private static Change outboard(Link link) {
        return Change.shift(link.inboard(), 0, 1, 0);
    }

    /** Caster is set by one leg of the upper arm longer and the other shorter, a turn at each. */
    private static void fitted(Linkage linkage, ParameterValues values, List<Link> upper, List<Link> lower, Link tie) {
        boolean lowerRods = values.choice(CAMBER_ROD_AT).filter(LOWER_ARM::equals).isPresent();
        boolean pivots = values.choice(CAMBER_SHIM_AT).filter(PIVOTS::equals).isPresent();
        linkage.adjuster(AdjusterKind.TOE_LINK, Change.lengthen(tie, 1));
        linkage.adjuster(AdjusterKind.CAMBER_ROD, both(lowerRods ? lower : upper));
        linkage.adjuster(AdjusterKind.CAMBER_SHIM, pivots ? outboard(upper.get(0)).and(outboard(upper.get(1)))
                : Change.shift(upper.get(0).outboard(), 0, -1, 0));
        linkage.adjuster(AdjusterKind.CASTER_ROD, Change.lengthen(upper.get(0), 1).and(Change.lengthen(upper.get(1), -1)));
    }
}
