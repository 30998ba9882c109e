package quoin.mechanics;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import quoin.car.Corner;
import quoin.car.PerAxle;
import quoin.car.PerCorner;

/**
 * The last value that can be and the first that cannot, of every reading with a limit. The limits follow from the geometry: a sine
 * is below 1, a wheel stands ahead of another one or it does not.
 */
class EdgesTest {
    private static final double HAIR = 1e-9;
    private static final PerCorner<StringToe.Gaps> GAPS = PerCorner.all(new StringToe.Gaps(140, 140));
    private static final PerAxle<Double> TRACK = new PerAxle<>(1500.0, 1500.0);
    private static final PerAxle<Double> CHORD = new PerAxle<>(380.0, 360.0);
    private static final StringToe.Sides BASE = new StringToe.Sides(2500, 2500);

    private static Arguments edge(String field, Executable can, Executable cannot) {
        return Arguments.of(field, can, cannot);
    }

    static Stream<Arguments> instruments() {
        return Stream.of(
                edge("scaleResolution_kg", () -> new ScaleErrors(0, 0, 0, 1), () -> new ScaleErrors(-HAIR, 0, 0, 1)),
                edge("repeatabilitySd_kg", () -> new ScaleErrors(0, 0, 0, 1), () -> new ScaleErrors(0, -HAIR, 0, 1)),
                edge("calibrationRelativeSd", () -> new ScaleErrors(0, 0, 0, 1), () -> new ScaleErrors(0, 0, -HAIR, 1)),
                edge("readingsAveraged", () -> new ScaleErrors(0, 0, 0, 1), () -> new ScaleErrors(0, 0, 0, 0)),
                edge("load_kg", () -> ScaleClass.III.initialLimitKg(0, 1), () -> ScaleClass.III.initialLimitKg(-HAIR, 1)),
                edge("scaleStep_kg", () -> ScaleClass.III.initialLimitKg(1, HAIR), () -> ScaleClass.III.initialLimitKg(1, 0)),
                edge("plate_mm", () -> new PlateToe(1400, 1400, HAIR), () -> new PlateToe(1400, 1400, 0)),
                edge("front_mm", () -> new PlateToe(1400, 1899, 500), () -> new PlateToe(1400, 1900, 500)),
                edge("front_mm", () -> new PlateToe(1899, 1400, 500), () -> new PlateToe(1900, 1400, 500)),
                edge("top_mm", () -> new PlumbCamber(0, 329, 330), () -> new PlumbCamber(0, 330, 330)),
                edge("bottom_mm", () -> new PlumbCamber(1, 0, 330), () -> new PlumbCamber(1, -HAIR, 330)),
                edge("inner_deg", () -> new TurnToeOut(89.9, 10), () -> new TurnToeOut(90, 10)),
                edge("outer_deg", () -> new TurnToeOut(10, HAIR), () -> new TurnToeOut(10, 0)),
                edge("gaugeReading_deg", () -> new SlopeCamber(true, 44.9, 0, 0, 0), () -> new SlopeCamber(true, 45, 0, 0, 0)),
                edge("toeIn_deg", () -> new SlopeCamber(true, 0, -44.9, 0, 0), () -> new SlopeCamber(true, 0, -45, 0, 0)),
                edge("floorRisesToLeft_deg", () -> new SlopeCamber(true, 0, 0, 44.9, 0), () -> new SlopeCamber(true, 0, 0, 45, 0)),
                edge("floorRisesForward_deg", () -> new SlopeCamber(true, 0, 0, 0, 44.9), () -> new SlopeCamber(true, 0, 0, 0, 45)),
                edge("toeIn_deg", () -> CasterSweep.symmetric(true, 89.9, 20, 0, 1, -1), () -> CasterSweep.symmetric(true, 90, 20, 0, 1, -1)),
                edge("steerAngle_deg", () -> CasterSweep.symmetric(true, 0, 89.9, 0, 1, -1), () -> CasterSweep.symmetric(true, 0, 90, 0, 1, -1)),
                edge("camber_deg", () -> CasterSweep.symmetric(true, 0, 20, 89.9, 1, -1), () -> CasterSweep.symmetric(true, 0, 20, 90, 1, -1)),
                edge("steerAngle_deg", () -> sweep(3, HAIR, -20), () -> sweep(3, 0, -20)),
                edge("steerAngle_deg", () -> sweep(3, 20, -HAIR), () -> sweep(3, 20, 0)),
                edge("steerAngle_deg", () -> sweep(3, 20, -20), () -> sweep(2, 20, -20)),
                edge("values", () -> new RepeatReadings(List.of(1.0, 2.0, 4.0)), () -> new RepeatReadings(List.of(1.0, 2.0))),
                edge("standardUncertainty", () -> MeasurementModel.Input.of(1, 0), () -> MeasurementModel.Input.of(1, -HAIR)),
                edge("degreesOfFreedom", () -> new MeasurementModel.Input(1, 1, OptionalDouble.of(HAIR)),
                        () -> new MeasurementModel.Input(1, 1, OptionalDouble.of(0))));
    }

    private static CasterSweep sweep(int cambers, double left, double right) {
        return new CasterSweep(false, 0, new double[] {0, left, right}, new double[cambers]);
    }

    static Stream<Arguments> lengths() {
        return Stream.of(
                edge("toe_mm", () -> WheelAngles.toeDeg(371.9, 372), () -> WheelAngles.toeDeg(372, 372)),
                edge("toe_mm", () -> WheelAngles.toeDeg(-371.9, 372), () -> WheelAngles.toeDeg(-372, 372)),
                edge("toe_deg", () -> WheelAngles.toeMm(-89.9, 372), () -> WheelAngles.toeMm(-90, 372)),
                edge("left.frontWheelFrontEdge_mm", () -> strings(Corner.LF, 379, 0), () -> strings(Corner.LF, 380, 0)),
                edge("right.rearWheelFrontEdge_mm", () -> strings(Corner.RR, 0, 359), () -> strings(Corner.RR, 0, 360)),
                edge("left.rearWheelFrontEdge_mm", () -> strings(Corner.LR, 0, 0), () -> strings(Corner.LR, -HAIR, 0)),
                edge("right.frontWheelRearEdge_mm", () -> strings(Corner.RF, 0, 0), () -> strings(Corner.RF, 0, -HAIR)),
                edge("travel_mm", () -> dials(0, 1), () -> dials(0)),
                edge("travel_mm", () -> dials(0, 1, 2), () -> dials(0, 1, 1)),
                edge("travel_mm", () -> dials(0, 10), () -> dials(1e-6, 10)),
                edge("front_mm", () -> new BumpSteerFit(250, List.of(new BumpSteerFit.Position(0, 0, 249), new BumpSteerFit.Position(1, 0, 0))),
                        () -> new BumpSteerFit(250, List.of(new BumpSteerFit.Position(0, 0, 250), new BumpSteerFit.Position(1, 0, 0)))),
                edge("diagonalLfRr_mm", () -> plan(2500, 3999, 2915), () -> plan(2500, 4000, 2915)),
                edge("diagonalRfLr_mm", () -> plan(2500, 2915, 1001), () -> plan(2500, 2915, 1000)),
                edge("wheelbaseRight_mm", () -> plan(2500, 2915, 2915), () -> plan(0, 2915, 2915)),
                edge("frontAxleLevel_kgf", () -> lift(999, 500, 600), () -> lift(1000, 500, 600)),
                edge("frontAxleRearLifted_kgf", () -> lift(500, HAIR, 600), () -> lift(500, 0, 600)),
                edge("rearLift_mm", () -> lift(500, 510, 2499), () -> lift(500, 510, 2500)),
                edge("rearLift_mm", () -> new AxleLift(1000, 500, 510, 2500, 300, 400, 2401),
                        () -> new AxleLift(1000, 500, 510, 2500, 300, 400, 2402)),
                edge("rearLift_mm", () -> series(0, 500), () -> series(-HAIR, 500)),
                edge("frontAxleLevel_kgf", () -> series(0, 999), () -> series(0, 1000)),
                edge("frontAxleLevel_kgf", () -> series(0, HAIR), () -> series(0, 0)),
                edge("points", () -> LineFit.through(List.of(new LineFit.Point(0, 1), new LineFit.Point(1, 1), new LineFit.Point(1, 2))),
                        () -> LineFit.through(List.of(new LineFit.Point(1, 1), new LineFit.Point(1, 2)))),
                edge("readings.x", () -> scale(0), () -> scale(-1)),
                edge("readings.x", () -> scale(1), () -> scale(2)));
    }

    private static StringToe strings(Corner corner, double front, double rear) {
        return new StringToe(GAPS.with(corner, new StringToe.Gaps(front, rear)), TRACK, BASE, CHORD);
    }

    private static BumpSteerFit dials(double... travels) {
        List<BumpSteerFit.Position> positions = new ArrayList<>();
        for (double travel : travels) {
            positions.add(new BumpSteerFit.Position(travel, 0, 0));
        }
        return new BumpSteerFit(250, positions);
    }

    private static WheelPlan plan(double rightBase, double lfToRr, double rfToLr) {
        return new WheelPlan(TRACK, new StringToe.Sides(2500, rightBase), lfToRr, rfToLr);
    }

    private static AxleLift lift(double level, double lifted, double lift) {
        return new AxleLift(1000, level, lifted, 2500, 300, 300, lift);
    }

    private static LiftSeries series(double lift, double front) {
        return new LiftSeries(1000, 2500, 300, 300, List.of(new LiftSeries.Lift(lift, front), new LiftSeries.Lift(500, 510)));
    }

    private static ScaleFactors scale(int number) {
        return ScaleFactors.solve(List.of(0.01, 0.01), List.of(new ScaleFactors.Reading(number, "x", 80, 0.1)), List.of());
    }

    static Stream<Arguments> cars() {
        CarModel car = TestCars.formula(OptionalDouble.of(200), 300);
        CornerModel rf = car.corners().rf();
        CornerModel rr = car.corners().rr();
        return Stream.of(
                edge("corners.LF.y_mm", () -> standing(car, Corner.RF, rf.xMm(), 759.9), () -> standing(car, Corner.RF, rf.xMm(), 760)),
                edge("corners.RF.x_mm", () -> standing(car, Corner.RR, -HAIR, rr.yMm()), () -> standing(car, Corner.RR, rf.xMm(), rr.yMm())),
                edge("rollCentreHeight_mm.front", () -> guided(car, 0), () -> guided(car, 1)),
                edge("sprungMass_kg", () -> car.with(List.of(new PointMass(HAIR - car.sprungMassKg(), car.sprungCg()))),
                        () -> car.with(List.of(new PointMass(-car.sprungMassKg(), car.sprungCg())))),
                edge("antiRollBars.rear.wheelRateInRoll_N_per_mm", () -> car.withBars(new PerAxle<>(BarModel.DISCONNECTED, new BarModel(0, 1))),
                        () -> car.withBars(new PerAxle<>(BarModel.DISCONNECTED, new BarModel(-HAIR, 1)))),
                edge("antiRollBars.front.linkPreloadOffset_mm", () -> car.withBars(PerAxle.both(new BarModel(1, 1))),
                        () -> car.withBars(new PerAxle<>(new BarModel(1, Double.NaN), new BarModel(1, 1)))),
                edge("points.RR", () -> TransferVector.of(PerCorner.of(c -> TestCars.CONTACTS.get(c)), "points"),
                        () -> TransferVector.of(TestCars.CONTACTS.with(Corner.RR, TestCars.CONTACTS.lr()), "points")),
                edge("points", () -> TransferVector.of(square(0.001), "points"), () -> TransferVector.of(square(0), "points")));
    }

    private static PerCorner<PlanPoint> square(double outOfLine) {
        return new PerCorner<>(new PlanPoint(1, 1), new PlanPoint(0, 0), new PlanPoint(0, 2), new PlanPoint(outOfLine, 1));
    }

    private static CarModel standing(CarModel car, Corner corner, double x, double y) {
        CornerModel was = car.corners().get(corner);
        return car.withCorners(car.corners().with(corner, new CornerModel(x, y, 0, was.springRateNPerMm(), 1, 0, 0, 1, 1, was.tyreRateNPerMm(), 0)));
    }

    private static CarModel guided(CarModel car, double height) {
        CarModel narrow = standing(car, Corner.RF, car.corners().rf().xMm(), 0);
        return new CarModel(narrow.sprungMassKg(), narrow.sprungCg(), narrow.corners(), narrow.bars(),
                PerAxle.both(OptionalDouble.of(height)), OptionalDouble.empty(), 0, narrow.rideHeightPoints());
    }

    @ParameterizedTest(name = "{index} {0}")
    @MethodSource({"instruments", "lengths", "cars"})
    void whatCannotBeIsRefusedByNameAndNothingElse(String field, Executable can, Executable cannot) {
        assertDoesNotThrow(can);
        InvalidInputException refusal = assertThrows(InvalidInputException.class, cannot);
        assertEquals(field, refusal.field());
        assertFalse(refusal.getMessage().isBlank());
        assertEquals(field + ": " + refusal.getMessage(), refusal.toString());
    }

    /** A suspension module from outside speaks one language and refuses in its own words. */
    @Test
    void aRefusalInWordsOfItsOwn() {
        InvalidInputException own = new InvalidInputException("suspension.upright", "must be longer than the rod");
        assertEquals("suspension.upright", own.field());
        assertEquals("must be longer than the rod", own.getMessage());
        assertEquals("suspension.upright: must be longer than the rod", own.toString());
        assertEquals("corners: is missing", InvalidInputException.missing("corners").toString());
        InvalidInputException missing = assertThrows(InvalidInputException.class, () -> CornerLoads.solve(null, Turns.NONE));
        assertEquals("car", missing.field());
        assertEquals("turns", assertThrows(InvalidInputException.class, () -> CornerLoads.solve(TestCars.formula(OptionalDouble.of(200), 300), null)).field());
    }

    /** A string askew by more than the side it runs along is told for the side it is on. */
    @Test
    void aSkewStringIsNamedByItsSide() {
        PerAxle<Double> even = new PerAxle<>(1500.0, 1500.0);
        StringToe.Gaps far = new StringToe.Gaps(2600, 2600);
        StringToe left = new StringToe(GAPS.with(Corner.LF, far), even, new StringToe.Sides(2460, 2500), CHORD);
        assertEquals("wheelbaseLeft_mm", assertThrows(InvalidInputException.class, left::independent).field());
        StringToe right = new StringToe(GAPS.with(Corner.RF, far), even, new StringToe.Sides(2500, 2460), CHORD);
        assertEquals("wheelbaseRight_mm", assertThrows(InvalidInputException.class, right::independent).field());
        assertDoesNotThrow(() -> strings(Corner.RF, 2459, 2459));
    }
}
