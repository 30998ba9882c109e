package quoin.preparation.scales;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.logbook.Figure;
import quoin.mechanics.ScaleFactors;
import quoin.mechanics.Shares;
import quoin.quantities.Dimension;
import quoin.quantities.QuantityFormat;
import quoin.quantities.Texts;
import quoin.quantities.UnitPreferences;
import quoin.workbench.FigureTable;
import quoin.workbench.Mark;
import quoin.workbench.VerdictWords;
import quoin.workflow.ScaleCorrection;

/** Says what scales were found to show. */
@Messages({
    "# {0} - error", "# {1} - uncertainty", "# {2} - load", "scale.shows={0} \u00b1 {1} at {2}",
    "scale.told=told by this test", "scale.notTold=not told by this test",
    "scale.disagree=These readings fit one car and four scales badly: settle the car and weigh again before you trust them.",
    "# {0} - limit", "# {1} - load", "# {2} - limit by the handbook",
    "scale.limit=In service such a scale may be off by {0} at {1} (OIML R 76-1:2006); NIST Handbook 44 allows {2}.",
    "scale.noLimit=No class marked: taken as right to about half a per cent until it is tested.",
    "# {0} - entry", "scale.inForce=Weights are corrected by the test of entry {0}. Weights read before it stay as they were.",
    "scale.none=Weights are taken as shown: the scales have not been tested today.",
    "# {0} - corner", "# {1} - before", "# {2} - after", "scale.drift={0} showed {1} empty at first and {2} now.",
    "scale.zeroOnce=Zero with nothing on at the start, and write the zero again at the end.",
    "scale.total=Total", "# {0} - diagonal", "scale.cross=Cross weight {0}"})
final class ScaleWords {

    private static final double PERCENT = 100;
    /** A factor whose uncertainty fell below this part of what it was before has been told by the test. */
    private static final double TOLD = 0.75;
    private static final double DISAGREE = 0.01;

    private final UnitPreferences units;

    ScaleWords(UnitPreferences units) {
        this.units = units;
    }

    String mass(double kg) {
        return QuantityFormat.of(units).withResolution(0.1).text(kg, Dimension.MASS);
    }

    private String signedMass(double kg) {
        return QuantityFormat.of(units.withDecimals(Dimension.MASS, 2)).signed().text(kg, Dimension.MASS);
    }

    private String fineMass(double kg) {
        return QuantityFormat.of(units.withDecimals(Dimension.MASS, 2)).text(kg, Dimension.MASS);
    }

    /** What each scale shows too much at a load. */
    List<FigureTable.Line> factors(ScaleFactors found, double priorRelative, double atKg) {
        List<FigureTable.Line> lines = new ArrayList<>();
        for (Corner corner : Corner.values()) {
            double factor = found.factors().get(corner.ordinal());
            double u = found.standard().get(corner.ordinal());
            boolean told = u < TOLD * priorRelative;
            lines.add(new FigureTable.Line(corner.words(), Bundle.scale_shows(signedMass((factor - 1) * atKg), fineMass(2 * u * atKg), mass(atKg)), "",
                    new VerdictWords(told ? Mark.INSIDE : Mark.WAITING, told ? Bundle.scale_told() : Bundle.scale_notTold())));
        }
        return lines;
    }

    String agreement(ScaleFactors found) {
        return found.agreement() < DISAGREE ? Bundle.scale_disagree() : "";
    }

    String limit(Accuracy accuracy, double atKg, double stepKg) {
        OptionalDouble limit = accuracy.limitKg(atKg, stepKg);
        return limit.isPresent() ? Bundle.scale_limit("\u00b1 " + fineMass(limit.getAsDouble()), mass(atKg),
                "\u00b1 " + fineMass(accuracy.handbookLimitKg(atKg, stepKg).getAsDouble())) : Bundle.scale_noLimit();
    }

    /** What the test says in one line, for the logbook. */
    String summary(ScaleFactors found) {
        List<String> parts = new ArrayList<>();
        for (Corner corner : Corner.values()) {
            parts.add(corner.words() + " " + Texts.figure("%+.2f %% \u00b1 %.2f %%", PERCENT * (found.factors().get(corner.ordinal()) - 1),
                    2 * PERCENT * found.standard().get(corner.ordinal())));
        }
        return String.join(", ", parts);
    }

    List<FigureTable.Line> loads(PerCorner<Double> loadsKg) {
        List<FigureTable.Line> lines = new ArrayList<>();
        for (Corner corner : Corner.values()) {
            lines.add(FigureTable.Line.plain(corner.words(), mass(loadsKg.get(corner))));
        }
        Shares shares = Shares.of(loadsKg);
        lines.add(FigureTable.Line.plain(Bundle.scale_total(), mass(shares.totalKgf())));
        lines.add(FigureTable.Line.plain(Bundle.scale_cross(Corner.crossWords()),
                QuantityFormat.of(units.withDecimals(Dimension.PERCENT, 2))
                .text(shares.crossPercent(), Dimension.PERCENT)));
        return lines;
    }

    /** What holds today: the correction, and zeros that drifted. */
    String today(Day day, double driftKg) {
        List<String> lines = new ArrayList<>();
        lines.add(ScaleCorrection.of(day).map(c -> Bundle.scale_inForce(Long.toString(c.entry()))).orElseGet(Bundle::scale_none));
        boolean twice = false;
        for (Corner corner : Corner.values()) {
            List<Figure> zeros = day.history(ReadingId.of(ReadingKind.SCALE_ZERO, corner));
            twice |= zeros.size() > 1;
            if (zeros.size() > 1 && Math.abs(zeros.get(zeros.size() - 1).value() - zeros.get(0).value()) > driftKg) {
                lines.add(Bundle.scale_drift(corner.words(), fineMass(zeros.get(0).value()), fineMass(zeros.get(zeros.size() - 1).value())));
            }
        }
        if (!twice) {
            lines.add(Bundle.scale_zeroOnce());
        }
        return String.join(" ", lines);
    }
}
