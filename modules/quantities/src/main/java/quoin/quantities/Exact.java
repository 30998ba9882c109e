package quoin.quantities;

import java.math.BigDecimal;
import java.math.MathContext;

/** A rational number, so that fractions, minutes and inches are rounded once only, at the end. */
record Exact(BigDecimal numerator, BigDecimal denominator) {
    static final Exact ZERO = of(BigDecimal.ZERO);
    static final Exact ONE = of(BigDecimal.ONE);

    static Exact of(BigDecimal value) {
        return new Exact(value, BigDecimal.ONE);
    }

    static Exact of(long numerator, long denominator) {
        return new Exact(BigDecimal.valueOf(numerator), BigDecimal.valueOf(denominator));
    }

    Exact plus(Exact other) {
        return new Exact(numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
                denominator.multiply(other.denominator));
    }

    Exact times(Exact other) {
        return new Exact(numerator.multiply(other.numerator), denominator.multiply(other.denominator));
    }

    Exact negate() {
        return new Exact(numerator.negate(), denominator);
    }

    /** Size of one of the unit in its base unit. */
    static Exact factorOf(Unit unit) {
        return new Exact(unit.numerator(), unit.denominator());
    }

    Exact toBase(Unit unit) {
        return plus(of(unit.offset().negate())).times(factorOf(unit));
    }

    boolean isWhole() {
        return numerator.remainder(denominator).signum() == 0;
    }

    /** Both denominators are positive by construction. */
    boolean isLessThan(Exact other) {
        return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator)) < 0;
    }

    /** Never negative zero. */
    double toDouble() {
        return numerator.divide(denominator, MathContext.DECIMAL128).doubleValue();
    }
}
