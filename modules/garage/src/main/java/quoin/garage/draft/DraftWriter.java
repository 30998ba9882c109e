package quoin.garage.draft;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

/** A car as the texts of the form. */
final class DraftWriter {

    private final Car car;
    private final FigureText figures;
    private final AssumedCar assumed;
    private final Map<String, String> texts = new LinkedHashMap<>();

    private DraftWriter(Car car, FigureText figures) {
        this.car = car;
        this.figures = figures;
        this.assumed = Assumptions.complete(car);
    }

    static Map<String, String> texts(Car car, FigureText figures) {
        DraftWriter writer = new DraftWriter(car, figures);
        writer.write();
        return writer.texts;
    }

    private void write() {
        texts.put(Paths.NAME, car.name());
        texts.put(Paths.WHEELBASE, length(car.wheelbaseMm()));
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
        texts.put(Paths.track(axle), length(setup.trackMm()));
        texts.put(Paths.bar(axle, "fitted"), setup.bar().isPresent() ? FieldKinds.FITTED : FieldKinds.NONE);
        setup.bar().ifPresent(b -> texts.put(Paths.bar(axle, "rate"), figures.of(b.rollRateNPerMm(), Dimension.STIFFNESS)));
        texts.put(Paths.suspension(axle), setup.suspension().typeId());
        setup.suspension().parameters().forEach((key, text) -> texts.put(Paths.parameter(axle, key), text));
    }

    private void corner(Corner corner, CornerSetup setup) {
        texts.put(Paths.corner(corner, "springRate"), figures.of(setup.springRateNPerMm(), Dimension.STIFFNESS));
        texts.put(Paths.corner(corner, "motionRatio"), figures.of(setup.motionRatio(), Dimension.NUMBER));
        texts.put(Paths.corner(corner, "pushrodRatio"), figures.of(setup.pushrodRatio(), Dimension.NUMBER));
        texts.put(Paths.corner(corner, "tyreRate"), figures.of(setup.tyreRateNPerMm(), Dimension.STIFFNESS));
        texts.put(Paths.corner(corner, "unsprung"), figures.of(setup.unsprungMassKg(), Dimension.MASS));
        texts.put(Paths.corner(corner, "rimChord"), figures.of(setup.rimChordMm(), Dimension.LENGTH));
        for (AdjusterKind kind : AdjusterKind.values()) {
            texts.put(Paths.adjuster(corner, kind, "how"), FieldKinds.NONE);
            setup.adjuster(kind).ifPresent(a -> adjuster(corner, a));
        }
    }

    private void adjuster(Corner corner, Adjuster adjuster) {
        AdjusterKind kind = adjuster.id().kind();
        if (adjuster.setting() instanceof Setting.Thread thread) {
            texts.put(Paths.adjuster(corner, kind, "how"), FieldKinds.THREAD);
            texts.put(Paths.adjuster(corner, kind, "pitch"), length(thread.pitchMm()));
            texts.put(Paths.adjuster(corner, kind, "ends"), thread.bothEnds() ? FieldKinds.BOTH_ENDS : FieldKinds.ONE_END);
            texts.put(Paths.adjuster(corner, kind, "steps"), Integer.toString(thread.stepsPerTurn()));
            texts.put(Paths.adjuster(corner, kind, "stepName"), thread.stepName());
        } else if (adjuster.setting() instanceof Setting.Shims shims) {
            texts.put(Paths.adjuster(corner, kind, "how"), FieldKinds.SHIMS);
            texts.put(Paths.adjuster(corner, kind, "pack"), length(shims.fittedMm()));
            texts.put(Paths.adjuster(corner, kind, "stock"), ShimStockText.of(shims.stock(), figures));
        }
        texts.put(Paths.adjuster(corner, kind, "start"), figures.of(adjuster.startMm(), Dimension.LENGTH));
        texts.put(Paths.adjuster(corner, kind, "min"), figures.of(adjuster.minMm(), Dimension.LENGTH));
        texts.put(Paths.adjuster(corner, kind, "max"), figures.of(adjuster.maxMm(), Dimension.LENGTH));
        texts.put(Paths.adjuster(corner, kind, "locked"), adjuster.locked() ? FieldKinds.YES : FieldKinds.NO);
    }

    private void masses() {
        texts.put(Paths.TOTAL, figures.of(car.masses().totalKg(), Dimension.MASS));
        texts.put(Paths.CG_HEIGHT, figures.of(car.masses().cgHeightMm(), Dimension.LENGTH));
        List<KnownMass> known = car.masses().known();
        for (int row = 1; row <= known.size(); row++) {
            KnownMass mass = known.get(row - 1);
            texts.put(Paths.mass(row, "name"), mass.name());
            texts.put(Paths.mass(row, "role"), mass.role().name());
            texts.put(Paths.mass(row, "mass"), figures.of(mass.massKg(), Dimension.MASS));
            texts.put(Paths.mass(row, "x"), length(mass.xMm()));
            texts.put(Paths.mass(row, "y"), length(mass.yMm()));
            texts.put(Paths.mass(row, "z"), length(mass.zMm()));
        }
    }

    private void points() {
        for (int row = 1; row <= car.heightPoints().size(); row++) {
            HeightPoint point = car.heightPoints().get(row - 1);
            texts.put(Paths.point(row, "name"), point.name());
            texts.put(Paths.point(row, "corner"), point.corner().map(Corner::name).orElse(FieldKinds.NONE));
            texts.put(Paths.point(row, "x"), figures.of(point.xMm(), Dimension.LENGTH));
            texts.put(Paths.point(row, "y"), figures.of(point.yMm(), Dimension.LENGTH));
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
        texts.put(path + ".value", targetFigure(reading, target.value()));
        texts.put(path + ".tolerance", targetFigure(reading, target.tolerance()));
    }

    private String targetFigure(ReadingId reading, double value) {
        if (reading.kind() == ReadingKind.TOE || reading.kind() == ReadingKind.TOTAL_TOE) {
            return figures.toe(value, TargetReadings.chordMm(assumed, reading));
        }
        return figures.of(value, TargetReadings.dimension(reading.kind()));
    }

    private void loadCase() {
        texts.put(Paths.DRIVER, car.loadCase().driver());
        texts.put(Paths.FUEL, figures.of(car.loadCase().fuelKg(), Dimension.MASS));
        for (Axle axle : Axle.values()) {
            texts.put(Paths.pressure(axle), figures.of(car.loadCase().pressureBar().get(axle), Dimension.PRESSURE));
        }
    }

    private void instruments() {
        texts.put(Paths.instrument("scale"), figures.of(car.instruments().scaleResolutionKg(), Dimension.MASS));
        texts.put(Paths.instrument("height"), length(car.instruments().heightResolutionMm()));
        texts.put(Paths.instrument("angle"), figures.of(car.instruments().angleResolutionDeg(), Dimension.ANGLE));
        texts.put(Paths.instrument("toe"), length(car.instruments().toeResolutionMm()));
    }

    private String length(double valueMm) {
        return figures.of(valueMm, Dimension.LENGTH);
    }
}
