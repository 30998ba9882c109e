package quoin.wheelangles.measure;

import java.util.List;
import java.util.Map;

/** One way of measuring: a form, and what follows from it. */
public interface Method {

    /** Stable name, as the journal keeps it. */
    String id();

    /** As the list of ways shows it. */
    String title();

    /** Where to measure and which way is plus. */
    String signs();

    /** The caution of this work, one line. */
    String caution();

    List<Choice> choices();

    /**
     * What is typed.
     *
     * @param chosen key of the option per choice
     */
    List<Table> tables(Setting setting, Map<String, String> chosen);

    /**
     * What follows.
     *
     * @throws Figures.MissingFigure where a figure is not there yet
     * @throws Figures.BadFigure     where one cannot be
     */
    Outcome evaluate(Figures figures);

    /** Every way, in the order of the list. */
    static List<Method> all() {
        return List.of(new CordToe(), new ToePlates(), new ToeByAngle(), new GaugeCamber(), new PlumbLineCamber(), new Sweep(),
                new Diagonals(), new TwoDials(), new ToeOutOnTurns());
    }
}
