package quoin.comparison;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.openide.util.NbBundle.Messages;
import quoin.car.ReadingId;
import quoin.logbook.DayInfo;
import quoin.workbench.Mark;
import quoin.workbench.ReadingFormat;
import quoin.workbench.VerdictWords;
import quoin.workflow.Difference;
import quoin.workflow.Measured;
import quoin.workflow.StateComparison;

/** Moments, lines and days in words. */
@Messages({
    "moment.asFound=As found", "# {0} - number", "moment.round=After round {0}", "# {0} - stage", "moment.signed={0} signed off",
    "moment.beforeReweigh=Before the re-weigh", "moment.last=Last state", "moment.target=Target",
    "# {0} - moment", "# {1} - time", "moment.at={0}, {1}",
    "word.noChange=no change", "word.up=higher", "word.down=lower", "word.notBetween=not read between", "word.missing=only one reading",
    "word.onTarget=on target", "word.above=above", "word.below=below", "word.close=too close to call",
    "# {0} - difference", "# {1} - noise", "difference.withNoise={0} ± {1}",
    "# {0} - date", "# {1} - title", "day.titled={0} {1}"})
final class ComparisonWords {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm").withZone(ZoneId.systemDefault());
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("yyyy-MM-dd").withZone(ZoneId.systemDefault());

    private ComparisonWords() {
    }

    static String date(Instant begun) {
        return DATE.format(begun);
    }

    static String day(DayInfo day) {
        return Bundle.day_titled(DATE.format(day.created()), day.title()).strip();
    }

    /**
     * @param stageTitle title of a stage by its id
     */
    static String moment(Moment moment, UnaryOperator<String> stageTitle) {
        return Bundle.moment_at(moment(moment.kind(), moment.round(), moment.stage(), stageTitle), TIME.format(moment.time()));
    }

    /** A moment without its time. */
    static String moment(Moment.Kind kind, int round, String stage, UnaryOperator<String> stageTitle) {
        return switch (kind) {
            case AS_FOUND -> Bundle.moment_asFound();
            case ROUND -> Bundle.moment_round(round);
            case SIGNED -> Bundle.moment_signed(stageTitle.apply(stage));
            case BEFORE_REWEIGH -> Bundle.moment_beforeReweigh();
            case LAST -> Bundle.moment_last();
        };
    }

    static String value(Optional<Measured> value, ReadingId id, ReadingFormat format) {
        return value.map(v -> format.number(id, v.value())).orElse("–");
    }

    /** "+0.10 ± 0.15". */
    static String difference(StateComparison.Line line, ReadingFormat format) {
        return line.difference().map(d -> Bundle.difference_withNoise(format.changeNumber(line.reading(), d.amount()),
                format.number(line.reading(), d.band()))).orElse("–");
    }

    static VerdictWords word(StateComparison.Line line) {
        boolean up = line.difference().map(Difference::amount).orElse(0.0) > 0;
        return switch (line.word()) {
            case NO_CHANGE -> new VerdictWords(Mark.WAITING, Bundle.word_noChange());
            case CHANGED -> up ? new VerdictWords(Mark.ABOVE, Bundle.word_up()) : new VerdictWords(Mark.BELOW, Bundle.word_down());
            case NOT_READ_BETWEEN -> new VerdictWords(Mark.NONE, Bundle.word_notBetween());
            case MISSING -> new VerdictWords(Mark.NONE, Bundle.word_missing());
            case ON_TARGET -> new VerdictWords(Mark.INSIDE, Bundle.word_onTarget());
            case OFF_TARGET -> up ? new VerdictWords(Mark.ABOVE, Bundle.word_above()) : new VerdictWords(Mark.BELOW, Bundle.word_below());
            case TOO_CLOSE -> new VerdictWords(Mark.CLOSE, Bundle.word_close());
        };
    }
}
