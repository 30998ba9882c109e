package quoin.setupsheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.setupsheet.content.SheetOrder;
import quoin.workbench.DaySnapshot;
import quoin.workbench.TypedSet;
import quoin.workflow.spi.Stage;

/** A sheet filled in by hand and typed in: its fields in the order of the paper, and the entries that follow from them. */
@Messages({"# {0} - figure", "# {1} - what is wrong", "typed.problem={0}: {1}.", "typed.nothing=Nothing is typed yet.",
    "# {0} - notes", "typed.note=From a sheet filled in by hand. {0}"})
final class SheetEntry {

    private final DaySnapshot snapshot;
    private final List<ReadingId> readings;

    SheetEntry(DaySnapshot snapshot) {
        this.snapshot = snapshot;
        this.readings = SheetOrder.all(snapshot.car(), snapshot.stages());
    }

    /** The figures in the order of the paper. */
    List<ReadingId> readings() {
        return readings;
    }

    /** The figures in the box of a corner. */
    List<ReadingId> at(Corner corner) {
        return SheetOrder.at(snapshot.car(), corner, snapshot.stages());
    }

    /** Figures that stand at no corner. */
    List<ReadingId> others() {
        return SheetOrder.extraHeights(snapshot.car());
    }

    /** What is wrong, each with its figure; empty where everything can be recorded. */
    List<String> problems(List<String> texts, String notes) {
        TypedSet.Understood understood = understood(texts);
        if (understood.problems().isEmpty() && understood.values().isEmpty() && notes.isBlank()) {
            return List.of(Bundle.typed_nothing());
        }
        return understood.problems().entrySet().stream().map(e -> Bundle.typed_problem(e.getKey().words(), e.getValue())).toList();
    }

    /** The entries to record: the figures of each stage together, then the note. */
    List<Entry> entries(List<String> texts, String notes) {
        TypedSet.Understood understood = understood(texts);
        Map<String, Map<ReadingId, Double>> byStage = new LinkedHashMap<>();
        understood.values().forEach((id, value) -> byStage.computeIfAbsent(stage(id), s -> new TreeMap<>()).put(id, value));
        List<Entry> entries = new ArrayList<>();
        byStage.forEach((stage, values) -> {
            Map<ReadingId, String> typed = new TreeMap<>(understood.typed());
            typed.keySet().retainAll(values.keySet());
            entries.add(new Entry.Reading(Header.draft(stage), values, typed, Entry.Source.RACER));
        });
        if (!entries.isEmpty() || !notes.isBlank()) {
            entries.add(new Entry.Note(Header.draft(""), Bundle.typed_note(notes.strip()).strip()));
        }
        return entries;
    }

    private TypedSet.Understood understood(List<String> texts) {
        return new TypedSet(readings, texts).read(snapshot.format(), snapshot::last);
    }

    private String stage(ReadingId id) {
        return snapshot.stages().stream().filter(s -> s.readings(snapshot.car()).contains(id)).map(Stage::id).findFirst().orElse("");
    }
}
