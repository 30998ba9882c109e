package quoin.garage.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import quoin.quantities.Dimension;
import quoin.quantities.Quantities;
import quoin.quantities.QuantityFormatException;
import quoin.quantities.Unit;

/** Reads the texts of a draft one by one and keeps what is wrong with them. */
final class TypedValues {

    /** A toe length beyond this, mm, was more likely meant as toe-in than as inches. */
    private static final double LARGE_TOE_MM = 8;
    private static final int MOST_STEPS = 1000;

    private final CarDraft draft;
    private final FieldNames names;
    private final List<Remark> remarks = new ArrayList<>();

    TypedValues(CarDraft draft) {
        this.draft = draft;
        this.names = new FieldNames(draft);
    }

    List<Remark> remarks() {
        return remarks;
    }

    boolean hasProblems() {
        return remarks.stream().anyMatch(r -> r.level() == Remark.Level.PROBLEM);
    }

    void problem(String path, String words, String remedy) {
        remarks.add(new Remark(path, Remark.Level.PROBLEM, names.of(path), words, remedy));
    }

    void warning(String path, String words, String remedy) {
        remarks.add(new Remark(path, Remark.Level.WARNING, names.of(path), words, remedy));
    }

    boolean isBlank(String path) {
        return draft.text(path).isBlank();
    }

    /** Words without the spaces around them. */
    String words(String path) {
        return draft.text(path).strip();
    }

    /** The chosen answer; the first where none was. */
    String choice(String path) {
        String text = draft.text(path);
        return text.isEmpty() && FieldKinds.of(path) instanceof FieldKind.Choice choice ? choice.options().get(0).value() : text;
    }

    /** A figure in the base unit; empty where nothing or nothing readable was typed. */
    OptionalDouble figure(String path) {
        if (isBlank(path)) {
            return OptionalDouble.empty();
        }
        FieldKind.Figure kind = (FieldKind.Figure) FieldKinds.of(path);
        OptionalDouble kept = draft.exactValue(path);
        OptionalDouble value = kept.isPresent() ? kept : parsed(path, draft.text(path), kind.dimension(), kind.sign());
        value.ifPresent(v -> doubt(path, v, kind));
        return value;
    }

    private OptionalDouble parsed(String path, String text, Dimension dimension, FieldKind.Sign sign) {
        try {
            return signed(path, draft.figures().read(text, dimension), sign);
        } catch (QuantityFormatException e) {
            problem(path, e.problem(), e.remedy());
            return OptionalDouble.empty();
        }
    }

    private OptionalDouble signed(String path, double value, FieldKind.Sign sign) {
        if (sign == FieldKind.Sign.POSITIVE && !(value > 0)) {
            problem(path, Texts.of("problem.notPositive"), Texts.of("remedy.positive"));
            return OptionalDouble.empty();
        }
        if (sign == FieldKind.Sign.NOT_NEGATIVE && value < 0) {
            problem(path, Texts.of("problem.negative"), Texts.of("remedy.notNegative"));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(value);
    }

    private void doubt(String path, double value, FieldKind.Figure kind) {
        boolean ratio = path.endsWith(".motionRatio");
        if (ratio && value > 1) {
            FigureText figures = draft.figures();
            String shown = figures.of(Math.rint(value * 1000) / 1000, Dimension.NUMBER);
            String inverse = figures.of(Math.rint(1000 / value) / 1000, Dimension.NUMBER);
            warning(path, Texts.of("warning.motionRatio", shown), Texts.of("warning.motionRatio.remedy", inverse, shown));
        } else if (kind.usual().isPresent() && !kind.usual().get().holds(value)) {
            String shown = draft.figures().shown(value, kind.dimension());
            String low = draft.figures().shown(kind.usual().get().low(), kind.dimension());
            String high = draft.figures().shown(kind.usual().get().high(), kind.dimension());
            warning(path, Texts.of("warning.unusual", shown, low, high), Texts.of("warning.unusual.remedy"));
        }
    }

    /** A figure that must be there; empty, with a problem noted, where it is not. */
    OptionalDouble required(String path, String remedyKey) {
        if (isBlank(path)) {
            problem(path, Texts.of("problem.missing"), Texts.of(remedyKey));
            return OptionalDouble.empty();
        }
        return figure(path);
    }

    /** A toe in deg, plus = in. */
    OptionalDouble toe(String path, double chordMm) {
        if (isBlank(path)) {
            return OptionalDouble.empty();
        }
        OptionalDouble kept = draft.exactValue(path);
        if (kept.isPresent()) {
            return kept;
        }
        String text = draft.text(path);
        FieldKind.Toe kind = (FieldKind.Toe) FieldKinds.of(path);
        double toeDeg;
        try {
            toeDeg = draft.figures().readToe(text, chordMm);
        } catch (QuantityFormatException e) {
            problem(path, e.problem(), e.remedy());
            return OptionalDouble.empty();
        }
        double lengthMm = chordMm * Math.sin(Math.toRadians(toeDeg));
        if (Math.abs(lengthMm) > LARGE_TOE_MM) {
            warning(path, Texts.of("warning.toe", draft.figures().shown(lengthMm, Dimension.LENGTH)), Texts.of("warning.toe.remedy"));
        }
        return signed(path, toeDeg, kind.sign());
    }

    /** A whole number of 1 or more; empty where nothing readable was typed. */
    Optional<Integer> whole(String path) {
        if (isBlank(path)) {
            return Optional.empty();
        }
        try {
            double value = Quantities.parse(draft.text(path), Unit.ONE, draft.figures().preferences().decimalMark());
            if (value >= 1 && value <= MOST_STEPS && value == Math.rint(value)) {
                return Optional.of((int) value);
            }
        } catch (QuantityFormatException e) {
            // said in one way for every text that is no whole number
        }
        problem(path, Texts.of("problem.whole", draft.text(path).strip()), Texts.of("remedy.whole"));
        return Optional.empty();
    }
}
