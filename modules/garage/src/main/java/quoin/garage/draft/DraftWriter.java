package quoin.garage.draft;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import quoin.car.Adjuster;
import quoin.car.AdjusterKind;
import quoin.car.Assumptions;
import quoin.car.AssumedCar;
import quoin.car.Axle;
import quoin.car.AxleSetup;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CornerSetup;
import quoin.car.HeightPoint;
import quoin.car.KnownMass;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Setting;
import quoin.car.Target;
import quoin.quantities.Dimension;
import quoin.quantities.Turns;

/** A car as the texts of the form. */
final class DraftWriter {

    private final Car car;
    private final FigureText figures;
    private final AssumedCar assumed;
    private final Map<String, String> texts = new LinkedHashMap<>();
    private final Map<String, Exact> exact = new LinkedHashMap<>();

    private DraftWriter(Car car, FigureText figures) {
        this.car = car;
        this.figures = figures;
        this.assumed = Assumptions.complete(car);
    }

    /**
     * A value whose text is rounded: it holds as long as the text is left as it was.
     *
     * @param text  the rounded text
     * @param value the value, base unit
     */
    record Exact(String text, double value) {
    }

    /**
     * What the form starts with.
     *
     * @param texts every field's text
     * @param exact the values of rounded texts
     */
    record Written(Map<String, String> texts, Map<String, Exact> exact) {
    }

    static Written write(Car car, FigureText figures) {
        DraftWriter writer = new DraftWriter(car, figures);
        writer.write();
        return new Written(writer.texts, writer.exact);
    }

    private void write() {
        texts.put(Paths.NAME, car.name());
        put(Paths.WHEELBASE, car.wheelbaseMm(), Dimension.LENGTH);
        texts.put(Paths.WALK, car.walkingOrder().stream().map(Corner::name).collect(Collectors.joining(" ")));
        for (Axle axle : Axle.values()) {
            axle(axle, car.axles().get(axle));
        }
        for (Corner corner : Corner.values()) {
            corner(corner, car.corners().get(corner));
        }
        masses();
        points();
        targets();
        loadCase();
        instruments();
    }

    private void axle(Axle axle, AxleSetup setup) {
        put(Paths.track(axle), setup.trackMm(), Dimension.LENGTH);
        texts.put(Paths.bar(axle, "fitted"), setup.bar().isPresent() ? FieldKinds.FITTED : FieldKinds.NONE);
        setup.bar().ifPresent(b -> put(Paths.bar(axle, "rate"), b.rollRateNPerMm(), Dimension.STIFFNESS));
        texts.put(Paths.suspension(axle), setup.suspension().typeId());
        setup.suspension().parameters().forEach((key, text) -> texts.put(Paths.parameter(axle, key), text));
    }

    private void corner(Corner corner, CornerSetup setup) {
        put(Paths.corner(corner, "springRate"), setup.springRateNPerMm(), Dimension.STIFFNESS);
        put(Paths.corner(corner, "motionRatio"), setup.motionRatio(), Dimension.NUMBER);
        put(Paths.corner(corner, "pushrodRatio"), setup.pushrodRatio(), Dimension.NUMBER);
        put(Paths.corner(corner, "tyreRate"), setup.tyreRateNPerMm(), Dimension.STIFFNESS);
        put(Paths.corner(corner, "unsprung"), setup.unsprungMassKg(), Dimension.MASS);
        put(Paths.corner(corner, "rimChord"), setup.rimChordMm(), Dimension.LENGTH);
        for (AdjusterKind kind : AdjusterKind.values()) {
            texts.put(Paths.adjuster(corner, kind, "how"), FieldKinds.NONE);
            setup.adjuster(kind).ifPresent(a -> adjuster(corner, a));
        }
    }

    private void adjuster(Corner corner, Adjuster adjuster) {
        AdjusterKind kind = adjuster.id().kind();
        if (adjuster.setting() instanceof Setting.Thread thread) {
            texts.put(Paths.adjuster(corner, kind, "how"), FieldKinds.THREAD);
            put(Paths.adjuster(corner, kind, "pitch"), thread.pitchMm(), Dimension.LENGTH);
            texts.put(Paths.adjuster(corner, kind, "ends"), thread.bothEnds() ? FieldKinds.BOTH_ENDS : FieldKinds.ONE_END);
            texts.put(Paths.adjuster(corner, kind, "steps"), Integer.toString(thread.stepsPerTurn()));
            texts.put(Paths.adjuster(corner, kind, "stepName"), Turns.stepWord(thread.stepName()));
        } else if (adjuster.setting() instanceof Setting.Shims shims) {
            texts.put(Paths.adjuster(corner, kind, "how"), FieldKinds.SHIMS);
            put(Paths.adjuster(corner, kind, "pack"), shims.fittedMm(), Dimension.LENGTH);
            texts.put(Paths.adjuster(corner, kind, "stock"), ShimStockText.of(shims.stock(), figures));
        }
        put(Paths.adjuster(corner, kind, "start"), adjuster.startMm(), Dimension.LENGTH);
        put(Paths.adjuster(corner, kind, "min"), adjuster.minMm(), Dimension.LENGTH);
        put(Paths.adjuster(corner, kind, "max"), adjuster.maxMm(), Dimension.LENGTH);
        texts.put(Paths.adjuster(corner, kind, "locked"), adjuster.locked() ? FieldKinds.YES : FieldKinds.NO);
    }

    private void masses() {
        put(Paths.TOTAL, car.masses().totalKg(), Dimension.MASS);
        put(Paths.CG_HEIGHT, car.masses().cgHeightMm(), Dimension.LENGTH);
        List<KnownMass> known = car.masses().known();
        for (int row = 1; row <= known.size(); row++) {
            KnownMass mass = known.get(row - 1);
            texts.put(Paths.mass(row, "name"), mass.name());
            texts.put(Paths.mass(row, "role"), mass.role().name());
            put(Paths.mass(row, "mass"), mass.massKg(), Dimension.MASS);
            put(Paths.mass(row, "x"), mass.xMm(), Dimension.LENGTH);
            put(Paths.mass(row, "y"), mass.yMm(), Dimension.LENGTH);
            put(Paths.mass(row, "z"), mass.zMm(), Dimension.LENGTH);
        }
    }

    private void points() {
        for (int row = 1; row <= car.heightPoints().size(); row++) {
            HeightPoint point = car.heightPoints().get(row - 1);
            texts.put(Paths.point(row, "name"), point.name());
            texts.put(Paths.point(row, "corner"), point.corner().map(Corner::name).orElse(FieldKinds.NONE));
            put(Paths.point(row, "x"), point.xMm(), Dimension.LENGTH);
            put(Paths.point(row, "y"), point.yMm(), Dimension.LENGTH);
            String path = Paths.heightTarget(row);
            car.targets().of(point.reading()).ifPresent(t -> target(path, point.reading(), t));
        }
    }

    private void targets() {
        texts.put(Paths.CROSS_GOAL, car.targets().crossGoal().name());
        car.targets().readings().forEach((reading, target) -> {
            if (TargetReadings.offered(reading)) {
                target(TargetReadings.path(reading), reading, target);
            }
        });
    }

    private void target(String path, ReadingId reading, Target target) {
        targetFigure(path + ".value", reading, target.value());
        targetFigure(path + ".tolerance", reading, target.tolerance());
    }

    private void targetFigure(String path, ReadingId reading, double value) {
        if (reading.kind() == ReadingKind.TOE || reading.kind() == ReadingKind.TOTAL_TOE) {
            double chordMm = TargetReadings.chordMm(assumed, reading);
            String text = figures.toe(value, chordMm);
            keep(path, text, value, figures.readToe(text, chordMm));
        } else {
            put(path, value, TargetReadings.dimension(reading.kind()));
        }
    }

    private void loadCase() {
        texts.put(Paths.DRIVER, car.loadCase().driver());
        put(Paths.FUEL, car.loadCase().fuelKg(), Dimension.MASS);
        for (Axle axle : Axle.values()) {
            put(Paths.pressure(axle), car.loadCase().pressureBar().get(axle), Dimension.PRESSURE);
        }
    }

    private void instruments() {
        put(Paths.instrument("scale"), car.instruments().scaleResolutionKg(), Dimension.MASS);
        put(Paths.instrument("height"), car.instruments().heightResolutionMm(), Dimension.LENGTH);
        put(Paths.instrument("angle"), car.instruments().angleResolutionDeg(), Dimension.ANGLE);
        put(Paths.instrument("toe"), car.instruments().toeResolutionMm(), Dimension.LENGTH);
    }

    private void put(String path, OptionalDouble value, Dimension dimension) {
        texts.put(path, "");
        value.ifPresent(v -> put(path, v, dimension));
    }

    private void put(String path, double value, Dimension dimension) {
        String text = figures.of(value, dimension);
        keep(path, text, value, figures.read(text, dimension));
    }

    private void keep(String path, String text, double value, double readBack) {
        texts.put(path, text);
        if (value != readBack) {
            exact.put(path, new Exact(text, value));
        }
    }
}
