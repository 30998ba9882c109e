package quoin.car;

import java.util.Objects;
import java.util.function.Function;

/** One value for each axle; none may be null. */
public record PerAxle<T>(T front, T rear) {

    public PerAxle {
        Objects.requireNonNull(front, "front");
        Objects.requireNonNull(rear, "rear");
    }

    public static <T> PerAxle<T> both(T value) {
        return new PerAxle<>(value, value);
    }

    public T get(Axle axle) {
        return axle == Axle.FRONT ? front : rear;
    }

    /** A copy with one axle replaced. */
    public PerAxle<T> with(Axle axle, T value) {
        return axle == Axle.FRONT ? new PerAxle<>(value, rear) : new PerAxle<>(front, value);
    }

    public <R> PerAxle<R> map(Function<? super T, ? extends R> function) {
        return new PerAxle<>(function.apply(front), function.apply(rear));
    }
}
