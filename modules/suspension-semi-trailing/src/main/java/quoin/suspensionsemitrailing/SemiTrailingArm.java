package quoin.suspensionsemitrailing;

import java.util.ArrayList;
import java.util.List;
import org.openide.util.lookup.ServiceProvider;
import quoin.car.AdjusterKind;
import quoin.mechanics.InvalidInputException;
import quoin.mechanics.SpacePoint;
import quoin.quantities.Texts;
import quoin.suspension.Change;
import quoin.suspension.CornerKinematics;
import quoin.suspension.HardPoints;
import quoin.suspension.Joint;
import quoin.suspension.Linkage;
import quoin.suspension.Parameter;
import quoin.suspension.ParameterValues;
import quoin.suspension.Side;
import quoin.suspension.spi.SuspensionType;

/** An arm that carries the wheel and turns about one axis, skew to the car. A trailing arm is its special case. */
@ServiceProvider(service = SuspensionType.class)
public final class SemiTrailingArm implements SuspensionType {
    private static final Texts TEXTS = Texts.of(SemiTrailingArm.class);
    private static final String OUTER = "hinge.outerPivot";
    private static final String INNER = "hinge.innerPivot";
    private static final String ADJUSTED = "adjustedPivot";

    @Override
    public String id() {
        return "semi-trailing";
    }

    @Override
    public String name() {
        return TEXTS.say("semiTrailingArm");
    }

    @Override
    public List<Parameter> parameters() {
        List<Parameter> parameters = new ArrayList<>(HardPoints.wheel());
        parameters.add(Parameter.point(OUTER, TEXTS.say("outerPivot"), TEXTS.say("centreOfTheArmSOuterBush")));
        parameters.add(Parameter.point(INNER, TEXTS.say("innerPivot"), TEXTS.say("centreOfTheArmSInnerBush")));
        parameters.addAll(HardPoints.coil());
        parameters.add(Parameter.choice(ADJUSTED, TEXTS.say("adjustedAt"), TEXTS.say("thePivotThatIsMovedUpOrDownForCamberAnd"), List.of("outer", "inner")).optional());
        return List.copyOf(parameters);
    }

    @Override
    public CornerKinematics corner(ParameterValues values, Side side) {
        Linkage linkage = new Linkage(side, HardPoints.wheel(values));
        offAxis(values);
        List<Joint> pivots = linkage.hinge("hinge", values.point(OUTER), values.point(INNER));
        HardPoints.coil(linkage, values);
        linkage.adjuster("outerPivotUp", up(pivots.get(0)));
        linkage.adjuster("innerPivotUp", up(pivots.get(1)));
        linkage.adjuster("outerPivotForward", forward(pivots.get(0)));
        linkage.adjuster("innerPivotForward", forward(pivots.get(1)));
        Joint adjusted = pivots.get(values.choice(ADJUSTED).filter("inner"::equals).isPresent() ? 1 : 0);
        linkage.adjuster(AdjusterKind.CAMBER_SHIM, up(adjusted));
        linkage.adjuster(AdjusterKind.TOE_LINK, forward(adjusted));
        return linkage.build();
    }

    private static Change up(Joint pivot) {
        return Change.shift(pivot, 0, 0, 1);
    }

    private static Change forward(Joint pivot) {
        return Change.shift(pivot, 1, 0, 0);
    }

    /** With the wheel centre at the height and on the side of the axis where it moves level, no travel is possible. */
    private static void offAxis(ParameterValues values) {
        SpacePoint a = values.point(OUTER);
        SpacePoint b = values.point(INNER);
        SpacePoint c = values.point(HardPoints.WHEEL_CENTRE);
        double axisX = b.xMm() - a.xMm();
        double axisY = b.yMm() - a.yMm();
        double lift = axisX * (c.yMm() - a.yMm()) - axisY * (c.xMm() - a.xMm());
        if (!(Math.abs(lift) > Math.hypot(axisX, axisY))) {
            throw new InvalidInputException(OUTER, TEXTS.phrase("putsTheWheelCentre"));
        }
    }
}
