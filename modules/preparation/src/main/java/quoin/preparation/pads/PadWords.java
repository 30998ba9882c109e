package quoin.preparation.pads;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.StringJoiner;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.logbook.GaragePlace;
import quoin.quantities.Dimension;
import quoin.quantities.QuantityFormat;
import quoin.quantities.UnitPreferences;

/** Says a survey and its shims in plain words. */
@Messages({
    "# {0} - warp", "# {1} - plus or minus", "# {2} - cross weight", "pads.warp={0} of warp ({1}) = {2} of cross on this car.",
    "pads.flat=The four tops lie in one plane as far as this survey can tell.",
    "# {0} - one corner", "# {1} - other corner", "pads.high={0} and {1} stand high.",
    "pads.good=No shim is needed.",
    "# {0} - shims", "pads.lay=Lay under {0}.",
    "# {0} - warp", "# {1} - cross weight", "pads.after=Left after that: {0} of warp = {1} of cross.",
    "pads.short=The shims at hand do not reach what is wanted; this is the nearest they come. Add shims to the stock, or allow more.",
    "pads.noStock=Type the shims at hand to get a plan.",
    "# {0} - error", "pads.closes=Once round closes to {0}.",
    "# {0} - error", "pads.closesNot=Once round fails to close by {0}: read the worst pair again.",
    "# {0} - tolerance", "# {1} - uncertainty", "pads.finer=The tolerance of {0} is finer than this survey can tell ({1}).",
    "# {0} - date", "# {1} - warp", "# {2} - corner", "pads.moved=Since {0} the warp has changed by {1}; {2} moved most. Look at the marks round it.",
    "# {0} - warp", "# {1} - corner",
    "pads.gaveWay=With the car on, the warp is {0} other than empty: {1} gives way most. Shim for the car on, it is weighed so.",
    "pads.holds=With the car on as without it, within what the surveys can tell.",
    "# {0} - date", "pads.asBefore=As on {0}, within what the surveys can tell.",
    "# {0} - corner", "# {1} - shims", "pads.under={0} {1}"})
final class PadWords {

    /** A closing error beyond this many readings' uncertainty is a misreading. */
    private static final double CLOSES = 4;

    private final UnitPreferences units;

    PadWords(UnitPreferences units) {
        this.units = units;
    }

    String length(double mm) {
        return QuantityFormat.of(units).withResolution(0.1).text(Math.abs(mm) < 0.05 ? 0 : mm, Dimension.LENGTH);
    }

    private String percent(double percent) {
        return QuantityFormat.of(units.withDecimals(Dimension.PERCENT, 2)).text(Math.abs(percent), Dimension.PERCENT);
    }

    /** What the survey says, a line each; the most important first. */
    List<String> survey(PadAdvice advice, PadAdvice.Wanted wanted, double readingMm) {
        List<String> lines = new ArrayList<>();
        String uncertainty = "\u00b1 " + length(2 * advice.warpStandardMm());
        lines.add(Bundle.pads_warp(length(Math.abs(advice.warpMm())), uncertainty, percent(advice.crossPercent())));
        if (Math.abs(advice.warpMm()) <= 2 * advice.warpStandardMm()) {
            lines.add(Bundle.pads_flat());
        } else {
            lines.add(advice.warpMm() > 0 ? Bundle.pads_high(Corner.LF.words(), Corner.RR.words())
                    : Bundle.pads_high(Corner.RF.words(), Corner.LR.words()));
        }
        OptionalDouble closing = advice.closingMm();
        if (closing.isPresent()) {
            String by = length(Math.abs(closing.getAsDouble()));
            lines.add(Math.abs(closing.getAsDouble()) > CLOSES * readingMm ? Bundle.pads_closesNot(by) : Bundle.pads_closes(by));
        }
        if (wanted.warpToleranceMm() < advice.warpStandardMm()) {
            lines.add(Bundle.pads_finer(length(wanted.warpToleranceMm()), uncertainty));
        }
        return lines;
    }

    /** What to lay. */
    List<String> plan(PadAdvice advice, PadAdvice.Wanted wanted) {
        List<String> lines = new ArrayList<>();
        if (advice.isGood()) {
            lines.add(Bundle.pads_good());
            return lines;
        }
        if (wanted.stock().isEmpty()) {
            lines.add(Bundle.pads_noStock());
            return lines;
        }
        if (advice.plan().count() > 0) {
            lines.add(Bundle.pads_lay(shims(advice.plan().shimsMm())));
            lines.add(Bundle.pads_after(length(Math.abs(advice.plan().after().warpMm())), percent(advice.crossAfterPercent())));
        }
        if (!advice.plan().reached()) {
            lines.add(Bundle.pads_short());
        }
        return lines;
    }

    /** "LF 2 + 0.5 mm, RR 1 mm". */
    String shims(PerCorner<List<Double>> shimsMm) {
        StringJoiner words = new StringJoiner(", ");
        for (Corner corner : Corner.values()) {
            if (!shimsMm.get(corner).isEmpty()) {
                words.add(Bundle.pads_under(corner.words(), Stock.stack(shimsMm.get(corner), units)));
            }
        }
        return words.toString();
    }

    /**
     * How the pads stand against the last survey of the place.
     *
     * @param carOn true where the car stands on them now: floor and ply give way under it
     */
    String since(PadAdvice advice, GaragePlace.Survey before, boolean carOn, ZoneId zone) {
        String date = DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT).format(before.when().atZone(zone));
        OptionalDouble moved = PadAdvice.warpMoved(advice.survey(), before.heightsMm(), advice.warpStandardMm());
        if (carOn != before.carOn()) {
            return moved.isPresent() ? Bundle.pads_gaveWay(length(Math.abs(moved.getAsDouble())),
                    PadAdvice.mostMoved(advice.survey().heightsMm(), before.heightsMm()).words()) : Bundle.pads_holds();
        }
        return moved.isPresent() ? Bundle.pads_moved(date, length(Math.abs(moved.getAsDouble())),
                PadAdvice.mostMoved(advice.survey().heightsMm(), before.heightsMm()).words()) : Bundle.pads_asBefore(date);
    }
}
