package quoin.workbench;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import quoin.car.Car;
import quoin.car.ReadingId;
import quoin.logbook.Day;
import quoin.logbook.Figure;
import quoin.workflow.DayStatus;
import quoin.workflow.ReadingState;
import quoin.workflow.StageStatus;
import quoin.workflow.spi.Stage;

/**
 * The open day at one revision: everything a window shows comes from here.
 *
 * @param day    the day as its entries tell it
 * @param status what the order of work says about it
 * @param units  how figures are shown
 */
public record DaySnapshot(Day day, DayStatus status, DisplayUnits units) {

    public DaySnapshot {
        Objects.requireNonNull(day, "day");
        Objects.requireNonNull(status, "status");
        Objects.requireNonNull(units, "units");
    }

    public Car car() {
        return day.car();
    }

    public ReadingFormat format() {
        return new ReadingFormat(day.car(), units);
    }

    public AdjusterWords adjusterWords() {
        return new AdjusterWords(day.car(), units);
    }

    public EntryWords entryWords() {
        return new EntryWords(day, units, this::stageTitle);
    }

    /** Title of a stage; the id itself where no installed stage has it. */
    public String stageTitle(String id) {
        return stages().stream().filter(s -> s.id().equals(id)).map(Stage::title).findFirst().orElse(id);
    }

    public List<Stage> stages() {
        return status.stages().stream().map(StageStatus::stage).toList();
    }

    /** The status of a stage; empty where its module is not installed. */
    public Optional<StageStatus> stage(String id) {
        return status.stages().stream().filter(s -> s.stage().id().equals(id)).findFirst();
    }

    /** What one stage says of a reading; empty where the stage does not name it. */
    public Optional<ReadingState> reading(String stageId, ReadingId reading) {
        return stage(stageId).flatMap(s -> s.readings().stream().filter(r -> r.reading().equals(reading)).findFirst());
    }

    /** The last value recorded. */
    public OptionalDouble last(ReadingId reading) {
        Optional<Figure> figure = day.latest(reading);
        return figure.isPresent() ? OptionalDouble.of(figure.get().value()) : OptionalDouble.empty();
    }
}
