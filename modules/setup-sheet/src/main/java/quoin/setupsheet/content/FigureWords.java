package quoin.setupsheet.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.openide.util.NbBundle.Messages;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CornerSetup;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.quantities.Dimension;
import quoin.quantities.QuantityFormat;
import quoin.setupsheet.content.SheetContent.Figure;
import quoin.workbench.DaySnapshot;
import quoin.workbench.ReadingFormat;
import quoin.workflow.Freshness;
import quoin.workflow.ReadingState;

/** Figures of a day as the sheet shows them. */
@Messages({
    "figure.notRead=not read", "figure.inside=inside", "figure.outside=OUTSIDE", "figure.close=too close",
    "figure.again=check again", "figure.doubtful=doubtful", "figure.order=out of order", "figure.noTarget=no target",
    "figure.spring=spring", "figure.unknown=not known"})
final class FigureWords {

    /** Coverage factor of the expanded uncertainty printed, about 95 % (JCGM 100:2008, 6.3.3). */
    static final double COVERAGE = 2;
    private static final double NOTHING = 1e-12;

    private final DaySnapshot snapshot;
    private final ReadingFormat format;
    private final Car car;
    private final boolean blank;

    FigureWords(DaySnapshot snapshot, boolean blank) {
        this.snapshot = snapshot;
        this.format = snapshot.format();
        this.car = snapshot.car();
        this.blank = blank;
    }

    List<Figure> at(Corner corner) {
        List<Figure> figures = new ArrayList<>(SheetOrder.at(car, corner, snapshot.stages()).stream()
                .filter(id -> blank || worthALine(id)).map(id -> figure(id, id.kind().words())).toList());
        CornerSetup setup = car.corners().get(corner);
        String rate = setup.springRateNPerMm().isPresent()
                ? QuantityFormat.formatWithUnit(setup.springRateNPerMm().getAsDouble(), Dimension.STIFFNESS, snapshot.units().preferences())
                : Bundle.figure_unknown();
        figures.add(new Figure(Bundle.figure_spring(), rate, "", "", "", setup.springRateNPerMm().isPresent()));
        return figures;
    }

    /** Figures of the whole car: those the stages judge or compute, and extra height points. */
    List<Figure> whole() {
        List<ReadingId> extra = SheetOrder.extraHeights(car);
        if (blank) {
            return extra.stream().map(id -> figure(id, id.words())).toList();
        }
        return snapshot.status().stages().stream().flatMap(s -> s.readings().stream()).map(ReadingState::reading).distinct()
                .filter(id -> SheetOrder.cornerOf(car, id).isEmpty()).filter(id -> extra.contains(id) || worthALine(id))
                .map(id -> figure(id, name(id))).toList();
    }

    private static String name(ReadingId id) {
        return id.kind() == ReadingKind.TOTAL_TOE ? id.kind().words() + " " + id.placeWords() : id.words();
    }

    private boolean worthALine(ReadingId id) {
        ReadingState state = snapshot.status().reading(id);
        return state.value().isPresent() || state.target().isPresent() || id.kind() == ReadingKind.LOAD
                || id.kind() == ReadingKind.HEIGHT;
    }

    private Figure figure(ReadingId id, String name) {
        ReadingState state = snapshot.status().reading(id);
        String target = state.target().map(t -> blank ? format.band(id, t.value(), t.tolerance())
                : format.bandNumber(id, t.value(), t.tolerance())).orElse("");
        if (blank) {
            return new Figure(name, format.unit(id), "", target, "", false);
        }
        if (state.value().isEmpty()) {
            return new Figure(name, Bundle.figure_notRead(), "", target, "", false);
        }
        String u = state.uncertainty() > NOTHING ? "± " + format.number(id, COVERAGE * state.uncertainty()) : "";
        return new Figure(name, format.text(id, state.value().getAsDouble()), u, target, word(state), true);
    }

    private static String word(ReadingState state) {
        Optional<String> old = switch (state.freshness()) {
            case STALE -> Optional.of(Bundle.figure_again());
            case OUT_OF_ORDER -> Optional.of(Bundle.figure_order());
            default -> Optional.empty();
        };
        return old.orElseGet(() -> state.verdict().map(v -> switch (v.answer()) {
            case INSIDE -> state.freshness() == Freshness.DOUBTFUL ? Bundle.figure_doubtful() : Bundle.figure_inside();
            case OUTSIDE -> Bundle.figure_outside();
            case TOO_CLOSE -> Bundle.figure_close();
        }).orElse(""));
    }
}
