package quoin.garage.draft;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import quoin.car.AdjusterKind;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.quantities.Dimension;
import quoin.suspension.Parameter;

/** The pages of the form for one draft. */
final class FormPages {

    private static final List<Corner> CORNERS = List.of(Corner.values());
    private static final List<String> CORNER_COLUMNS = CORNERS.stream().map(Corner::name).toList();
    private static final List<String> THREAD_ROWS = List.of("pitch", "ends", "steps", "stepName", "start", "min", "max", "locked");
    private static final List<String> SHIM_ROWS = List.of("pack", "stock", "start", "min", "max", "locked");
    private static final Set<String> REQUIRED = Set.of("name", "wheelbase", "tracks");

    private final CarDraft draft;
    private final FieldNames names;

    FormPages(CarDraft draft) {
        this.draft = draft;
        this.names = new FieldNames(draft);
    }

    List<Section> all() {
        return List.of(
                page("car", List.of(), single("", Paths.NAME, Paths.WHEELBASE, Paths.track(Axle.FRONT), Paths.track(Axle.REAR),
                        Paths.WALK)),
                page("springs", List.of(Section.Extra.COPY_LEFT_TO_RIGHT), corners("springs", "springRate", "motionRatio",
                        "tyreRate", "unsprung", "rimChord")),
                page("legs", List.of(Section.Extra.COPY_LEFT_TO_RIGHT), adjuster(AdjusterKind.PERCH), pushrod()),
                page("links", List.of(Section.Extra.COPY_LEFT_TO_RIGHT), adjuster(AdjusterKind.CAMBER_ROD),
                        adjuster(AdjusterKind.CAMBER_SHIM), adjuster(AdjusterKind.CASTER_ROD), adjuster(AdjusterKind.TOE_LINK)),
                page("bars", List.of(), axles("bars", barRows()), adjuster(AdjusterKind.BAR_LINK)),
                page("suspension", List.of(), axles("suspension", suspensionRows())),
                page("masses", List.of(Section.Extra.ADD_MASS), single("", Paths.TOTAL, Paths.CG_HEIGHT), masses()),
                page("heights", List.of(Section.Extra.ADD_HEIGHT_POINT), points()),
                page("weights", List.of(), single("", Paths.CROSS_GOAL), targets("weights", TargetReadings.weights())),
                page("angles", List.of(), targets("angles", TargetReadings.angles())),
                page("loadCase", List.of(), single("loadCase", Paths.DRIVER, Paths.FUEL, Paths.pressure(Axle.FRONT),
                        Paths.pressure(Axle.REAR)), single("instruments", Paths.instrument("scale"), Paths.instrument("height"),
                        Paths.instrument("angle"), Paths.instrument("toe"))));
    }

    private static Section page(String key, List<Section.Extra> extras, FieldTable... tables) {
        return new Section(key, Texts.of("page." + key), Texts.of("page." + key + ".intro"), List.of(tables), extras);
    }

    private Field field(String path) {
        Optional<Parameter> parameter = parameter(path);
        if (parameter.isPresent()) {
            return parameterField(path, parameter.get());
        }
        FieldKind kind = kind(path);
        String unit = "";
        if (kind instanceof FieldKind.Figure figure) {
            unit = figure.dimension() == Dimension.NUMBER ? "" : draft.figures().unit(figure.dimension());
        } else if (kind instanceof FieldKind.Toe) {
            unit = draft.figures().toeUnit();
        }
        String own = Texts.orNothing("help." + Paths.shape(path));
        String help = own.isEmpty() && path.endsWith(".tolerance") ? Texts.of("help.tolerance") : own;
        return new Field(path, names.of(path), help, kind, unit, REQUIRED.contains(Paths.shape(path)));
    }

    private Field parameterField(String path, Parameter parameter) {
        FieldKind kind = new FieldKind.Words();
        if (parameter.kind() == Parameter.Kind.CHOICE) {
            Stream<String> answers = Stream.concat(parameter.required() ? Stream.empty() : Stream.of(""), parameter.choices().stream());
            kind = FieldKinds.withPresent(new FieldKind.Choice(answers.map(c -> new FieldKind.Option(c, c)).toList()), draft.text(path));
        }
        return new Field(path, names.of(path), parameter.help(), kind, parameter.unit(), false);
    }

    private FieldKind kind(String path) {
        FieldKind kind = FieldKinds.of(path);
        if (path.equals(Paths.WALK)) {
            kind = FieldKinds.walks();
        } else if (path.startsWith("suspension.") && path.endsWith(".type")) {
            kind = types(draft.text(path));
        }
        return kind instanceof FieldKind.Choice choice ? FieldKinds.withPresent(choice, draft.text(path)) : kind;
    }

    private FieldKind.Choice types(String chosen) {
        List<FieldKind.Option> installed = draft.types().all().stream().map(t -> new FieldKind.Option(t.id(), t.name())).toList();
        FieldKind.Choice usual = installed.isEmpty() ? FieldKinds.choice("suspension", CarDraft.MEASURED)
                : new FieldKind.Choice(installed);
        return FieldKinds.withPresent(usual, chosen, Texts.of("suspension.notInstalled", chosen));
    }

    private static String title(String key) {
        return key.isEmpty() ? "" : Texts.of("table." + key);
    }

    private FieldTable single(String title, String... paths) {
        return new FieldTable(title(title), List.of(), Arrays.stream(paths).map(this::field)
                .map(f -> FieldTable.Row.of(f.label(), Stream.of(f))).toList());
    }

    private FieldTable corners(String title, String... whats) {
        return new FieldTable(title(title), CORNER_COLUMNS, Arrays.stream(whats).map(what -> FieldTable.Row.of(
                FieldNames.label(Paths.corner(Corner.LF, what)), CORNERS.stream().map(c -> field(Paths.corner(c, what))))).toList());
    }

    private FieldTable adjuster(AdjusterKind kind) {
        List<FieldTable.Row> rows = new ArrayList<>();
        rows.add(FieldTable.Row.of(Texts.of("label.corners.how"), CORNERS.stream().map(c -> field(Paths.adjuster(c, kind, "how")))));
        Stream.concat(THREAD_ROWS.stream(), SHIM_ROWS.stream()).distinct().forEach(what -> {
            List<Optional<Field>> cells = CORNERS.stream().map(c -> hasRow(c, kind, what)
                    ? Optional.of(field(Paths.adjuster(c, kind, what))) : Optional.<Field>empty()).toList();
            if (cells.stream().anyMatch(Optional::isPresent)) {
                rows.add(new FieldTable.Row(Texts.of("label.corners." + what), cells, OptionalInt.empty()));
            }
        });
        return new FieldTable(title(Paths.key(kind)), CORNER_COLUMNS, rows);
    }

    private boolean hasRow(Corner corner, AdjusterKind kind, String what) {
        return switch (draft.text(Paths.adjuster(corner, kind, "how"))) {
            case FieldKinds.THREAD -> THREAD_ROWS.contains(what);
            case FieldKinds.SHIMS -> SHIM_ROWS.contains(what);
            default -> false;
        };
    }

    /** The ratio of a pushrod is asked for where there is one, or where one was typed before. */
    private FieldTable pushrod() {
        FieldTable thread = adjuster(AdjusterKind.PUSHROD);
        boolean asked = CORNERS.stream().anyMatch(c -> hasRow(c, AdjusterKind.PUSHROD, "pitch")
                || !draft.text(Paths.corner(c, "pushrodRatio")).isEmpty());
        if (!asked) {
            return thread;
        }
        List<FieldTable.Row> rows = new ArrayList<>(thread.rows());
        rows.add(1, corners("", "pushrodRatio").rows().get(0));
        return new FieldTable(thread.title(), thread.columns(), rows);
    }

    private List<List<String>> barRows() {
        boolean any = Arrays.stream(Axle.values()).anyMatch(a -> draft.text(Paths.bar(a, "fitted")).equals(FieldKinds.FITTED));
        List<String> fitted = Arrays.stream(Axle.values()).map(a -> Paths.bar(a, "fitted")).toList();
        List<String> rates = Arrays.stream(Axle.values())
                .map(a -> draft.text(Paths.bar(a, "fitted")).equals(FieldKinds.FITTED) ? Paths.bar(a, "rate") : "").toList();
        return any ? List.of(fitted, rates) : List.of(fitted);
    }

    /** The types, then what they ask for, then what is kept for types that are not fitted or not installed. */
    private List<List<String>> suspensionRows() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(Arrays.stream(Axle.values()).map(Paths::suspension).toList());
        Stream<String> asked = Arrays.stream(Axle.values()).flatMap(a -> draft.parameters(a).stream().map(Parameter::key));
        Stream<String> kept = Arrays.stream(Axle.values()).flatMap(a -> draft.parameterKeys(a).stream().filter(k -> hasText(a, k)));
        Stream.concat(asked, kept).distinct().forEach(key ->
                rows.add(Arrays.stream(Axle.values()).map(a -> isShown(a, key) ? Paths.parameter(a, key) : "").toList()));
        return rows;
    }

    private boolean isShown(Axle axle, String key) {
        return draft.parameters(axle).stream().anyMatch(p -> p.key().equals(key)) || hasText(axle, key);
    }

    private boolean hasText(Axle axle, String key) {
        return !draft.text(Paths.parameter(axle, key)).isBlank();
    }

    private Optional<Parameter> parameter(String path) {
        return Arrays.stream(Axle.values()).filter(a -> path.startsWith(Paths.parameter(a, ""))).findFirst()
                .flatMap(a -> draft.parameters(a).stream().filter(p -> path.equals(Paths.parameter(a, p.key()))).findFirst());
    }

    private FieldTable axles(String title, List<List<String>> rows) {
        List<String> columns = Arrays.stream(Axle.values()).map(a -> Texts.of("column." + Paths.key(a))).toList();
        return new FieldTable(title(title), columns, rows.stream().map(this::axleRow).toList());
    }

    private FieldTable.Row axleRow(List<String> paths) {
        List<String> shown = paths.stream().filter(p -> !p.isEmpty()).toList();
        int key = shown.get(0).indexOf(".parameters.");
        String label = key < 0 ? FieldNames.label(shown.get(0)) : shown.stream().flatMap(p -> parameter(p).stream())
                .map(Parameter::label).findFirst().orElse(shown.get(0).substring(key + ".parameters.".length()));
        return new FieldTable.Row(label, paths.stream().map(p -> p.isEmpty() ? Optional.<Field>empty() : Optional.of(field(p))).toList(),
                OptionalInt.empty());
    }

    private FieldTable masses() {
        return rows("masses", draft.massRows(), List.of("name", "role", "mass", "x", "y", "z"), "masses.", Paths::mass);
    }

    private FieldTable points() {
        List<String> columns = List.of("name", "corner", "x", "y");
        FieldTable places = rows("points", draft.pointRows(), columns, "heightPoints.", Paths::point);
        List<String> all = Stream.concat(places.columns().stream(), targetColumns().stream()).toList();
        List<FieldTable.Row> rows = new ArrayList<>();
        for (FieldTable.Row row : places.rows()) {
            String target = Paths.heightTarget(row.removes().orElseThrow());
            rows.add(new FieldTable.Row("", Stream.concat(row.cells().stream(), targetCells(target)).toList(), row.removes()));
        }
        List<Optional<Field>> rake = Stream.concat(columns.stream().map(c -> Optional.<Field>empty()),
                targetCells(TargetReadings.path(TargetReadings.rake()))).toList();
        rows.add(new FieldTable.Row(Texts.of("row.rake"), rake, OptionalInt.empty()));
        return new FieldTable("", all, rows);
    }

    private interface RowPath {
        String of(int row, String what);
    }

    private FieldTable rows(String title, List<Integer> rows, List<String> whats, String shape, RowPath path) {
        List<String> columns = whats.stream().map(w -> Texts.of("label." + shape + w)).toList();
        return new FieldTable(title(title), columns, rows.stream().map(row -> new FieldTable.Row("",
                whats.stream().map(w -> Optional.of(field(path.of(row, w)))).toList(), OptionalInt.of(row))).toList());
    }

    private static List<String> targetColumns() {
        return List.of(Texts.of("label.targets.value"), Texts.of("label.targets.tolerance"));
    }

    private Stream<Optional<Field>> targetCells(String path) {
        return Stream.of(".value", ".tolerance").map(end -> Optional.of(field(path + end)));
    }

    private FieldTable targets(String title, List<ReadingId> readings) {
        return new FieldTable(title(title), targetColumns(), readings.stream().map(r -> new FieldTable.Row(FieldNames.words(r),
                targetCells(TargetReadings.path(r)).toList(), OptionalInt.empty())).toList());
    }
}
