package quoin.suspension;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quoin.car.Adjuster;
import quoin.car.AdjusterKind;
import quoin.suspension.solver.Coil;
import quoin.suspension.solver.Geometry;
import quoin.suspension.solver.Loops;
import quoin.suspension.solver.Walker;

/** The linear response of a linkage about its design position. */
final class LinkageResponse {
    /** Step of the differences that are taken where only solving again can tell, mm. */
    private static final double STEP_MM = 0.05;

    private final CarriedWheel wheel;
    private final Loops loops;
    private final Map<AdjusterKind, Geometry> kinds;
    private final Walker design;
    private final Geometry travel;
    private final double[] travelMotion;

    LinkageResponse(CarriedWheel wheel, Loops loops, Map<AdjusterKind, Geometry> kinds) {
        this.wheel = wheel;
        this.loops = loops;
        this.kinds = kinds;
        design = loops.walker();
        design.moveTo(0, new double[loops.drives()]);
        travel = loops.heightChange(unit(0));
        travelMotion = design.motion(travel);
    }

    private double[] unit(int index) {
        double[] unit = new double[loops.drives()];
        unit[index] = 1;
        return unit;
    }

    AngleResponse of(List<Adjuster> fitted) {
        Map<AdjusterKind, AdjusterEffect> effects = new EnumMap<>(AdjusterKind.class);
        for (Adjuster adjuster : fitted) {
            AdjusterKind kind = adjuster.id().kind();
            perMm(kind).ifPresent(effect -> effects.put(kind, effect.times(adjuster.setting().mmPerUnit())));
        }
        AngleChange across = loops.drives() == 1 ? AngleChange.NONE : angles(loops.heightChange(unit(1)));
        return new AngleResponse(angles(travel), across, effects);
    }

    /** What 1 mm of an adjuster of this kind changes, in the direction that is plus; empty where it changes no joint or link. */
    Optional<Geometry> plus(AdjusterKind kind) {
        Geometry change = kinds.get(kind);
        if (change == null) {
            return Optional.empty();
        }
        AngleChange angles = angles(change);
        return Optional.of(main(kind, angles) < 0 ? change.noChange().plus(-1, change) : change);
    }

    private static double main(AdjusterKind kind, AngleChange angles) {
        return switch (kind) {
            case TOE_LINK -> angles.toeDeg();
            case CASTER_ROD -> angles.casterDeg();
            default -> angles.camberDeg();
        };
    }

    private Optional<AdjusterEffect> perMm(AdjusterKind kind) {
        if (kind == AdjusterKind.PERCH) {
            return wheel.coil() == null ? Optional.empty() : Optional.of(lift(-1));
        }
        if (kind == AdjusterKind.PUSHROD) {
            return Optional.ofNullable(wheel.coil()).flatMap(this::pushrod);
        }
        Geometry change = kinds.get(kind);
        if (change == null) {
            return Optional.empty();
        }
        AngleChange angles = angles(change);
        double main = main(kind, angles);
        double lift = wheel.coil() == null ? 0 : lift(change);
        return Optional.of(new AdjusterEffect(angles, lift).times(main < 0 ? -1 : 1));
    }

    private AngleChange angles(Geometry change) {
        double[] motion = design.motion(change);
        double[] spin = wheel.spinAxis(design);
        return new AngleChange(Math.toDegrees(CarriedWheel.camberRate(spin, motion)),
                Math.toDegrees(CarriedWheel.toeRate(spin, motion)), Math.toDegrees(casterRate(motion, change)));
    }

    private double casterRate(double[] motion, Geometry change) {
        double[][] axis = wheel.axis().find(design);
        if (axis == null) {
            return 0;
        }
        double[] rate = wheel.axis().rate(design, motion, change);
        return rate != null ? SteeringAxis.rate(axis[1], rate, 0) : (caster(STEP_MM, change) - caster(-STEP_MM, change))
                / (2 * STEP_MM);
    }

    private double caster(double factor, Geometry change) {
        Walker changed = loops.with(loops.design().plus(factor, change)).walker();
        changed.moveTo(0, new double[loops.drives()]);
        return SteeringAxis.caster(wheel.axis().find(changed)[1]);
    }

    /** A pushrod is plus where it raises the corner, as a pullrod does by growing shorter. */
    private Optional<AdjusterEffect> pushrod(Coil coil) {
        double h = 1e-3;
        return coil.withPushrod(h).map(longer -> (longer.length(design.pose(), design.geometry())
                - coil.length(design.pose(), design.geometry())) / h)
                .map(rate -> lift(rate)).map(e -> e.legLiftMm() < 0 ? e.times(-1) : e);
    }

    /** @param coilRate change of the coil's length per mm of adjustment with the wheel held still */
    private AdjusterEffect lift(double coilRate) {
        return new AdjusterEffect(AngleChange.NONE, -travelFor(coilRate) * wheel.contactPathRate(design, travelMotion)[2]);
    }

    private double lift(Geometry change) {
        double[] motion = design.motion(change);
        double travelled = travelFor(wheel.coil().rate(design.pose(), design.geometry(), motion, change));
        return -wheel.contactPathRate(design, motion)[2] - travelled * wheel.contactPathRate(design, travelMotion)[2];
    }

    /** Travel that brings the coil back to its length. */
    private double travelFor(double coilRate) {
        return -coilRate / wheel.coil().rate(design.pose(), design.geometry(), travelMotion);
    }
}
