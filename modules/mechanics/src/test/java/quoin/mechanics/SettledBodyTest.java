package quoin.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import quoin.car.Corner;
import quoin.car.PerAxle;
import quoin.car.PerCorner;

/**
 * The exact equilibrium against a rigid body that a general-purpose physics engine (ode4j) lets settle on four springs.
 * Scales show 0.1 kg and heights are read to 0.5 mm: agreement to a thousandth of that leaves nothing in doubt.
 */
class SettledBodyTest {
    private static final double KGF = 1e-4;
    private static final double MM = 1e-4;

    static Stream<Arguments> cars() {
        CarModel plain = TestCars.formula(OptionalDouble.of(220), 300);
        CarModel example = ContractExample.read("corner-loads").car();
        Turns turned = new Turns(new PerCorner<>(2.0, -3.0, 1.0, 4.0), PerCorner.all(0.0));
        Turns both = new Turns(new PerCorner<>(1.0, -2.0, 0.5, 3.0), new PerCorner<>(-1.0, 0.0, 2.0, 0.5));
        return Stream.of(
                row("two springs a side, centre of gravity off the middle", plain, Turns.NONE),
                row("one perch ten millimetres up", plain, Turns.perch(Corner.RF, 10)),
                row("four unlike springs and tyres, heavy to the left, perches turned", unlike(plain), turned),
                row("pads out of plane by 12 mm", pads(unlike(plain)), turned),
                row("the example car as it is", example, Turns.NONE),
                row("the example car after perches and rods", example, both),
                row("rising rate, bars with preloaded links, roll centres", guided(pads(example)), both));
    }

    private static Arguments row(String name, CarModel car, Turns turns) {
        return Arguments.of(Named.of(name, car), turns);
    }

    private static CarModel unlike(CarModel car) {
        PerCorner<Double> rate = new PerCorner<>(95.0, 70.0, 60.0, 88.0);
        PerCorner<Double> tyre = new PerCorner<>(210.0, 190.0, 240.0, 260.0);
        SpacePoint cg = car.sprungCg();
        return car.withSprungMass(car.sprungMassKg(), new SpacePoint(cg.xMm() + 60, cg.yMm() + 70, cg.zMm() + 40))
                .withCorners(PerCorner.of(c -> car.corners().get(c).withSpringRateNPerMm(rate.get(c))
                        .withTyreRateNPerMm(OptionalDouble.of(tyre.get(c)))));
    }

    private static CarModel pads(CarModel car) {
        PerCorner<Double> pads = new PerCorner<>(0.0, 7.0, -5.0, 2.0);
        return car.withCorners(PerCorner.of(c -> car.corners().get(c).withPadHeightMm(pads.get(c))));
    }

    private static CarModel guided(CarModel car) {
        PerCorner<CornerModel> corners = car.corners().map(m -> new CornerModel(m.xMm(), m.yMm(), m.unsprungMassKg(),
                m.springRateNPerMm(), m.motionRatio(), 0.002, m.springCompressionAtDesignMm(), m.perchPitchMmPerTurn(),
                m.rodLiftMmPerTurn(), m.tyreRateNPerMm(), m.padHeightMm()));
        return new CarModel(car.sprungMassKg(), car.sprungCg(), corners,
                new PerAxle<>(new BarModel(22, 3), new BarModel(9, -4)),
                new PerAxle<>(OptionalDouble.of(45), OptionalDouble.of(80)), OptionalDouble.empty(), 0,
                car.rideHeightPoints());
    }

    @ParameterizedTest
    @MethodSource("cars")
    void restsWhereTheEngineLeavesIt(CarModel car, Turns turns) {
        SettledBody.Rest rest = SettledBody.of(car, turns);
        Equilibrium exact = CornerLoads.solve(car, turns);
        assertTrue(exact.findings().isEmpty(), "stands on its four wheels and springs: " + exact.findings());
        for (Corner corner : Corner.values()) {
            assertEquals(rest.loadsKgf().get(corner), exact.loadsKgf().get(corner), KGF, "load " + corner);
            assertEquals(rest.wheelTravelMm().get(corner), exact.wheelTravelMm().get(corner), MM, "travel " + corner);
        }
        Map<String, Double> heights = exact.rideHeightsMm();
        assertEquals(rest.rideHeightsMm().keySet(), heights.keySet());
        rest.rideHeightsMm().forEach((name, height) -> assertEquals(height, heights.get(name), MM, name));
    }
}
