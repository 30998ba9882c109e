package quoin.garage.draft;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import quoin.car.AntiRollBar;
import quoin.car.Axle;
import quoin.car.AxleSetup;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CornerSetup;
import quoin.car.HeightPoint;
import quoin.car.Instruments;
import quoin.car.KnownMass;
import quoin.car.LoadCase;
import quoin.car.Masses;
import quoin.car.PerAxle;
import quoin.car.PerCorner;
import quoin.car.SuspensionChoice;
import quoin.quantities.Dimension;
import quoin.suspension.Parameter;
import quoin.suspension.ParameterProblem;

/** Reads a whole draft. A value that cannot be read leaves a problem, and then there is no car. */
final class DraftReader {

    private final CarDraft draft;
    private final TypedValues in;
    private final List<Assumed> assumed = new ArrayList<>();

    DraftReader(CarDraft draft) {
        this.draft = draft;
        this.in = new TypedValues(draft);
    }

    DraftResult read() {
        String name = in.words(Paths.NAME);
        if (name.isEmpty()) {
            in.problem(Paths.NAME, Texts.of("problem.missing"), Texts.of("remedy.name"));
        }
        OptionalDouble wheelbase = in.required(Paths.WHEELBASE, "remedy.wheelbase");
        Map<Axle, Optional<AxleSetup>> axles = new LinkedHashMap<>();
        for (Axle axle : Axle.values()) {
            axles.put(axle, axle(axle));
        }
        CornerReader cornerReader = new CornerReader(draft, in, assumed);
        PerCorner<CornerSetup> corners = PerCorner.of(cornerReader::read);
        Masses masses = masses();
        Map<Integer, HeightPoint> points = points();
        TargetReader targets = new TargetReader(draft, in, assumed, corners, points);
        var readTargets = targets.read();
        LoadCase loadCase = loadCase();
        Instruments instruments = instruments();
        List<Corner> walk = walk();
        if (in.hasProblems() || wheelbase.isEmpty() || axles.containsValue(Optional.<AxleSetup>empty())) {
            return new DraftResult(Optional.empty(), in.remarks(), List.of());
        }
        String id = draft.basis().map(Car::id).orElse(CarDraft.unknownCar().id());
        Car car = new Car(id, name, wheelbase.getAsDouble(), new PerAxle<>(axles.get(Axle.FRONT).get(), axles.get(Axle.REAR).get()),
                corners, masses, List.copyOf(points.values()), readTargets, loadCase, instruments, walk);
        List<Assumed> all = new ArrayList<>(new AssumedValues(draft, car).all());
        all.addAll(assumed);
        return new DraftResult(Optional.of(car), in.remarks(), all);
    }

    private Optional<AxleSetup> axle(Axle axle) {
        OptionalDouble track = in.required(Paths.track(axle), "remedy.track");
        String rate = Paths.bar(axle, "rate");
        boolean fitted = in.choice(Paths.bar(axle, "fitted")).equals(FieldKinds.FITTED);
        Optional<AntiRollBar> bar = fitted ? Optional.of(new AntiRollBar(in.figure(rate))) : Optional.empty();
        SuspensionChoice suspension = suspension(axle);
        return track.isPresent() ? Optional.of(new AxleSetup(track.getAsDouble(), bar, suspension)) : Optional.empty();
    }

    /** Parameters of a type that is not installed, or of another type, stay as they are. */
    private SuspensionChoice suspension(Axle axle) {
        Map<String, String> before = draft.basis().map(c -> c.axles().get(axle).suspension().parameters()).orElse(Map.of());
        Map<String, String> parameters = new LinkedHashMap<>();
        for (String key : draft.parameterKeys(axle)) {
            String text = draft.text(Paths.parameter(axle, key));
            if (!text.isBlank() || before.containsKey(key)) {
                parameters.put(key, text);
            }
        }
        String type = in.words(Paths.suspension(axle));
        SuspensionChoice choice = new SuspensionChoice(type.isEmpty() ? CarDraft.MEASURED : type, parameters);
        Set<String> asked = draft.parameters(axle).stream().map(Parameter::key).collect(Collectors.toSet());
        if (!draft.types().all().isEmpty() && draft.types().find(choice.typeId()).isEmpty()) {
            in.warning(Paths.suspension(axle), Texts.of("warning.notInstalled"), Texts.of("warning.notInstalled.remedy"));
        }
        draft.types().read(choice).ifPresent(read -> read.problems().forEach(p -> parameter(Paths.parameter(axle, p.key()), asked, p)));
        return choice;
    }

    /** A text that cannot be read is a problem; what is missing only leaves the angles unknown; what belongs to another type stays unused. */
    private void parameter(String path, Set<String> asked, ParameterProblem problem) {
        if (!asked.contains(problem.key())) {
            in.warning(path, Texts.of("warning.otherType"), Texts.of("warning.otherType.remedy"));
        } else if (in.isBlank(path)) {
            in.warning(path, Texts.of("warning.parameter"), Texts.of("warning.parameter.remedy"));
        } else {
            in.problem(path, problem.words(), Texts.of("remedy.parameter"));
        }
    }

    private Masses masses() {
        OptionalDouble total = in.figure(Paths.TOTAL);
        OptionalDouble cgHeight = in.figure(Paths.CG_HEIGHT);
        List<KnownMass> known = new ArrayList<>();
        for (int row : draft.massRows()) {
            mass(row).ifPresent(known::add);
        }
        return new Masses(total, cgHeight, known, draft.basis().map(c -> c.masses().zones()).orElse(List.of()));
    }

    /** A row without a figure is not a mass yet. */
    private Optional<KnownMass> mass(int row) {
        List<String> paths = List.of(Paths.mass(row, "mass"), Paths.mass(row, "x"), Paths.mass(row, "y"), Paths.mass(row, "z"));
        if (paths.stream().allMatch(in::isBlank)) {
            return Optional.empty();
        }
        List<OptionalDouble> figures = paths.stream().map(p -> in.required(p, "remedy.massPlace")).toList();
        if (figures.stream().anyMatch(OptionalDouble::isEmpty)) {
            return Optional.empty();
        }
        KnownMass.Role role = KnownMass.Role.valueOf(in.choice(Paths.mass(row, "role")));
        return Optional.of(new KnownMass(in.words(Paths.mass(row, "name")), role, figures.get(0).getAsDouble(),
                figures.get(1).getAsDouble(), figures.get(2).getAsDouble(), figures.get(3).getAsDouble()));
    }

    private Map<Integer, HeightPoint> points() {
        Map<Integer, HeightPoint> points = new LinkedHashMap<>();
        Set<String> names = new HashSet<>();
        Set<String> corners = new HashSet<>();
        for (int row : draft.pointRows()) {
            String name = in.words(Paths.point(row, "name"));
            String corner = in.choice(Paths.point(row, "corner"));
            OptionalDouble x = in.figure(Paths.point(row, "x"));
            OptionalDouble y = in.figure(Paths.point(row, "y"));
            if (name.isEmpty()) {
                in.problem(Paths.point(row, "name"), Texts.of("problem.missing"), Texts.of("remedy.pointName"));
                continue;
            }
            if (!names.add(name)) {
                in.problem(Paths.point(row, "name"), Texts.of("problem.sameName", name), Texts.of("remedy.sameName"));
            }
            boolean atCorner = !corner.equals(FieldKinds.NONE);
            if (atCorner && !corners.add(corner)) {
                in.warning(Paths.point(row, "corner"), Texts.of("warning.twoPoints", corner), Texts.of("warning.twoPoints.remedy"));
            }
            points.put(row, new HeightPoint(name, atCorner ? Optional.of(Corner.parse(corner)) : Optional.empty(), x, y));
        }
        missingCorners(corners);
        return points;
    }

    private void missingCorners(Set<String> found) {
        List<String> missing = Arrays.stream(Corner.values()).map(Corner::name).filter(c -> !found.contains(c)).toList();
        if (!missing.isEmpty()) {
            String at = draft.pointRows().stream().findFirst().map(r -> Paths.point(r, "corner")).orElse("heightPoints");
            in.warning(at, Texts.of("warning.noPoint", String.join(", ", missing)), Texts.of("warning.noPoint.remedy"));
        }
    }

    private LoadCase loadCase() {
        return new LoadCase(in.words(Paths.DRIVER), in.figure(Paths.FUEL),
                new PerAxle<>(in.figure(Paths.pressure(Axle.FRONT)), in.figure(Paths.pressure(Axle.REAR))));
    }

    private Instruments instruments() {
        Instruments usual = Instruments.usual();
        return new Instruments(instrument("scale", usual.scaleResolutionKg(), Dimension.MASS),
                instrument("height", usual.heightResolutionMm(), Dimension.LENGTH),
                instrument("angle", usual.angleResolutionDeg(), Dimension.ANGLE),
                instrument("toe", usual.toeResolutionMm(), Dimension.LENGTH));
    }

    private double instrument(String what, double usual, Dimension dimension) {
        String path = Paths.instrument(what);
        if (in.isBlank(path)) {
            assumed.add(new Assumed(Optional.of(path), FieldNames.label(path), draft.figures().shown(usual, dimension),
                    Texts.of("assumed.instrument")));
        }
        return in.figure(path).orElse(usual);
    }

    private List<Corner> walk() {
        String walk = in.words(Paths.WALK);
        return walk.isEmpty() ? CarDraft.unknownCar().walkingOrder() : Arrays.stream(walk.split("[ ,]+")).map(Corner::parse).toList();
    }
}
