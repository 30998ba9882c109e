package quoin.setupsheet;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.openide.util.NbBundle.Messages;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.workbench.DaySnapshot;
import quoin.workflow.Freshness;
import quoin.workflow.ReadingState;
import quoin.workflow.StageState;
import quoin.workflow.StageStatus;

/**
 * The set-up sheet of a day as plain text, 78 columns wide, readable in any editor and on any printer: the figures at the
 * corners, every adjuster's position, the load case, what was waived and why. Nothing is left out because it is bad: a
 * figure that is stale says so.
 */
@Messages({
    "# {0} - car", "text.head=SET-UP SHEET   {0}", "# {0} - begun", "# {1} - last entry", "# {2} - number",
    "text.begun=begun {0}, last entry {1} (entry {2})", "text.plan=Plan view, front of the car at the top",
    "text.noTarget=no target", "text.inside=inside", "text.outside=OUTSIDE", "text.tooClose=too close to call",
    "text.adjusters=Adjusters", "text.notMeasured=length not measured", "text.notTouched=not touched",
    "text.condition=Condition of the car", "text.nothingNoted=nothing noted", "text.signed=Signed",
    "# {0} - number", "# {1} - time", "text.signature=entry {0}, {1}", "text.notSigned=NOT SIGNED",
    "# {0} - reason", "text.outOfOrder=, OUT OF ORDER: {0}", "text.checkAgain=CHECK AGAIN", "text.dayClosed=Day closed",
    "# {0} - number", "text.closedBy=entry {0}", "text.notClosed=NOT CLOSED", "text.notProved=NOT PROVED", "text.notes=Notes",
    "text.caution=Before the car moves: bars joined, dampers back, steering lock out, every nut loosened",
    "text.caution2=today tightened to its maker's torque. Local rules and a qualified person come first."})
public final class SheetText {

    private static final int WIDTH = 78;

    private final DaySnapshot snapshot;
    private final Day day;
    private final ZoneId zone;
    private final List<String> lines = new ArrayList<>();

    private SheetText(DaySnapshot snapshot, ZoneId zone) {
        this.snapshot = snapshot;
        this.day = snapshot.day();
        this.zone = zone;
    }

    /** The sheet of a day; times are shown in the zone given. */
    public static String of(DaySnapshot snapshot, ZoneId zone) {
        SheetText sheet = new SheetText(snapshot, zone);
        sheet.head();
        sheet.plan();
        sheet.readings();
        sheet.adjusters();
        sheet.conditions();
        sheet.signatures();
        sheet.notes();
        sheet.foot();
        return String.join("\n", sheet.lines) + "\n";
    }

    private void head() {
        lines.add(Bundle.text_head(day.car().name()));
        Instant first = day.written().get(0).header().time();
        Instant last = day.written().get(day.written().size() - 1).header().time();
        lines.add(Bundle.text_begun(time(first), time(last), Long.toString(day.revision())));
        lines.add("=".repeat(WIDTH));
    }

    private String time(Instant instant) {
        return DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT).withLocale(Locale.getDefault())
                .withZone(zone).format(instant);
    }

    private void section(String title) {
        lines.add("");
        lines.add(title.toUpperCase(Locale.ROOT));
    }

    /** The four corners as they stand seen from above, front of the car at the top. */
    private void plan() {
        section(Bundle.text_plan());
        List<ReadingId> all = known();
        for (Corner left : List.of(Corner.LF, Corner.LR)) {
            Corner right = left.acrossAxle();
            lines.add(String.format("  %-34s      %-34s", left.words(), right.words()).stripTrailing());
            List<String> one = at(all, left);
            List<String> two = at(all, right);
            for (int i = 0; i < Math.max(one.size(), two.size()); i++) {
                lines.add(String.format("    %-34s    %-34s", i < one.size() ? one.get(i) : "", i < two.size() ? two.get(i) : "")
                        .stripTrailing());
            }
            lines.add("");
        }
        lines.remove(lines.size() - 1);
    }

    private List<ReadingId> known() {
        return snapshot.status().stages().stream().flatMap(s -> s.readings().stream()).filter(r -> r.value().isPresent())
                .map(ReadingState::reading).distinct().toList();
    }

    private List<String> at(List<ReadingId> known, Corner corner) {
        Optional<ReadingId> height = day.car().heightPoint(corner).map(p -> p.reading());
        return known.stream().filter(r -> r.place().equals(corner.name()) || height.filter(r::equals).isPresent())
                .map(r -> r.kind().words() + " " + snapshot.format().text(r, snapshot.last(r).orElseThrow())).toList();
    }

    private void readings() {
        for (StageStatus stage : snapshot.status().stages()) {
            if (stage.readings().stream().allMatch(r -> r.value().isEmpty())) {
                continue;
            }
            section(stage.stage().title());
            stage.readings().stream().filter(r -> r.value().isPresent()).forEach(r -> lines.add(line(r)));
        }
    }

    private String line(ReadingState state) {
        ReadingId id = state.reading();
        String value = snapshot.format().text(id, state.value().orElseThrow());
        String target = state.target().map(t -> snapshot.format().band(id, t.value(), t.tolerance())).orElse(Bundle.text_noTarget());
        String word = state.verdict().map(v -> switch (v.answer()) {
            case INSIDE -> Bundle.text_inside();
            case OUTSIDE -> Bundle.text_outside();
            case TOO_CLOSE -> Bundle.text_tooClose();
        }).orElse("");
        String fresh = state.freshness() == Freshness.FRESH || state.reasons().isEmpty() ? ""
                : " [" + state.reasons().get(state.reasons().size() - 1) + "]";
        return String.format("  %-26s %12s   %-20s %s%s", id.words(), value, target, word, fresh).stripTrailing();
    }

    private void adjusters() {
        section(Bundle.text_adjusters());
        for (Adjuster adjuster : day.car().adjusters()) {
            lines.add(adjuster(adjuster));
        }
        for (Map.Entry<AdjusterId, Double> turned : day.turned().entrySet()) {
            if (day.car().adjuster(turned.getKey()).isEmpty()) {
                lines.add("  " + snapshot.adjusterWords().sentence(turned.getKey(), turned.getValue()));
            }
        }
    }

    private String adjuster(Adjuster adjuster) {
        double turned = day.turned(adjuster.id());
        double perTurn = adjuster.setting().mmPerUnit();
        OptionalDouble start = adjuster.startMm();
        String length = start.isPresent()
                ? snapshot.adjusterWords().length(start.getAsDouble()) + " -> "
                        + snapshot.adjusterWords().length(start.getAsDouble() + turned * perTurn)
                : Bundle.text_notMeasured();
        String moved = turned == 0 ? Bundle.text_notTouched() : snapshot.adjusterWords().amount(adjuster.id(), turned);
        return String.format("  %-20s %-24s %s", adjuster.id().words(), length, moved).stripTrailing();
    }

    private void conditions() {
        section(Bundle.text_condition());
        Map<String, String> last = new LinkedHashMap<>();
        for (Entry entry : day.effective()) {
            if (entry instanceof Entry.Condition condition) {
                last.put(condition.key(), snapshot.entryWords().of(condition));
            }
        }
        if (last.isEmpty()) {
            lines.add("  " + Bundle.text_nothingNoted());
        }
        last.values().forEach(words -> lines.add("  " + words));
    }

    private void signatures() {
        section(Bundle.text_signed());
        for (StageStatus stage : snapshot.status().stages()) {
            String words = day.signOff(stage.stage().id()).map(s -> Bundle.text_signature(Long.toString(s.number()),
                    time(s.header().time()))
                    + s.waived().map(Bundle::text_outOfOrder).orElse("")).orElse(Bundle.text_notSigned());
            String again = stage.state() == StageState.CHECK_AGAIN ? "  " + Bundle.text_checkAgain() : "";
            lines.add(String.format("  %-20s %s%s", stage.stage().title(), words, again));
        }
        lines.add(String.format("  %-20s %s", Bundle.text_dayClosed(),
                day.closed().map(c -> Bundle.text_closedBy(Long.toString(c.number()))
                + c.outOfOrder().map(Bundle::text_outOfOrder).orElse("")).orElse(Bundle.text_notClosed())));
        day.closed().map(Entry.DayClosed::notProved).orElse(List.of()).forEach(w -> lines.add(String.format("  %-20s %s",
                Bundle.text_notProved(), w)));
    }

    private void notes() {
        List<String> words = day.effective().stream().filter(Entry.Note.class::isInstance).map(Entry.Note.class::cast)
                .map(Entry.Note::words).toList();
        if (!words.isEmpty()) {
            section(Bundle.text_notes());
            words.forEach(w -> lines.add("  " + w));
        }
    }

    private void foot() {
        lines.add("");
        lines.add("-".repeat(WIDTH));
        lines.add(Bundle.text_caution());
        lines.add(Bundle.text_caution2());
    }
}
