package quoin.adjustment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.AssumedCar;
import quoin.car.Assumptions;
import quoin.car.AxleSetup;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CornerSetup;
import quoin.car.CrossGoal;
import quoin.car.HeightPoint;
import quoin.car.Instruments;
import quoin.car.LoadCase;
import quoin.car.Masses;
import quoin.car.PerAxle;
import quoin.car.PerCorner;
import quoin.car.Setting;
import quoin.car.SuspensionChoice;
import quoin.car.Targets;
import quoin.mechanics.CornerLoads;
import quoin.mechanics.CornerModel;
import quoin.mechanics.Equilibrium;
import quoin.mechanics.StateFit;

/** A car of the garage before the exact mechanics: it stands as read, and what is turned moves it by its thread. */
class CarModelsTest {
    private static final PerCorner<Double> LOADS = new PerCorner<>(118.0, 104.0, 128.0, 150.0);

    private static Adjuster thread(AdjusterKind kind, Corner corner, double pitch, boolean bothEnds) {
        return Adjuster.unmeasured(new AdjusterId(kind, corner), new Setting.Thread(pitch, bothEnds, 8, "notch"));
    }

    /** Front perches of 1.5 mm and rods with two ends of 1 mm; at the rear rods only, shimmed perches. */
    private static AssumedCar car(double cgHeightMm) {
        PerCorner<CornerSetup> corners = PerCorner.of(c -> new CornerSetup(OptionalDouble.of(c.isFront() ? 90 : 80), OptionalDouble.of(0.75),
                OptionalDouble.of(0.8), OptionalDouble.of(200), OptionalDouble.of(c.isFront() ? 14 : 16), OptionalDouble.empty(),
                c.isFront() ? List.of(thread(AdjusterKind.PERCH, c, 1.5, false), thread(AdjusterKind.PUSHROD, c, 1, true))
                        : List.of(Adjuster.unmeasured(new AdjusterId(AdjusterKind.PERCH, c), new Setting.Shims(List.of(), 4)),
                                thread(AdjusterKind.PUSHROD, c, 1.25, false))));
        List<HeightPoint> points = new ArrayList<>();
        for (Corner c : Corner.values()) {
            points.add(new HeightPoint("under " + c, Optional.of(c), OptionalDouble.of(c.isFront() ? -250 : -2100),
                    OptionalDouble.of(c.isLeft() ? 300 : -300)));
        }
        SuspensionChoice measured = new SuspensionChoice("measured", Map.of());
        Car car = new Car("c", "C", 2380, new PerAxle<>(new AxleSetup(1440, Optional.empty(), measured), new AxleSetup(1420, Optional.empty(), measured)),
                corners, new Masses(OptionalDouble.of(500), OptionalDouble.of(cgHeightMm), List.of()), points,
                new Targets(Map.of(), CrossGoal.EQUAL_DIAGONALS), LoadCase.unknown(), Instruments.usual(), List.of(Corner.values()));
        return Assumptions.complete(car);
    }

    @Test
    void theCarStandsAsItWasRead() {
        Map<String, Double> heights = Map.of("under LF", 41.0, "under RF", 43.0, "under LR", 55.0, "under RR", 57.0);
        StateFit.FittedCar fitted = CarModels.standing(car(300), LOADS, heights);
        Equilibrium state = CornerLoads.solve(fitted.car(), fitted.turns());
        for (Corner c : Corner.values()) {
            assertEquals(LOADS.get(c), state.loadsKgf().get(c), 1e-8);
        }
        heights.forEach((name, mm) -> assertEquals(mm, state.rideHeightsMm().get(name), 1e-6, name));
        assertEquals(500, fitted.car().totalMassKg(), 1e-9);
        assertEquals(2380, fitted.car().wheelbaseMm(), 1e-9);
    }

    /** Handbooks' balance of moments: total mass times its height is that of the sprung mass and that of the wheels. */
    @Test
    void theWheelsTakeTheirShareOfTheHeightOfTheCentreOfGravity() {
        for (double height : new double[] {400, 250}) {
            double wheel = height == 400 ? 270 : 225;
            double sprung = CarModels.standing(car(height), LOADS, Map.of()).car().sprungCg().zMm();
            assertEquals(500 * height, 440 * sprung + 60 * wheel, 1e-6, "wheel centres are not above " + wheel + " mm");
        }
    }

    @Test
    void whatIsTurnedMovesByItsThread() {
        PerCorner<CornerModel> corners = CarModels.standing(car(300), LOADS, Map.of()).car().corners();
        assertEquals(1.5, corners.lf().perchPitchMmPerTurn());
        assertEquals(2 / 0.8, corners.lf().rodLiftMmPerTurn(), 1e-12, "two ends, over the rod's ratio");
        assertEquals(0, corners.rr().perchPitchMmPerTurn(), "shims are not turned");
        assertEquals(1.25 / 0.8, corners.rr().rodLiftMmPerTurn(), 1e-12);
        for (Corner c : Corner.values()) {
            assertEquals(c.isFront() ? 90 : 80, corners.get(c).springRateNPerMm());
            assertEquals(0.75, corners.get(c).motionRatio());
            assertEquals(200, corners.get(c).tyreRateNPerMm().orElseThrow());
            assertEquals(c.isFront() ? 14 : 16, corners.get(c).unsprungMassKg());
        }
    }

    @Test
    void aCarNotWeighedIsSpreadEvenly() {
        assertEquals(PerCorner.all(125.0), CarModels.unweighed(car(300)));
    }
}
