package quoin.car;

import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Function;

/** One value for each corner; none may be null. */
public record PerCorner<T>(T lf, T rf, T lr, T rr) {

    public PerCorner {
        Objects.requireNonNull(lf, "LF");
        Objects.requireNonNull(rf, "RF");
        Objects.requireNonNull(lr, "LR");
        Objects.requireNonNull(rr, "RR");
    }

    public static <T> PerCorner<T> all(T value) {
        return new PerCorner<>(value, value, value, value);
    }

    public static <T> PerCorner<T> of(Function<Corner, ? extends T> value) {
        return new PerCorner<>(value.apply(Corner.LF), value.apply(Corner.RF), value.apply(Corner.LR), value.apply(Corner.RR));
    }

    public T get(Corner corner) {
        return switch (corner) {
            case LF -> lf;
            case RF -> rf;
            case LR -> lr;
            case RR -> rr;
        };
    }

    /** A copy with one corner replaced. */
    public PerCorner<T> with(Corner corner, T value) {
        return of(c -> c == corner ? value : get(c));
    }

    public <R> PerCorner<R> map(Function<? super T, ? extends R> function) {
        return of(c -> function.apply(get(c)));
    }

    public <U, R> PerCorner<R> zip(PerCorner<U> other, BiFunction<? super T, ? super U, ? extends R> function) {
        return of(c -> function.apply(get(c), other.get(c)));
    }
}
