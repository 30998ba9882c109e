package quoin.car;

import java.util.List;
import java.util.Objects;
import quoin.quantities.NotTakenException;
import quoin.quantities.Texts;

/** How an adjuster is set: by turning a thread in whole steps, or by shims from the racer's own stock. */
public sealed interface Setting {

    /** Change of length per turn, or 1 for shims, which are counted in mm. */
    double mmPerUnit();

    /**
     * A thread turned in steps.
     *
     * @param pitchMm       advance of one thread per turn, mm, greater than 0
     * @param bothEnds      true for a left/right-hand threaded link that moves two pitches a turn
     * @param stepsPerTurn  how many notches, flats or other steps make one turn, at least 1
     * @param stepName      what one step is called: "notch", "flat", "quarter turn"
     */
    record Thread(double pitchMm, boolean bothEnds, int stepsPerTurn, String stepName) implements Setting {
        public Thread {
            Objects.requireNonNull(stepName, "stepName");
            if (!(pitchMm > 0) || Double.isInfinite(pitchMm)) {
                throw new NotTakenException(Texts.of(Setting.class).phrase("threadPitchMustBe", pitchMm));
            }
            if (stepsPerTurn < 1) {
                throw new NotTakenException(Texts.of(Setting.class).phrase("stepsPerTurnMust", stepsPerTurn));
            }
        }

        /** Change of length per turn, mm. */
        public double mmPerTurn() {
            return bothEnds ? 2 * pitchMm : pitchMm;
        }

        @Override
        public double mmPerUnit() {
            return mmPerTurn();
        }

        public double turnsPerStep() {
            return 1.0 / stepsPerTurn;
        }
    }

    /**
     * Shims from stock.
     *
     * @param stock    the thicknesses at hand with their counts
     * @param fittedMm thickness fitted at the start of the day, mm
     */
    record Shims(List<Shim> stock, double fittedMm) implements Setting {
        public Shims {
            stock = List.copyOf(stock);
        }

        @Override
        public double mmPerUnit() {
            return 1;
        }
    }

    /**
     * One thickness of shim.
     *
     * @param thicknessMm thickness, mm, greater than 0
     * @param count       how many there are
     */
    record Shim(double thicknessMm, int count) {
        public Shim {
            if (!(thicknessMm > 0) || count < 0) {
                throw new NotTakenException(Texts.of(Setting.class).phrase("shimNeedsAThickness"));
            }
        }
    }
}
