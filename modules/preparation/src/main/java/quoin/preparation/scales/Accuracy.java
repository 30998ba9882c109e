package quoin.preparation.scales;

import java.util.OptionalDouble;
import org.openide.util.NbBundle.Messages;
import quoin.mechanics.ScaleClass;

/** How accurate a scale is said to be. */
@Messages({"accuracy.none=no class marked", "accuracy.iii=class III", "accuracy.iiii=class IIII"})
enum Accuracy {
    UNMARKED,
    CLASS_III,
    CLASS_IIII;

    /** Standard uncertainty of the factor of a scale of no class, 0.5 % (common practice, no source). */
    private static final double UNMARKED_RELATIVE = 0.005;

    @Override
    public String toString() {
        return switch (this) {
            case UNMARKED -> Bundle.accuracy_none();
            case CLASS_III -> Bundle.accuracy_iii();
            case CLASS_IIII -> Bundle.accuracy_iiii();
        };
    }

    /** What such a scale may be off by in service, kg (OIML R 76-1:2006, 3.5); empty where no class is marked. */
    OptionalDouble limitKg(double loadKg, double stepKg) {
        return switch (this) {
            case UNMARKED -> OptionalDouble.empty();
            case CLASS_III -> OptionalDouble.of(ScaleClass.III.inServiceLimitKg(loadKg, stepKg));
            case CLASS_IIII -> OptionalDouble.of(ScaleClass.IIII.inServiceLimitKg(loadKg, stepKg));
        };
    }

    /** The same by NIST Handbook 44, scales code, table 6, maintenance tolerance. */
    OptionalDouble handbookLimitKg(double loadKg, double stepKg) {
        return switch (this) {
            case UNMARKED -> OptionalDouble.empty();
            case CLASS_III -> OptionalDouble.of(ScaleClass.III.handbookLimitKg(loadKg, stepKg));
            case CLASS_IIII -> OptionalDouble.of(ScaleClass.IIII.handbookLimitKg(loadKg, stepKg));
        };
    }

    /** Standard uncertainty of the factor before any test: the limit as half the width of a rectangle (JCGM 100:2008, 4.3.7). */
    double relative(double loadKg, double stepKg) {
        OptionalDouble limit = limitKg(loadKg, stepKg);
        return limit.isPresent() ? limit.getAsDouble() / loadKg / Math.sqrt(3) : UNMARKED_RELATIVE;
    }
}
