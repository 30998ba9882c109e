package quoin.mechanics;

/**
 * A known mass carried by the body: the driver in the seat, a can of fuel, ballast. A negative mass takes it out.
 *
 * @param massKg mass in kg
 * @param place where its centre of gravity is, in body axes at the design attitude
 */
public record PointMass(double massKg, SpacePoint place) {
    public PointMass {
        Require.finite("massKg", massKg);
        Require.present("place", place);
    }

    /** The same mass taken out instead of put in, or the other way round. */
    public PointMass removed() {
        return new PointMass(-massKg, place);
    }
}
