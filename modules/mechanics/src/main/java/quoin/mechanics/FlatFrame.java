package quoin.mechanics;

import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.PerAxle;
import quoin.car.PerCorner;

/**
 * Closed forms of the flat case: small angles, constant motion ratio, centre of gravity in the road plane. A second
 * opinion on {@link CornerLoads}, and the arithmetic that can be checked by hand.
 *
 * <p>A body on four springs is indeterminate to the first degree: loads = particular solution + couple * n with
 * n = (1/tf, -1/tf, -1/tr, +1/tr) on LF RF LR RR. A perch raised by e at the wheel, a pad, or a bar link turns the axles
 * against each other; the couple that answers is that angle divided by the warp compliance C. Derived here; verified by
 * energy minimisation. Against the exact solution it is off by 0.15 % of the cross change at 10 mm, and by up to 0.4 %
 * of cross at four turns, because the centre of gravity is above the road.
 *
 * @param trackMm distance between the contact points of each axle
 * @param wheelRateNPerMm spring rate times motion ratio squared
 * @param tyreComplianceMmPerN 0 = rigid
 * @param barRateNPerMm per mm of left-right difference of travel; half of {@link BarModel#wheelRateInRollNPerMm()}
 * @param chassisComplianceRadPerNmm 0 = rigid
 */
public record FlatFrame(PerAxle<Double> trackMm, PerCorner<Double> wheelRateNPerMm,
        PerCorner<Double> tyreComplianceMmPerN, PerAxle<Double> barRateNPerMm, double chassisComplianceRadPerNmm) {

    public static FlatFrame of(CarModel car) {
        double chassis = car.torsionalStiffnessNmPerDeg().isPresent()
                ? Math.PI / 180 / (1000 * car.torsionalStiffnessNmPerDeg().getAsDouble()) : 0;
        return new FlatFrame(new PerAxle<>(car.trackMm(Axle.FRONT), car.trackMm(Axle.REAR)),
                car.corners().map(CornerModel::wheelRateNPerMm), car.corners().map(CornerModel::tyreComplianceMmPerN),
                car.bars().map(bar -> bar.wheelRateInRollNPerMm() / 2), chassis);
    }

    /** Load change per N mm of couple, in 1/mm; the only change that adjusters inside the car can make. */
    public PerCorner<Double> transferVectorPerMm() {
        return PerCorner.of(c -> (c == Corner.LF || c == Corner.RR ? 1 : -1) / trackMm.get(c.axle()));
    }

    /** C: angle between the axles per couple, in rad/(N mm); springs, bars, tyres and chassis in series. */
    public double warpComplianceRadPerNmm() {
        double sum = chassisComplianceRadPerNmm;
        PerCorner<Double> n = transferVectorPerMm();
        PerCorner<Double> travel = travelMm(n, PerAxle.both(0.0));
        for (Corner corner : Corner.values()) {
            sum += n.get(corner) * (travel.get(corner) + n.get(corner) * tyreComplianceMmPerN.get(corner));
        }
        return sum;
    }

    /**
     * @param raisedAtWheelMm perch turned, as wheel travel: pitch * turns / motion ratio (or rod lift * turns)
     * @param padsMm pad heights
     * @param barLinkMm link offset per axle, + loads the left wheel
     * @return the couple in N mm, + loads LF and RR
     */
    public double coupleNmm(PerCorner<Double> raisedAtWheelMm, PerCorner<Double> padsMm, PerAxle<Double> barLinkMm) {
        PerCorner<Double> spring = raisedAtWheelMm.zip(wheelRateNPerMm, (e, k) -> -e * k);
        PerCorner<Double> free = travelMm(spring, barLinkMm);
        PerCorner<Double> n = transferVectorPerMm();
        double warp = 0;
        for (Corner corner : Corner.values()) {
            warp += n.get(corner) * (padsMm.get(corner) - free.get(corner));
        }
        return warp / warpComplianceRadPerNmm();
    }

    /** The couple of perches or rods alone. */
    public double coupleNmm(PerCorner<Double> raisedAtWheelMm) {
        return coupleNmm(raisedAtWheelMm, PerCorner.all(0.0), PerAxle.both(0.0));
    }

    /** Change of the four loads in N under a couple. */
    public PerCorner<Double> loadChangeN(double coupleNmm) {
        return transferVectorPerMm().map(n -> n * coupleNmm);
    }

    /** Change of RF + LR in N under a couple. */
    public double crossChangeN(double coupleNmm) {
        PerCorner<Double> change = loadChangeN(coupleNmm);
        return change.rf() + change.lr();
    }

    /** How far the body rises over each wheel, in mm, when perches are raised. */
    public PerCorner<Double> bodyRiseMm(PerCorner<Double> raisedAtWheelMm) {
        PerCorner<Double> change = loadChangeN(coupleNmm(raisedAtWheelMm));
        PerCorner<Double> spring = PerCorner.of(
                c -> change.get(c) - raisedAtWheelMm.get(c) * wheelRateNPerMm.get(c));
        PerCorner<Double> travel = travelMm(spring, PerAxle.both(0.0));
        return PerCorner.of(c -> -travel.get(c) - change.get(c) * tyreComplianceMmPerN.get(c));
    }

    /**
     * Perch movements at the wheel that make a couple and leave the body where it is: each corner makes up for its own
     * compression. Bars disconnected, chassis rigid.
     */
    public PerCorner<Double> attitudeNeutralMm(double coupleNmm) {
        return PerCorner.of(c -> transferVectorPerMm().get(c) * coupleNmm
                * (1 / wheelRateNPerMm.get(c) + tyreComplianceMmPerN.get(c)));
    }

    /** Wheel travels of each axle under forces at its wheels, spring and bar together. */
    private PerCorner<Double> travelMm(PerCorner<Double> forceN, PerAxle<Double> barLinkMm) {
        return PerCorner.of(c -> {
            Corner other = c.acrossAxle();
            double bar = barRateNPerMm.get(c.axle());
            double link = bar * barLinkMm.get(c.axle()) * (c.isLeft() ? 1 : -1);
            double own = wheelRateNPerMm.get(c) + bar;
            double across = wheelRateNPerMm.get(other) + bar;
            return (across * (forceN.get(c) - link) + bar * (forceN.get(other) + link)) / (own * across - bar * bar);
        });
    }
}
