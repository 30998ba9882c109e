package quoin.suspensionstrut;

import java.util.ArrayList;
import java.util.List;
import org.openide.util.lookup.ServiceProvider;
import quoin.car.AdjusterKind;
import quoin.mechanics.SpacePoint;
import quoin.quantities.Texts;
import quoin.suspension.Change;
import quoin.suspension.CornerKinematics;
import quoin.suspension.HardPoints;
import quoin.suspension.Joint;
import quoin.suspension.Link;
import quoin.suspension.Linkage;
import quoin.suspension.Parameter;
import quoin.suspension.ParameterValues;
import quoin.suspension.Side;
import quoin.suspension.spi.SuspensionType;

/** A telescopic strut clamped to the upright, a lower arm and a tie rod or toe link. */
@ServiceProvider(service = SuspensionType.class)
public final class Strut implements SuspensionType {
    private static final Texts TEXTS = Texts.of(Strut.class);
    private static final String TOP = "strut.topMount";
    private static final String LOWER = "strut.lowerPointOnStrutAxis";
    private static final String CAMBER_ROD_AT = "camberRodAt";
    private static final String TOP_MOUNT = "topMount";

    @Override
    public String id() {
        return "strut";
    }

    @Override
    public String name() {
        return TEXTS.say("strut");
    }

    @Override
    public List<Parameter> parameters() {
        List<Parameter> parameters = new ArrayList<>(HardPoints.wheel());
        parameters.add(Parameter.point(TOP, TEXTS.say("strutTopMount"), TEXTS.say("centreOfTheUpperMountOnTheCarSBody")));
        parameters.add(Parameter.point(LOWER, TEXTS.say("strutLowerPoint"), TEXTS.say("anyPointOfTheStrutSAxisThatIsFixedTo")));
        parameters.addAll(HardPoints.link("lower_front", TEXTS.say("lowerArmFrontLeg")));
        parameters.addAll(HardPoints.link("lower_rear", TEXTS.say("lowerArmRearLeg")));
        parameters.addAll(HardPoints.link("tie", TEXTS.say("tieRodOrToeLink")));
        parameters.add(Parameter.choice(CAMBER_ROD_AT, TEXTS.say("camberIsTurnedAt"),
                TEXTS.say("theLowerArmSLengthOrTheTopMountSSlide"), List.of("lowerArm", TOP_MOUNT))
                .optional());
        return List.copyOf(parameters);
    }

    @Override
    public CornerKinematics corner(ParameterValues values, Side side) {
        Linkage linkage = new Linkage(side, HardPoints.wheel(values));
        SpacePoint lower = values.point(LOWER);
        Joint top = linkage.slider("strut", values.point(TOP), lower);
        List<Link> arm = HardPoints.arm(linkage, values, "lower_front", "lower_rear");
        Link tie = HardPoints.link(linkage, values, "tie");
        linkage.rack(tie.inboard());
        linkage.steeringAxis(arm.get(0).outboard(), top);
        linkage.coil(LOWER, values.point(TOP), linkage.carrier(lower));
        adjusters(linkage, values, arm, tie, top);
        return linkage.build();
    }

    private static void adjusters(Linkage linkage, ParameterValues values, List<Link> arm, Link tie, Joint top) {
        Change bothLegs = Change.lengthen(arm.get(0), 1).and(Change.lengthen(arm.get(1), 1));
        Change inboard = Change.shift(top, 0, -1, 0);
        Change rearward = Change.shift(top, -1, 0, 0);
        linkage.adjuster("tieRodLength", Change.lengthen(tie, 1));
        linkage.adjuster("lowerArmFrontLegLength", Change.lengthen(arm.get(0), 1));
        linkage.adjuster("lowerArmRearLegLength", Change.lengthen(arm.get(1), 1));
        linkage.adjuster("lowerArmBothLegsLength", bothLegs);
        linkage.adjuster("topMountInboard", inboard);
        linkage.adjuster("topMountRearward", rearward);
        linkage.adjuster("tieRodInnerHeight", Change.shift(tie.inboard(), 0, 0, 1));
        linkage.adjuster(AdjusterKind.TOE_LINK, Change.lengthen(tie, 1));
        linkage.adjuster(AdjusterKind.CAMBER_SHIM, inboard);
        linkage.adjuster(AdjusterKind.CAMBER_ROD, values.choice(CAMBER_ROD_AT).filter(TOP_MOUNT::equals).isPresent() ? inboard
                : bothLegs);
        linkage.adjuster(AdjusterKind.CASTER_ROD, rearward);
    }
}
