package quoin.quantities;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Reads signed quantities with their units, one alone or a line of them. Rules: {@link Quantities}. */
final class QuantityScanner {
    private static final Texts TEXTS = Texts.of(QuantityScanner.class);
    private static final double LARGEST = 1e9;
    private static final int MOST_FIGURES = 64;
    /** The smaller unit that may follow a larger one: 1°30', 2 ft 3 in. */
    private static final Map<Unit, Unit> FOLLOWED_BY = Map.of(Unit.DEG, Unit.ARCMIN, Unit.ARCMIN, Unit.ARCSEC,
            Unit.FT, Unit.IN, Unit.ST, Unit.LB, Unit.KG, Unit.G);

    private final Typed text;
    private final Unit assumed;
    private final boolean inLine;
    private final FigureScanner figures;

    QuantityScanner(Typed text, Unit assumed, DecimalMark ownMark, boolean inLine) {
        this.text = text;
        this.assumed = assumed;
        this.inLine = inLine;
        this.figures = new FigureScanner(text, ownMark, inLine);
    }

    /** A figure with its unit; unit is null where none was typed. */
    private record Term(Figure figure, Unit unit, int start) {
    }

    Quantity single() {
        text.skipSpaces();
        if (text.atEnd()) {
            throw nothingTyped();
        }
        Quantity quantity = quantity();
        text.skipSpaces();
        if (!text.atEnd()) {
            throw leftOver();
        }
        return quantity;
    }

    List<OptionalDouble> line() {
        List<OptionalDouble> line = new ArrayList<>();
        boolean slotOpen = true;
        text.skipSpaces();
        while (!text.atEnd()) {
            if (separatorHere()) {
                if (slotOpen) {
                    line.add(OptionalDouble.empty());
                }
                slotOpen = true;
                text.skip();
            } else {
                line.add(notReadHere() ? OptionalDouble.empty() : OptionalDouble.of(quantity().value()));
                slotOpen = false;
                if (!endsFigure(text.position())) {
                    throw leftOver();
                }
            }
            if (line.size() > MOST_FIGURES) {
                throw fault(TEXTS.phrase("problem.tooMany", MOST_FIGURES), TEXTS.phrase("remedy.fewer"), text.position());
            }
            text.skipSpaces();
        }
        if (line.isEmpty()) {
            throw nothingTyped();
        }
        return List.copyOf(line);
    }

    private boolean separatorHere() {
        char c = text.peek();
        int next = text.position() + 1;
        return c == ';' || c == '|' || c == ',' && (next >= text.length() || Typed.isSpace(text.at(next)));
    }

    private boolean notReadHere() {
        if ("-./?".indexOf(text.peek()) < 0 || !endsFigure(text.position() + 1)) {
            return false;
        }
        text.skip();
        return true;
    }

    private boolean endsFigure(int index) {
        char c = text.at(index);
        return index >= text.length() || Typed.isSpace(c) || c == ';' || c == '|' || c == ',';
    }

    private Quantity quantity() {
        int start = text.position();
        boolean negative = text.peek() == '-';
        if (negative || text.peek() == '+') {
            text.skip();
            if (!inLine) {
                text.skipSpaces();
            }
        }
        if (!figures.startsHere()) {
            throw noFigure();
        }
        Term first = term();
        Unit unit = first.unit() == null ? assumed : first.unit();
        Exact typed = negative ? first.figure().value().negate() : first.figure().value();
        Exact base = typed.toBase(unit);
        Exact step = first.figure().step().times(Exact.factorOf(unit));
        Term last = first;
        for (Term next = following(first); next != null; next = following(next)) {
            Exact size = Exact.factorOf(next.unit());
            Exact part = next.figure().value().times(size);
            base = base.plus(negative ? part.negate() : part);
            step = next.figure().step().times(size);
            last = next;
        }
        double value = base.toDouble();
        if (Math.abs(value) > LARGEST || Math.abs(typed.toDouble()) > LARGEST) {
            throw fault(TEXTS.phrase("problem.tooLarge", text.shown(start, text.position()), assumed.dimension().phrase()),
                    TEXTS.phrase("remedy.digitsAndUnit"), last.start());
        }
        return new Quantity(value, unit, step.toDouble());
    }

    private Term term() {
        int start = text.position();
        Figure figure = figures.read();
        int afterFigure = text.position();
        text.skipSpaces();
        if (unitStartsWith(text.peek())) {
            return new Term(figure, unit(), start);
        }
        text.moveTo(afterFigure);
        return new Term(figure, null, start);
    }

    /** The part in the smaller unit after this one, the cursor behind it; null, the cursor unmoved, if none. */
    private Term following(Term larger) {
        Unit smaller = larger.unit() == null ? null : FOLLOWED_BY.get(larger.unit());
        if (smaller == null) {
            return null;
        }
        int before = text.position();
        boolean spaced = text.skipSpaces();
        if (!figures.startsHere()) {
            text.moveTo(before);
            return null;
        }
        Term next = term();
        if (next.unit() == null ? inLine && spaced : next.unit() != smaller) {
            text.moveTo(before);
            return null;
        }
        Exact limit = new Exact(larger.unit().numerator().multiply(smaller.denominator()),
                larger.unit().denominator().multiply(smaller.numerator()));
        if (!larger.figure().value().isWhole() || !next.figure().value().isLessThan(limit)) {
            throw fault(TEXTS.phrase("problem.addUp", text.shown(larger.start(), text.position())),
                    TEXTS.phrase("remedy.wholeFirst", larger.unit().symbol(), (long) limit.toDouble(), smaller.symbol()), next.start());
        }
        return new Term(next.figure(), smaller, next.start());
    }

    private static boolean unitStartsWith(char c) {
        return Character.isLetter(c) || "°'\"%#".indexOf(c) >= 0;
    }

    private Unit unit() {
        int start = text.position();
        int end = unitEnd(start);
        String symbol = text.mapped(start, end);
        text.moveTo(end);
        List<Unit> meant = UnitSymbols.find(symbol, assumed.dimension());
        if (meant.contains(assumed)) {
            return assumed;
        }
        if (meant.size() == 1) {
            return meant.get(0);
        }
        String shown = text.shown(start, end);
        if (meant.size() > 1) {
            throw fault(TEXTS.phrase("problem.severalUnits", shown), UnitSymbols.typeOneOf(meant), start);
        }
        Dimension other = UnitSymbols.dimensionOf(symbol);
        throw fault(other == null ? TEXTS.phrase("problem.unknownUnit", shown)
                : TEXTS.phrase("problem.otherUnit", shown, other.phrase(), assumed.dimension().phrase()),
                UnitSymbols.choice(assumed.dimension()), start);
    }

    /** Where the unit text ends: a space, hyphen, point or slash belongs to it only between letters. */
    private int unitEnd(int start) {
        int end = start + 1;
        while (end < text.length()) {
            char c = text.at(end);
            if (Typed.isDigit(c) || FigureScanner.isVulgar(c) || ";|,+".indexOf(c) >= 0) {
                return end;
            }
            int next = text.afterSpaces(end + 1);
            if (c == '-' && !Character.isLetter(text.at(end + 1))) {
                return end;
            }
            if (Typed.isSpace(c)) {
                boolean slash = text.at(next) == '/' && Character.isLetter(text.at(text.afterSpaces(next + 1)));
                if (!slash && text.at(next) != '(' && !Character.isLetter(text.at(next))) {
                    return end;
                }
            }
            end++;
        }
        return end;
    }

    private QuantityFormatException nothingTyped() {
        return fault(TEXTS.phrase("problem.nothing"), suchAs(), text.length());
    }

    private QuantityFormatException noFigure() {
        int at = text.position();
        return fault(text.atEnd() ? TEXTS.phrase("problem.figureMissing") : TEXTS.phrase("problem.noFigure", text.shown(at)), suchAs(), at);
    }

    private Phrase suchAs() {
        return TEXTS.phrase("remedy.suchAs", assumed.dimension().phrase(), example());
    }

    private QuantityFormatException leftOver() {
        int at = text.position();
        if (figures.startsHere() && !inLine) {
            return fault(TEXTS.phrase("problem.twoFigures", text.shown(at)), TEXTS.phrase("remedy.oneFigure"), at);
        }
        return fault(TEXTS.phrase("problem.notUnderstood", text.shown(at)), TEXTS.phrase("remedy.type", example()), at);
    }

    private Object example() {
        return switch (assumed.dimension()) {
            case ANGLE -> TEXTS.phrase("example.angle");
            case NUMBER -> "0.62";
            default -> TEXTS.phrase("example.figure", assumed.symbol());
        };
    }

    private static QuantityFormatException fault(Phrase problem, Phrase remedy, int position) {
        return new QuantityFormatException(problem, remedy, position);
    }
}
