package quoin.workflow;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import quoin.car.Car;
import quoin.car.ReadingId;
import quoin.logbook.Day;
import quoin.logbook.Derivation;
import quoin.logbook.Figure;
import quoin.workflow.spi.Requirement;
import quoin.workflow.spi.Stage;

/** What the stages ask for on a car with the targets of a day: it changes only with the targets, so it is asked for once. */
final class Asked {

    private record Of(List<Stage> stages) implements Derivation<Asked> {
        @Override
        public Asked of(Day day) {
            return new Asked(day.car().withTargets(day.targets()), stages);
        }

        @Override
        public Asked onward(Day earlier, Asked known, Day day) {
            return earlier.targets() == day.targets() ? known : of(day);
        }
    }

    /** The last figure of each reading that was read in order. */
    private record InOrder(Asked asked) implements Derivation<Map<ReadingId, Figure>> {
        @Override
        public Map<ReadingId, Figure> of(Day day) {
            Map<ReadingId, Figure> found = new HashMap<>();
            day.readings().forEach(id -> last(day, id, 0).ifPresent(f -> found.put(id, f)));
            return found;
        }

        @Override
        public Map<ReadingId, Figure> onward(Day earlier, Map<ReadingId, Figure> known, Day day) {
            Map<ReadingId, Figure> found = new HashMap<>(known);
            day.readings().forEach(id -> last(day, id, earlier.history(id).size()).ifPresent(f -> found.put(id, f)));
            return found;
        }

        private Optional<Figure> last(Day day, ReadingId reading, int from) {
            List<Figure> history = day.history(reading);
            Timeline timeline = Timeline.of(day);
            for (int i = history.size() - 1; i >= from; i--) {
                if (asked.isInOrder(history.get(i), timeline)) {
                    return Optional.of(history.get(i));
                }
            }
            return Optional.empty();
        }
    }

    private final Car car;
    private final List<Stage> stages;
    private final Map<ReadingId, Stage> owners = new HashMap<>();
    private final Map<Stage, List<Requirement>> requirements = new HashMap<>();
    private final Map<Stage, List<ReadingId>> readings = new HashMap<>();
    private final Map<Stage, List<ReadingId>> judged = new HashMap<>();
    private final Map<ReadingId, List<ReadingId>> parts = new ConcurrentHashMap<>();
    private final Map<ReadingId, List<Requirement>> needed = new ConcurrentHashMap<>();

    private Asked(Car car, List<Stage> stages) {
        this.car = car;
        this.stages = stages;
        for (Stage stage : stages) {
            requirements.put(stage, stage.requirements(car));
            readings.put(stage, stage.readings(car));
            judged.put(stage, stage.judged(car));
            readings.get(stage).forEach(r -> owners.putIfAbsent(r, stage));
        }
    }

    /** What is asked for on a day. */
    static Asked of(Day day, List<Stage> stages) {
        return day.derive(new Of(stages));
    }

    /** The last figure of a reading that was read in order; empty where none was. */
    Optional<Figure> lastInOrder(Day day, ReadingId reading) {
        return Optional.ofNullable(day.derive(new InOrder(this)).get(reading));
    }

    /** The car with the targets of the day. */
    Car car() {
        return car;
    }

    /** The stage a typed reading belongs to: the first that lists it. */
    Optional<Stage> owner(ReadingId typed) {
        return Optional.ofNullable(owners.get(typed));
    }

    List<Requirement> requirements(Stage stage) {
        return requirements.get(stage);
    }

    List<ReadingId> readings(Stage stage) {
        return readings.get(stage);
    }

    List<ReadingId> judged(Stage stage) {
        return judged.get(stage);
    }

    /** The typed readings one is made of. */
    List<ReadingId> parts(ReadingId reading) {
        return parts.computeIfAbsent(reading, r -> Derived.parts(car, r));
    }

    /** Conditions a typed reading is taken in: those of the stage it belongs to. */
    List<Requirement> needed(ReadingId typed) {
        return needed.computeIfAbsent(typed, id -> owner(id).map(requirements::get).orElse(List.of()).stream()
                .filter(r -> r.appliesTo(id.kind())).toList());
    }

    /** The first stage before that of a typed reading which was not signed off when it was taken; empty where there is none. */
    Optional<Stage> notSignedBefore(ReadingId typed, Timeline.Moment moment) {
        Stage owner = owners.get(typed);
        for (Stage earlier : owner == null ? List.<Stage>of() : stages) {
            if (earlier.position() < owner.position() && !moment.signed().contains(earlier.id())) {
                return Optional.of(earlier);
            }
        }
        return Optional.empty();
    }

    private boolean isInOrder(Figure figure, Timeline timeline) {
        Timeline.Moment moment = timeline.at(figure.entry());
        return needed(figure.reading()).stream().allMatch(r -> Assessor.held(r, figure, moment))
                && notSignedBefore(figure.reading(), moment).isEmpty();
    }
}
