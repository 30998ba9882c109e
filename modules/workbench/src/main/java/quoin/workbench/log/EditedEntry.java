package quoin.workbench.log;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.openide.util.NbBundle.Messages;
import quoin.car.ReadingId;
import quoin.logbook.Conditions;
import quoin.logbook.Entry;
import quoin.logbook.Measurement;
import quoin.workbench.ConditionFigure;
import quoin.workbench.DaySnapshot;
import quoin.workbench.EntryWords;
import quoin.workbench.ReadingFormat;
import quoin.workflow.ScaleCorrection;

/**
 * An entry taken apart into fields to be typed anew.
 *
 * @param entry  the entry as it counts now
 * @param fields a name and the present text per field, in order
 */
@Messages({
    "edit.words=Words", "edit.empty=empty; type what holds instead, or withdraw the entry",
    "# {0} - field", "# {1} - problem", "edit.problem={0}: {1}",
    "# {0} - reading", "# {1} - figure", "edit.byHand={0} corrected by hand, computed {1}"})
record EditedEntry(Entry entry, List<Field> fields) {

    /** Conditions that are told in the racer's own words; a state such as "brakes off" is ticked or unticked, and so only withdrawn here. */
    private static final Set<String> IN_WORDS = Set.of(Conditions.BALLAST, Conditions.TYRES, Conditions.DRIVER_NAME, Conditions.PLACE);
    /** Before the id of a figure: what the method had computed for one that was typed over. */
    static final String COMPUTED = "computed.";

    /**
     * @param name as shown before the field
     * @param text what it holds now
     */
    record Field(String name, String text) {
    }

    /** The fields of an entry; empty where it cannot be corrected but only withdrawn. */
    static Optional<EditedEntry> of(Entry entry, DaySnapshot day) {
        List<Field> fields = new ArrayList<>();
        if (entry instanceof Entry.Reading reading) {
            ReadingFormat format = day.format();
            reading.values().forEach((id, value) -> fields.add(new Field(id.words(),
                    format.exact(id, ScaleCorrection.shown(reading, id).orElse(value)))));
        } else if (entry instanceof Entry.Adjustment adjustment) {
            adjustment.turns().forEach(t -> fields.add(new Field(t.adjuster().words(), day.adjusterWords().amount(t.adjuster(), t.amount()))));
        } else if (entry instanceof Entry.Condition condition && (Conditions.isFigure(condition.key()) || IN_WORDS.contains(condition.key()))) {
            fields.add(new Field(EntryWords.conditionName(condition.key()), condition.value()));
        } else if (entry instanceof Entry.Note note) {
            fields.add(new Field(Bundle.edit_words(), note.words()));
        }
        return fields.isEmpty() ? Optional.empty() : Optional.of(new EditedEntry(entry, fields));
    }

    /**
     * The entry with other texts in its fields. A reading whose field is empty is left out.
     *
     * @throws IllegalArgumentException where a field cannot be read, in words for the racer
     */
    Entry with(List<String> texts, DaySnapshot day) {
        if (entry instanceof Entry.Reading reading) {
            return reading(reading, texts, day.format());
        } else if (entry instanceof Entry.Adjustment adjustment) {
            List<Entry.Turn> turns = new ArrayList<>();
            for (int i = 0; i < texts.size(); i++) {
                Entry.Turn turn = adjustment.turns().get(i);
                turns.add(new Entry.Turn(turn.adjuster(), day.adjusterWords().parse(turn.adjuster(), texts.get(i)), turn.lengthMm()));
            }
            return new Entry.Adjustment(adjustment.header(), turns, adjustment.words());
        } else if (entry instanceof Entry.Condition condition) {
            return new Entry.Condition(condition.header(), condition.key(), value(condition.key(), texts.get(0).strip()), condition.words());
        }
        return new Entry.Note(entry.header(), texts.get(0).strip());
    }

    private static String value(String key, String text) {
        if (Conditions.isFigure(key)) {
            try {
                return ConditionFigure.of(key, text);
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException(Bundle.edit_problem(EntryWords.conditionName(key), e.getLocalizedMessage()), e);
            }
        }
        if (text.isEmpty()) {
            throw new IllegalArgumentException(Bundle.edit_problem(EntryWords.conditionName(key), Bundle.edit_empty()));
        }
        return text;
    }

    private Entry reading(Entry.Reading reading, List<String> texts, ReadingFormat format) {
        Map<ReadingId, Double> values = new LinkedHashMap<>();
        Map<ReadingId, String> typed = new LinkedHashMap<>();
        Map<ReadingId, Double> shown = new LinkedHashMap<>();
        List<ReadingId> ids = List.copyOf(reading.values().keySet());
        for (int i = 0; i < ids.size(); i++) {
            ReadingId id = ids.get(i);
            String text = texts.get(i).strip();
            if (text.equals(fields.get(i).text())) {
                values.put(id, reading.values().get(id));
                Optional.ofNullable(reading.typed().get(id)).ifPresent(t -> typed.put(id, t));
            } else if (!text.isEmpty()) {
                double value = parse(format, id, text);
                values.put(id, value);
                ScaleCorrection.shown(reading, id).filter(s -> s != 0).ifPresent(s -> shown.put(id, value));
                typed.put(id, text);
            }
        }
        boolean asMeasured = values.equals(reading.values());
        if (!shown.isEmpty()) {
            Entry.Reading right = ScaleCorrection.retyped(reading, shown);
            shown.keySet().forEach(id -> values.put(id, right.values().get(id)));
            return new Entry.Reading(reading.header(), values, typed, Entry.Source.RACER, right.measured());
        }
        return new Entry.Reading(reading.header(), values, typed, Entry.Source.RACER,
                asMeasured ? reading.measured() : reading.measured().map(m -> byHand(reading, values, m, format)));
    }

    /** What was read for a figure stays with the one typed over it; the computed one is kept among it and named in the words. */
    private static Measurement byHand(Entry.Reading reading, Map<ReadingId, Double> values, Measurement measured, ReadingFormat format) {
        Map<String, String> raw = new LinkedHashMap<>(measured.raw());
        List<String> words = new ArrayList<>();
        if (!measured.words().isEmpty()) {
            words.add(measured.words());
        }
        values.forEach((id, value) -> {
            double computed = reading.values().get(id);
            if (value != computed) {
                raw.putIfAbsent(COMPUTED + id, Double.toString(computed));
                words.add(Bundle.edit_byHand(id.words(), format.text(id, Double.parseDouble(raw.get(COMPUTED + id)))));
            }
        });
        Map<ReadingId, Double> uncertainty = new LinkedHashMap<>(measured.standardUncertainty());
        uncertainty.keySet().retainAll(values.keySet());
        return new Measurement(measured.method(), raw, String.join("; ", words), uncertainty);
    }

    private static double parse(ReadingFormat format, ReadingId id, String text) {
        try {
            return format.parse(id, text);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(Bundle.edit_problem(id.words(), e.getLocalizedMessage()), e);
        }
    }
}
