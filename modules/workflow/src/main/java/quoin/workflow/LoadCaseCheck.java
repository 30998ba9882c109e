package quoin.workflow;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.LoadCase;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Figure;
import quoin.quantities.Texts;
import quoin.workflow.spi.Finding;

/** Whether readings were taken in the load case they are signed for: driver, fuel and pressures at the time of each. */
public final class LoadCaseCheck {

    private static final Texts TEXTS = Texts.of(LoadCaseCheck.class);

    /** Fuel further off is another load case, kg: half a litre and the gauge (common practice, no source). */
    static final double FUEL_KG = 0.5;
    /** Pressure further off is another load case, bar: twice what a gauge is read to (common practice, no source). */
    static final double PRESSURE_BAR = 0.04;

    private LoadCaseCheck() {
    }

    /**
     * Warnings for some readings, each departure told once with the kinds of reading it is about.
     *
     * @param readings typed readings; only weights, heights and angles belong to a load case
     */
    public static List<Finding> of(Day day, List<ReadingId> readings) {
        Map<String, Map<ReadingKind, ReadingId>> departures = new TreeMap<>();
        for (ReadingId id : readings) {
            Optional<Figure> last = day.latest(id).filter(f -> belongs(id.kind()));
            last.ifPresent(f -> departures(day, f).forEach(w -> departures.computeIfAbsent(w, k -> new TreeMap<>()).putIfAbsent(id.kind(), id)));
        }
        List<Finding> findings = new ArrayList<>();
        departures.forEach((words, kinds) -> {
            String which = kinds.keySet().stream().map(ReadingKind::words).reduce((a, b) -> TEXTS.say("list.and", a, b)).orElse("");
            findings.add(Finding.warning(TEXTS.say("case.other", Texts.sentence(which), words)));
        });
        return List.copyOf(findings);
    }

    private static boolean belongs(ReadingKind kind) {
        return switch (kind) {
            case LOAD, HEIGHT, CAMBER, CASTER, TOE -> true;
            default -> false;
        };
    }

    private static List<String> departures(Day day, Figure figure) {
        LoadCase wanted = day.car().loadCase();
        List<String> words = new ArrayList<>();
        driver(wanted, figure).ifPresent(words::add);
        fuel(wanted, figure).ifPresent(words::add);
        for (Axle axle : Axle.values()) {
            for (Corner corner : List.of(axle.left(), axle.right())) {
                pressure(day, wanted.pressureBar().get(axle), corner, figure).ifPresent(words::add);
            }
        }
        return words;
    }

    private static Optional<String> driver(LoadCase wanted, Figure figure) {
        String now = figure.conditions().getOrDefault(Conditions.DRIVER_NAME, "").strip();
        boolean other = !wanted.driver().isBlank() && !now.isEmpty() && !now.equalsIgnoreCase(wanted.driver().strip());
        return other ? Optional.of(TEXTS.say("case.driver", now, wanted.driver()))
                : Optional.empty();
    }

    private static Optional<String> fuel(LoadCase wanted, Figure figure) {
        OptionalDouble now = number(figure.conditions().get(Conditions.FUEL));
        if (now.isEmpty() || wanted.fuelKg().isEmpty() || Math.abs(now.getAsDouble() - wanted.fuelKg().getAsDouble()) <= FUEL_KG) {
            return Optional.empty();
        }
        return Optional.of(TEXTS.say("case.fuel", Texts.figure("%.1f kg", now.getAsDouble()), Texts.figure("%.1f kg", wanted.fuelKg().getAsDouble())));
    }

    private static Optional<String> pressure(Day day, OptionalDouble wanted, Corner corner, Figure figure) {
        Optional<Figure> now = day.latestAt(ReadingId.of(ReadingKind.PRESSURE, corner), figure.entry());
        if (now.isEmpty() || wanted.isEmpty() || Math.abs(now.get().value() - wanted.getAsDouble()) <= PRESSURE_BAR) {
            return Optional.empty();
        }
        return Optional.of(TEXTS.say("case.pressure", corner.words(), Texts.figure("%.2f bar", now.get().value()),
                Texts.figure("%.2f bar", wanted.getAsDouble())));
    }

    private static OptionalDouble number(String text) {
        try {
            return text == null ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }
}
