package quoin.rehearsal;

import java.util.Map;
import java.util.Objects;
import quoin.car.AdjusterKind;
import quoin.car.PerAxle;
import quoin.car.PerCorner;
import quoin.mechanics.BarModel;

/**
 * What the practice car is really like, as against what its racer believes.
 *
 * @param springFactor       real spring rate per labelled rate
 * @param motionRatio        real spring travel per wheel travel
 * @param pushrodRatio       real push- or pullrod travel per wheel travel
 * @param chassisNmPerDeg    torsional stiffness of the chassis, N m/deg
 * @param tyreRadiusMm       how much larger than the others a tyre is, mm of radius
 * @param floorMm            height of the pad tops on the bare floor, mm
 * @param levelledMm         height of the pad tops after levelling, mm
 * @param kickMm             how far a pad is off after it was moved, mm
 * @param bars               the bars as they are found: rate and preload; a link set afresh has no preload
 * @param scales             errors of the wheel scales until they are zeroed and exchanged
 * @param asFound            where the car stands with the driver in, the pads levelled and the bars off
 * @param perUnit            what one turn (or mm of shim) of an angle adjuster does to its wheel
 * @param perBumpMm          what one mm of bump does to the angles of a wheel
 * @param noise              what reading adds
 */
public record HiddenTruth(PerCorner<Double> springFactor, PerAxle<Double> motionRatio, PerAxle<Double> pushrodRatio,
        double chassisNmPerDeg, PerCorner<Double> tyreRadiusMm, PerCorner<Double> floorMm, PerCorner<Double> levelledMm,
        double kickMm, PerAxle<BarModel> bars, Scales scales, AsFound asFound, Map<AdjusterKind, Effect> perUnit,
        PerAxle<Effect> perBumpMm, Noise noise) {

    public HiddenTruth {
        Objects.requireNonNull(springFactor, "springFactor");
        Objects.requireNonNull(motionRatio, "motionRatio");
        Objects.requireNonNull(pushrodRatio, "pushrodRatio");
        Objects.requireNonNull(tyreRadiusMm, "tyreRadiusMm");
        Objects.requireNonNull(floorMm, "floorMm");
        Objects.requireNonNull(levelledMm, "levelledMm");
        Objects.requireNonNull(bars, "bars");
        Objects.requireNonNull(scales, "scales");
        Objects.requireNonNull(asFound, "asFound");
        Objects.requireNonNull(perBumpMm, "perBumpMm");
        Objects.requireNonNull(noise, "noise");
        perUnit = Map.copyOf(perUnit);
    }

    /**
     * Errors of the scales.
     *
     * @param factor what a scale shows per kg
     * @param zeroKg what it shows with nothing on it, kg
     */
    public record Scales(PerCorner<Double> factor, PerCorner<Double> zeroKg) {
        public Scales {
            Objects.requireNonNull(factor, "factor");
            Objects.requireNonNull(zeroKg, "zeroKg");
        }
    }

    /**
     * The car before anything is turned.
     *
     * @param loadsKg   the four loads, kg
     * @param heightsMm height of each point of the car by its name, mm; the frame is as flat as these allow
     * @param angles    camber, caster and toe of each wheel
     */
    public record AsFound(PerCorner<Double> loadsKg, Map<String, Double> heightsMm, PerCorner<Angles> angles) {
        public AsFound {
            Objects.requireNonNull(loadsKg, "loadsKg");
            Objects.requireNonNull(angles, "angles");
            heightsMm = Map.copyOf(heightsMm);
        }
    }

    /**
     * Angles of one wheel.
     *
     * @param camberDeg plus = top outboard
     * @param casterDeg plus = top rearward
     * @param toeDeg    plus = toe-in
     */
    public record Angles(double camberDeg, double casterDeg, double toeDeg) {

        Angles plus(double times, Effect effect) {
            return new Angles(camberDeg + times * effect.camberDeg, casterDeg + times * effect.casterDeg, toeDeg + times * effect.toeDeg);
        }
    }

    /**
     * A linear effect on one wheel.
     *
     * @param camberDeg change of camber, deg
     * @param casterDeg change of caster, deg
     * @param toeDeg    change of toe, deg
     * @param legMm     change of the corner's leg, mm at the wheel, plus = the corner rises
     */
    public record Effect(double camberDeg, double casterDeg, double toeDeg, double legMm) {
        static final Effect NONE = new Effect(0, 0, 0, 0);
    }

    /**
     * Standard deviations of what reading adds; the resolution of the instruments comes on top.
     *
     * @param frictionKg      load that friction holds on each wheel of a diagonal, kg; drawn anew at every settling
     * @param unsettledFactor how much more friction holds where the car was not settled after the last turn
     * @param scaleKg         one scale, kg
     * @param heightMm        one height, mm
     * @param angleDeg        one camber or caster, deg
     * @param toeMm           one toe on the rim chord, mm
     */
    public record Noise(double frictionKg, double unsettledFactor, double scaleKg, double heightMm, double angleDeg, double toeMm) {
        /** Perfect instruments and no friction. */
        public static final Noise NONE = new Noise(0, 1, 0, 0, 0, 0);
    }

    /** The same car under other noise. */
    public HiddenTruth with(Noise changed) {
        return new HiddenTruth(springFactor, motionRatio, pushrodRatio, chassisNmPerDeg, tyreRadiusMm, floorMm, levelledMm,
                kickMm, bars, scales, asFound, perUnit, perBumpMm, changed);
    }
}
