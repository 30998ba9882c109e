package quoin.preparation.condition;

import java.awt.FlowLayout;
import java.awt.Font;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import org.openide.util.NbBundle.Messages;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.logbook.Entry;
import quoin.logbook.Measurement;
import quoin.mechanics.InvalidInputException;
import quoin.preparation.sheet.Cell;
import quoin.preparation.sheet.Choices;
import quoin.preparation.sheet.Figures;
import quoin.preparation.sheet.Lines;
import quoin.preparation.sheet.Sheet;
import quoin.quantities.Dimension;
import quoin.quantities.QuantityFormat;
import quoin.quantities.UnitPreferences;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.Looks;
import quoin.workbench.WrapText;

/** Springs pressed over a scale, and the thread engagement of a rod end. */
@Messages({
    "springs.front=Front", "springs.rear=Rear", "springs.axle=Springs of", "springs.record=Record the spri&ngs",
    "springs.caution=Press only within a guide or a cage, hands and face clear: a spring that slips out hits hard. Begin where the coils just carry.",
    "springs.missing=Two points of a spring are needed: press it by, say, 20 and 40 mm.",
    "# {0} - left", "# {1} - right", "springs.rates=Left {0}, right {1}.", "springs.unknown=not measured",
    "# {0} - rate", "# {1} - uncertainty", "springs.rate={0} \u00b1 {1}",
    "# {0} - difference", "springs.pair=They differ by {0}: a pair.",
    "# {0} - difference", "# {1} - limit", "springs.noPair=They differ by {0}, more than {1}: no pair. Sort the springs, or enter each in the car as measured.",
    "# {0} - described", "springs.described=The car is described with {0}.", "springs.recorded=Recorded.",
    "springs.same=One spring was pressed by the same amount each time: press it by two different amounts.",
    "end.diameter=Thread diameter", "end.pitch=Pitch", "end.engaged=Thread inside",
    "# {0} - needed", "# {1} - turns", "end.enough=Enough: {0} are needed, {1} turns may still come out.",
    "# {0} - needed", "# {1} - turns", "end.short=Too little: {0} are needed. Screw it in by {1} turns and shorten the other end, or fit a longer one."})
final class SpringsForm {

    private static final String SUBJECT = "springs.";
    private static final String DIAMETER = "diameter";
    private static final String PITCH = "pitch";
    private static final String ENGAGED = "engaged";
    private static final String METHOD = "press-over-scale";

    private final CurrentDay current;
    private final String stage;
    private final JComboBox<String> axle = new JComboBox<>(new String[] {Bundle.springs_front(), Bundle.springs_rear()});
    private final Sheet points = new Sheet(this::evaluate, this::record);
    private final Sheet end = new Sheet(this::evaluateEnd, this::evaluateEnd);
    private final WrapText says = new WrapText("", 1.05, Font.BOLD);
    private final WrapText endSays = new WrapText("", 1.05, Font.BOLD);
    private final JPanel springs;
    private DaySnapshot day;

    SpringsForm(CurrentDay current, String stage) {
        this.current = current;
        this.stage = stage;
        axle.addActionListener(e -> evaluate());
        axle.getAccessibleContext().setAccessibleName(Bundle.springs_axle());
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.LEADING, Looks.em(0.5), Looks.em(0.3)));
        buttons.add(Looks.button(Bundle.springs_record(), this::record));
        springs = Looks.column(Choices.grid(new String[] {Bundle.springs_axle()}, axle), new WrapText(Bundle.springs_caution()), points, says, buttons);
    }

    JPanel springs() {
        return springs;
    }

    JPanel rodEnd() {
        return Looks.column(end, endSays);
    }

    void show(DaySnapshot shown) {
        day = shown;
        UnitPreferences units = shown.units().preferences();
        points.show(SpringPair.lines(units), units);
        end.show(Lines.of(Lines.Line.of(Bundle.end_diameter(), Cell.of(DIAMETER, Bundle.end_diameter(), Dimension.LENGTH)),
                Lines.Line.of(Bundle.end_pitch(), Cell.of(PITCH, Bundle.end_pitch(), Dimension.LENGTH)),
                Lines.Line.of(Bundle.end_engaged(), Cell.of(ENGAGED, Bundle.end_engaged(), Dimension.LENGTH))), units);
        evaluate();
    }

    private Axle chosen() {
        return axle.getSelectedIndex() == 0 ? Axle.FRONT : Axle.REAR;
    }

    private String rate(double nPerMm) {
        return QuantityFormat.of(day.units().preferences()).withResolution(0.1).text(nPerMm, Dimension.STIFFNESS);
    }

    private String side(SpringPair.Side side) {
        if (side.rateNPerMm().isEmpty()) {
            return Bundle.springs_unknown();
        }
        String rate = rate(side.rateNPerMm().getAsDouble());
        return side.standardNPerMm().isPresent() ? Bundle.springs_rate(rate, rate(2 * side.standardNPerMm().getAsDouble())) : rate;
    }

    private void evaluate() {
        if (day == null) {
            return;
        }
        Figures figures = points.figures();
        List<String> lines = new ArrayList<>();
        if (figures.problem().isPresent()) {
            lines.add(figures.problem().get());
        } else {
            try {
                words(SpringPair.of(figures), lines);
            } catch (InvalidInputException e) {
                lines.add(Bundle.springs_same());
            }
        }
        says.setText(String.join(" ", lines));
    }

    private void words(SpringPair pair, List<String> lines) {
        if (pair.left().rateNPerMm().isEmpty() && pair.right().rateNPerMm().isEmpty()) {
            return;
        }
        lines.add(Bundle.springs_rates(side(pair.left()), side(pair.right())));
        pair.differenceNPerMm().ifPresent(d -> lines.add(pair.isPair() ? Bundle.springs_pair(rate(Math.abs(d)))
                : Bundle.springs_noPair(rate(Math.abs(d)), rate(SpringPair.PAIR_LIMIT_N_PER_MM))));
        OptionalDouble described = day.car().corners().get(chosen().left()).springRateNPerMm();
        described.ifPresent(r -> lines.add(Bundle.springs_described(rate(r))));
    }

    private void record() {
        Figures figures = points.figures();
        if (figures.problem().isPresent()) {
            return;
        }
        try {
            SpringPair pair = SpringPair.of(figures);
            Map<String, Double> results = new LinkedHashMap<>();
            put(results, chosen().left(), pair.left());
            put(results, chosen().right(), pair.right());
            if (results.isEmpty()) {
                says.setText(Bundle.springs_missing());
                return;
            }
            Measurement measured = new Measurement(METHOD, figures.typed(), says.getText(), Map.of());
            if (current.record(stage, h -> new Entry.Check(h, SUBJECT + chosen(), results, measured))) {
                says.setText(Bundle.springs_recorded() + " " + says.getText());
            }
        } catch (InvalidInputException e) {
            says.setText(Bundle.springs_same());
        }
    }

    private static void put(Map<String, Double> results, Corner corner, SpringPair.Side side) {
        side.rateNPerMm().ifPresent(r -> results.put(corner.name(), r));
        side.standardNPerMm().ifPresent(u -> results.put("u." + corner, u));
    }

    private void evaluateEnd() {
        if (day == null) {
            return;
        }
        Figures figures = end.figures();
        endSays.setText(figures.problem().orElse(""));
        boolean all = figures.hasAll(List.of(DIAMETER, PITCH, ENGAGED)) && figures.values().get(DIAMETER) > 0 && figures.values().get(PITCH) > 0;
        if (all) {
            Engagement in = new Engagement(figures.values().get(DIAMETER), figures.values().get(PITCH), figures.values().get(ENGAGED));
            QuantityFormat format = QuantityFormat.of(day.units().preferences());
            String needed = format.withResolution(0.1).text(in.neededMm(), Dimension.LENGTH);
            String turns = format.withResolution(0.1).number(Math.abs(in.turnsLeft()), Dimension.NUMBER);
            endSays.setText(in.isEnough() ? Bundle.end_enough(needed, turns) : Bundle.end_short(needed, turns));
        }
    }
}
