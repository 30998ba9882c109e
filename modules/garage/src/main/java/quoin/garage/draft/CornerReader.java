package quoin.garage.draft;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.CornerSetup;
import quoin.car.Setting;
import quoin.quantities.Turns;

/** Reads the corners of a draft. */
final class CornerReader {

    private static final int QUARTER_TURNS = 4;

    private final CarDraft draft;
    private final TypedValues in;
    private final List<Assumed> assumed;

    CornerReader(CarDraft draft, TypedValues in, List<Assumed> assumed) {
        this.draft = draft;
        this.in = in;
        this.assumed = assumed;
    }

    CornerSetup read(Corner corner) {
        return new CornerSetup(in.figure(Paths.corner(corner, "springRate")), in.figure(Paths.corner(corner, "motionRatio")),
                in.figure(Paths.corner(corner, "pushrodRatio")), in.figure(Paths.corner(corner, "tyreRate")),
                in.figure(Paths.corner(corner, "unsprung")), in.figure(Paths.corner(corner, "rimChord")), adjusters(corner));
    }

    /** In the order of the car the form was opened with, then the new ones. */
    private List<Adjuster> adjusters(Corner corner) {
        Map<AdjusterKind, Adjuster> typed = new EnumMap<>(AdjusterKind.class);
        for (AdjusterKind kind : AdjusterKind.values()) {
            adjuster(corner, kind).ifPresent(a -> typed.put(kind, a));
        }
        List<Adjuster> all = new ArrayList<>();
        Set<AdjusterKind> seen = EnumSet.noneOf(AdjusterKind.class);
        for (Adjuster old : draft.basis().map(c -> c.corners().get(corner).adjusters()).orElse(List.of())) {
            AdjusterKind kind = old.id().kind();
            if (!seen.add(kind)) {
                all.add(old);
            } else if (typed.containsKey(kind)) {
                all.add(typed.remove(kind));
            }
        }
        all.addAll(typed.values());
        return all;
    }

    private Optional<Adjuster> adjuster(Corner corner, AdjusterKind kind) {
        Optional<Setting> setting = switch (in.choice(Paths.adjuster(corner, kind, "how"))) {
            case FieldKinds.THREAD -> thread(corner, kind);
            case FieldKinds.SHIMS -> shims(corner, kind);
            default -> Optional.empty();
        };
        if (setting.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble start = in.figure(Paths.adjuster(corner, kind, "start"));
        OptionalDouble min = in.figure(Paths.adjuster(corner, kind, "min"));
        OptionalDouble max = in.figure(Paths.adjuster(corner, kind, "max"));
        if (min.isPresent() && max.isPresent() && min.getAsDouble() > max.getAsDouble()) {
            in.problem(Paths.adjuster(corner, kind, "max"), Texts.of("problem.range"), Texts.of("remedy.range"));
            return Optional.empty();
        }
        boolean below = start.isPresent() && min.isPresent() && start.getAsDouble() < min.getAsDouble();
        boolean above = start.isPresent() && max.isPresent() && start.getAsDouble() > max.getAsDouble();
        if (below || above) {
            in.warning(Paths.adjuster(corner, kind, "start"), Texts.of("warning.outsideThread"),
                    Texts.of("warning.outsideThread.remedy"));
        }
        boolean locked = in.choice(Paths.adjuster(corner, kind, "locked")).equals(FieldKinds.YES);
        return Optional.of(new Adjuster(new AdjusterId(kind, corner), setting.get(), start, min, max, locked));
    }

    private Optional<Setting> thread(Corner corner, AdjusterKind kind) {
        OptionalDouble pitch = in.required(Paths.adjuster(corner, kind, "pitch"), "remedy.pitch");
        String stepsPath = Paths.adjuster(corner, kind, "steps");
        Optional<Integer> typed = in.whole(stepsPath);
        int steps = typed.orElse(QUARTER_TURNS);
        if (in.isBlank(stepsPath)) {
            assume(stepsPath, Integer.toString(QUARTER_TURNS), "assumed.steps");
        }
        String namePath = Paths.adjuster(corner, kind, "stepName");
        String name = Turns.stepName(in.words(namePath));
        if (name.isEmpty()) {
            name = usualName(kind, steps);
            assume(namePath, Turns.stepWord(name), "assumed.stepName");
        }
        boolean both = in.choice(Paths.adjuster(corner, kind, "ends")).equals(FieldKinds.BOTH_ENDS);
        return pitch.isPresent() ? Optional.of(new Setting.Thread(pitch.getAsDouble(), both, steps, name)) : Optional.empty();
    }

    private Optional<Setting> shims(Corner corner, AdjusterKind kind) {
        OptionalDouble pack = in.required(Paths.adjuster(corner, kind, "pack"), "remedy.pack");
        String stockPath = Paths.adjuster(corner, kind, "stock");
        try {
            List<Setting.Shim> stock = stock(corner, kind, draft.text(stockPath));
            return pack.isPresent() ? Optional.of(new Setting.Shims(stock, pack.getAsDouble())) : Optional.empty();
        } catch (IllegalArgumentException e) {
            in.problem(stockPath, e.getLocalizedMessage(), Texts.of("remedy.stock"));
            return Optional.empty();
        }
    }

    /** Stock left as it was keeps every digit. */
    private List<Setting.Shim> stock(Corner corner, AdjusterKind kind, String text) {
        Optional<List<Setting.Shim>> before = draft.basis().flatMap(c -> c.corners().get(corner).adjuster(kind))
                .map(Adjuster::setting).filter(Setting.Shims.class::isInstance).map(s -> ((Setting.Shims) s).stock());
        return before.filter(s -> ShimStockText.of(s, draft.figures()).equals(text))
                .orElseGet(() -> ShimStockText.read(text, draft.figures()));
    }

    private void assume(String path, String value, String ruleKey) {
        assumed.add(new Assumed(Optional.of(path), new FieldNames(draft).of(path), value, Texts.of(ruleKey)));
    }

    /** Names under which {@link Turns} counts steps. */
    private static String usualName(AdjusterKind kind, int steps) {
        return switch (steps) {
            case 1 -> "turn";
            case 2 -> "half turn";
            case QUARTER_TURNS -> "quarter turn";
            case 6 -> "flat";
            default -> kind == AdjusterKind.PERCH ? "notch" : "step";
        };
    }
}
