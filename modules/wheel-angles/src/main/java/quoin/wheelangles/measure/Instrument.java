package quoin.wheelangles.measure;

import org.openide.util.NbBundle.Messages;
import quoin.car.Instruments;
import quoin.quantities.Dimension;

/** What a figure is read with. Its step makes the uncertainty: step / sqrt(12) (JCGM 100:2008, F.2.2.1). */
@Messages({
    "instrument.rule=Rule or caliper at the rim", "instrument.gauge=Camber gauge", "instrument.toeGauge=Toe gauge",
    "instrument.plate=Turn plates", "instrument.tape=Tape", "instrument.dial=Dials", "instrument.height=Height gauge"})
public enum Instrument {
    RULE(Dimension.LENGTH),
    GAUGE(Dimension.ANGLE),
    TOE_GAUGE(Dimension.ANGLE),
    TURN_PLATE(Dimension.ANGLE),
    TAPE(Dimension.LENGTH),
    DIAL(Dimension.LENGTH),
    HEIGHT_GAUGE(Dimension.LENGTH);

    private final Dimension dimension;

    Instrument(Dimension dimension) {
        this.dimension = dimension;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** Key of the field that holds its step. */
    public String key() {
        return "step." + name();
    }

    public String words() {
        return switch (this) {
            case RULE -> Bundle.instrument_rule();
            case GAUGE -> Bundle.instrument_gauge();
            case TOE_GAUGE -> Bundle.instrument_toeGauge();
            case TURN_PLATE -> Bundle.instrument_plate();
            case TAPE -> Bundle.instrument_tape();
            case DIAL -> Bundle.instrument_dial();
            case HEIGHT_GAUGE -> Bundle.instrument_height();
        };
    }

    /** The step where the racer has not typed another: that of the car's instruments, else common practice, no source. */
    public double usualStep(Instruments instruments) {
        return switch (this) {
            case RULE -> instruments.toeResolutionMm();
            case GAUGE -> instruments.angleResolutionDeg();
            case TOE_GAUGE -> 0.05;
            case TURN_PLATE -> 0.5;
            case TAPE -> 1;
            case DIAL -> 0.01;
            case HEIGHT_GAUGE -> instruments.heightResolutionMm();
        };
    }
}
