package quoin.garage.draft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quoin.car.Adjuster;
import quoin.car.AdjusterKind;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CornerSetup;
import quoin.car.CrossGoal;
import quoin.car.KnownMass;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Setting;
import quoin.car.Target;
import quoin.quantities.DecimalMark;
import quoin.quantities.UnitPreferences;
import quoin.rehearsal.Ouzel23;
import quoin.suspension.spi.SuspensionTypes;

class CarDraftTest {

    private static final SuspensionTypes NONE = new SuspensionTypes(List.of());

    private static final FigureText METRIC = new FigureText(UnitPreferences.metric(), true);

    private static CarDraft needed() {
        return CarDraft.blank(METRIC, NONE).with("name", "Ouzel").with("wheelbase", "2380").with("tracks.front", "1440")
                .with("tracks.rear", "1420");
    }

    private static Car car(CarDraft draft) {
        DraftResult result = draft.read();
        assertEquals(List.of(), result.problems());
        return result.car().orElseThrow();
    }

    private static CornerSetup lf(CarDraft draft) {
        return car(draft).corners().lf();
    }

    @Test
    void nameWheelbaseAndTracksAreEnough() {
        Car car = car(needed());
        assertEquals(2380, car.wheelbaseMm());
        assertEquals(1420, car.trackMm(Axle.REAR));
        assertEquals(CornerSetup.unknown(), car.corners().rr());
        assertEquals(List.of("LF point", "RF point", "LR point", "RR point"), car.heightPoints().stream().map(p -> p.name()).toList());
        assertEquals(List.of(), car.masses().known());
        assertEquals(Optional.of(new Target(50, 0.3)), car.targets().of(ReadingId.ofCar(ReadingKind.CROSS)));
        assertEquals(List.of(), needed().read().warnings());
    }

    @Test
    void blankFormNamesExactlyWhatIsNeeded() {
        DraftResult result = CarDraft.blank(METRIC, NONE).read();
        assertTrue(result.car().isEmpty());
        assertEquals(List.of("name", "wheelbase", "tracks.front", "tracks.rear"),
                result.problems().stream().map(Remark::path).toList());
    }

    /** 93.7 in = 2379.98 mm, 2380 mm = 2.38 m: the inch is 25.4 mm exactly (NIST SP 811). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"2380|2380", "2380 mm|2380", "2,38 m|2380", "93.7 in|2379.98", "238 cm|2380",
        "93 45/64 in|2380.059375"})
    void readsWheelbaseInAnyLengthUnit(String typed, double mm) {
        assertEquals(mm, car(needed().with("wheelbase", typed)).wheelbaseMm(), 1e-9);
    }

    /** 350 lb/in = 61.294 N/mm, 300 lb/in = 52.538 N/mm: pound-force 4.4482216152605 N, inch 25.4 mm (NIST SP 811). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"350 lb/in|61.29439", "300 LB/IN|52.53805", "61,3|61.3", "61.3 N/mm|61.3"})
    void readsSpringRates(String typed, double nPerMm) {
        assertEquals(nPerMm, lf(needed().with("corners.LF.springRate", typed)).springRateNPerMm().getAsDouble(), 1e-5);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"-1°30'|-1.5", "-2,2|-2.2", "-2.2 deg|-2.2", "-1 deg 30 min|-1.5"})
    void readsAngles(String typed, double deg) {
        assertEquals(deg, car(needed().with("targets.camber.LF.value", typed)).targets()
                .of(ReadingId.of(ReadingKind.CAMBER, Corner.LF)).orElseThrow().value(), 1e-12);
    }

    @Test
    void readsPoundsAndStones() {
        assertEquals(52.163, lf(needed().with("corners.LF.unsprung", "115 lb")).unsprungMassKg().getAsDouble(), 1e-3);
        assertEquals(86.18, car(needed().with("masses.total", "13st 8lb")).masses().totalKg().getAsDouble(), 0.01);
    }

    /** The difference of the gaps is chord * sin(toe): 0.4 mm out on 372 mm is asin(-0.4 / 372) = -0.06161 deg. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"-0.4|-0.061609", "0.4 out|-0.061609", "0,4mm out|-0.061609", "0.8 toe-in|0.123217",
        "0°06'|0.1", "-0.1 deg|-0.1"})
    void readsToeAtTheRimOrAsAngle(String typed, double deg) {
        CarDraft draft = needed().with("corners.LF.rimChord", "372").with("targets.toe.LF.value", typed);
        assertEquals(deg, car(draft).targets().of(ReadingId.of(ReadingKind.TOE, Corner.LF)).orElseThrow().value(), 1e-6);
    }

    @Test
    void inchesInAToeAreQuestioned() {
        DraftResult result = needed().with("targets.toe.LF.value", "0.8 in").read();
        assertEquals(List.of("targets.toe.LF.value"), result.warnings().stream().map(Remark::path).toList());
        assertTrue(result.warnings().get(0).sentence().contains("20.3 mm"), result.warnings().get(0).sentence());
    }

    @Test
    void motionRatioAboveOneIsQuestionedAndKept() {
        DraftResult result = needed().with("corners.LF.motionRatio", "1.218").read();
        Remark warning = result.warnings().get(0);
        assertEquals("corners.LF.motionRatio", warning.path());
        assertTrue(warning.remedy().contains("did you type wheel per spring? 0.821 = 1/1.218"), warning.remedy());
        assertEquals(OptionalDouble.of(1.218), result.car().orElseThrow().corners().lf().motionRatio());
    }

    @ParameterizedTest
    @ValueSource(strings = {"about 60", "61.3.1", "1/0", "61 furlongs", "-61.3", "0"})
    void unreadableTextStaysAsTypedAndIsAProblem(String typed) {
        CarDraft draft = needed().with("corners.LF.springRate", typed);
        DraftResult result = draft.read();
        assertTrue(result.car().isEmpty());
        assertEquals(List.of("corners.LF.springRate"), result.problems().stream().map(Remark::path).toList());
        assertTrue(result.problems().get(0).sentence().startsWith("LF spring rate: "), result.problems().get(0).sentence());
        assertEquals(typed, draft.with("name", "other").addMass().copyLeftToRight().text("corners.LF.springRate"));
        assertEquals(typed, draft.copyLeftToRight().text("corners.RF.springRate"));
    }

    @Test
    void theUnitOfAnotherDimensionIsAProblemWithARemedy() {
        Remark problem = needed().with("wheelbase", "2380 kg").read().problems().get(0);
        assertEquals("wheelbase", problem.path());
        assertFalse(problem.remedy().isBlank());
    }

    @Test
    void unusualSizesAreQuestionedOnly() {
        DraftResult result = needed().with("wheelbase", "93.7").read();
        assertEquals(List.of("wheelbase"), result.warnings().stream().map(Remark::path).toList());
        assertEquals(93.7, result.car().orElseThrow().wheelbaseMm());
    }

    @Test
    void threadOfAPerch() {
        CarDraft draft = needed().with("corners.LF.perch.how", "thread").with("corners.LF.perch.pitch", "1,5")
                .with("corners.LF.perch.steps", "8").with("corners.LF.perch.start", "64.1").with("corners.LF.perch.min", "40")
                .with("corners.LF.perch.max", "86").with("corners.LF.perch.locked", "yes");
        Adjuster perch = lf(draft).adjuster(AdjusterKind.PERCH).orElseThrow();
        assertEquals(new Setting.Thread(1.5, false, 8, "notch"), perch.setting());
        assertEquals(OptionalDouble.of(64.1), perch.startMm());
        assertTrue(perch.locked());
    }

    /** A 3/8-24 rod with a left and a right-hand thread moves 2 * 25.4 / 24 = 2.117 mm a turn. */
    @Test
    void threadsPerInchAreTypedAsAFraction() {
        CarDraft draft = needed().with("corners.RR.pushrod.how", "thread").with("corners.RR.pushrod.pitch", "1/24 in")
                .with("corners.RR.pushrod.ends", "both").with("corners.RR.pushrod.steps", "6");
        Setting setting = car(draft).corners().rr().adjuster(AdjusterKind.PUSHROD).orElseThrow().setting();
        assertEquals(2.117, ((Setting.Thread) setting).mmPerTurn(), 5e-4);
        assertEquals("flat", ((Setting.Thread) setting).stepName());
    }

    @Test
    void threadNeedsAPitchAndARangeThatIsOne() {
        CarDraft draft = needed().with("corners.LF.perch.how", "thread");
        assertEquals("corners.LF.perch.pitch", draft.read().problems().get(0).path());
        CarDraft range = draft.with("corners.LF.perch.pitch", "1.5").with("corners.LF.perch.min", "86").with("corners.LF.perch.max", "40");
        assertEquals("corners.LF.perch.max", range.read().problems().get(0).path());
        CarDraft steps = draft.with("corners.LF.perch.pitch", "1.5").with("corners.LF.perch.steps", "7.5");
        assertEquals("corners.LF.perch.steps", steps.read().problems().get(0).path());
    }

    @Test
    void camberShimsFromStock() {
        CarDraft draft = needed().with("corners.LF.camberShim.how", "shims").with("corners.LF.camberShim.pack", "2")
                .with("corners.LF.camberShim.stock", "0,5 x 4; 1 x 6, 1/16in*2");
        assertEquals(new Setting.Shims(List.of(new Setting.Shim(0.5, 4), new Setting.Shim(1, 6), new Setting.Shim(1.5875, 2)), 2),
                lf(draft).adjuster(AdjusterKind.CAMBER_SHIM).orElseThrow().setting());
        Remark problem = draft.with("corners.LF.camberShim.stock", "four of half a mm").read().problems().get(0);
        assertEquals("corners.LF.camberShim.stock", problem.path());
    }

    @Test
    void massNeedsItsPlaceOrNothing() {
        CarDraft draft = needed().with("masses.known.1.mass", "86");
        assertEquals(List.of("masses.known.1.x", "masses.known.1.y", "masses.known.1.z"),
                draft.read().problems().stream().map(Remark::path).toList());
        CarDraft placed = draft.with("masses.known.1.x", "-1420").with("masses.known.1.y", "-330").with("masses.known.1.z", "330");
        assertEquals(List.of(new KnownMass("driver", KnownMass.Role.DRIVER, 86, -1420, -330, 330)), car(placed).masses().known());
        assertEquals(car(needed()), car(placed.removeMass(1)));
    }

    @Test
    void heightPointsAreAddedAndRemovedWithTheirTargets() {
        CarDraft draft = needed().addHeightPoint().with("heightPoints.5.name", "splitter").with("targets.height.5.value", "45");
        Car car = car(draft);
        ReadingId splitter = new ReadingId(ReadingKind.HEIGHT, "splitter");
        assertEquals(Optional.empty(), car.heightPoints().get(4).corner());
        assertEquals(Optional.of(new Target(45, 1)), car.targets().of(splitter));
        CarDraft removed = draft.removeHeightPoint(2);
        assertEquals(List.of("LF point", "LR point", "RR point", "splitter"),
                car(removed).heightPoints().stream().map(p -> p.name()).toList());
        assertTrue(removed.read().warnings().get(0).words().contains("RF"));
        assertTrue(car(removed.removeHeightPoint(5)).targets().of(splitter).isEmpty());
        assertEquals("heightPoints.3.name", draft.with("heightPoints.3.name", "LF point").read().problems().get(0).path());
    }

    @Test
    void renamedPointTakesItsTargetAlong() {
        Car car = Ouzel23.car();
        Car renamed = car(CarDraft.from(car, METRIC, NONE).with("heightPoints.1.name", "LF punch mark"));
        assertEquals(car.targets().of(new ReadingId(ReadingKind.HEIGHT, "LF rail")),
                renamed.targets().of(new ReadingId(ReadingKind.HEIGHT, "LF punch mark")));
        assertEquals(car.targets().readings().size(), renamed.targets().readings().size());
    }

    @Test
    void targetsNeedAValueAndTakeAUsualTolerance() {
        DraftResult result = needed().with("targets.camber.LF.value", "-2.2").read();
        assertEquals(Optional.of(new Target(-2.2, 0.1)), result.car().orElseThrow().targets().of(ReadingId.of(ReadingKind.CAMBER, Corner.LF)));
        assertTrue(result.assumed().stream().anyMatch(a -> a.path().equals(Optional.of("targets.camber.LF.tolerance"))));
        Remark problem = needed().with("targets.camber.LF.tolerance", "0.1").read().problems().get(0);
        assertEquals("targets.camber.LF.value", problem.path());
    }

    @Test
    void wantedCrossNeedsAFigure() {
        CarDraft draft = needed().with("targets.crossGoal", "WANTED");
        assertEquals("targets.cross.car.value", draft.read().problems().get(0).path());
        Car car = car(draft.with("targets.cross.car.value", "52,7"));
        assertEquals(CrossGoal.WANTED, car.targets().crossGoal());
        assertEquals(52.7, car.targets().of(ReadingId.ofCar(ReadingKind.CROSS)).orElseThrow().value());
    }

    @Test
    void copyLeftToRightLeavesMeasuredThreads() {
        CarDraft draft = CarDraft.from(Ouzel23.car(), METRIC, NONE).with("corners.LF.springRate", "400 lb/in")
                .with("corners.LF.perch.start", "61").with("corners.RF.perch.start", "59").copyLeftToRight();
        Car car = car(draft);
        assertEquals(car.corners().lf().springRateNPerMm(), car.corners().rf().springRateNPerMm());
        assertEquals(OptionalDouble.of(59), car.corners().rf().adjuster(AdjusterKind.PERCH).orElseThrow().startMm());
        assertEquals(Ouzel23.car().corners().rr(), car.corners().rr());
        assertEquals("400 lb/in", draft.text("corners.RF.springRate"));
    }

    @Test
    void assumedValuesBelongToTheirBlankFields() {
        List<Assumed> assumed = needed().read().assumed();
        Map<String, String> ratio = Map.of("corners.LF.motionRatio", "0.75", "corners.RR.tyreRate", "200.0 N/mm",
                "masses.total", "600.0 kg", "heightPoints.3.x", "-2380.0 mm", "corners.RF.rimChord", "360.0 mm");
        ratio.forEach((path, value) -> assertEquals(List.of(value), assumed.stream().filter(a -> a.path().equals(Optional.of(path)))
                .map(Assumed::value).toList(), path));
        assertEquals(List.of(), assumed.stream().filter(a -> a.path().isEmpty()).toList());
    }

    @Test
    void decimalCommaPersonReadsAndSeesCommas() {
        FigureText comma = new FigureText(UnitPreferences.metric().withDecimalMark(DecimalMark.COMMA), true);
        CarDraft draft = CarDraft.from(Ouzel23.car(), comma, NONE);
        assertEquals("61,3", draft.text("corners.LF.springRate"));
        assertEquals(Ouzel23.car(), car(draft));
        assertEquals(1.234, car(draft.with("corners.LF.perch.pitch", "1,234")).corners().lf().adjuster(AdjusterKind.PERCH)
                .map(a -> ((Setting.Thread) a.setting()).pitchMm()).orElseThrow());
    }

    @Test
    void demoCarShowsWhatARacerWouldType() {
        CarDraft draft = CarDraft.from(Ouzel23.car(), METRIC, NONE);
        assertEquals("1/24 in", draft.text("corners.RR.pushrod.pitch"));
        assertEquals("-0.4", draft.text("targets.toe.LF.value"));
        assertEquals("0.8", draft.text("targets.toe.RR.value"));
        assertEquals("0.25", draft.text("targets.toe.RR.tolerance"));
        assertEquals(List.of(), draft.read().remarks());
    }

    @Test
    void everyFieldHasItsPageLabelAndHelp() {
        CarDraft draft = CarDraft.from(Ouzel23.car(), METRIC, NONE).with("corners.LF.toeLink.how", "shims");
        List<Field> fields = draft.sections().stream().flatMap(Section::fields).toList();
        assertEquals(fields.size(), fields.stream().map(Field::path).distinct().count());
        fields.forEach(f -> assertFalse(f.label().isBlank(), f.path()));
        for (Remark remark : CarDraft.blank(METRIC, NONE).read().remarks()) {
            assertTrue(fields.stream().anyMatch(f -> f.path().equals(remark.path())), remark.path());
        }
    }
}
