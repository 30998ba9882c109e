package quoin.logbook;

import java.util.AbstractList;
import java.util.List;
import java.util.RandomAccess;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.ToLongFunction;

/**
 * A list that never changes and yet can be carried on: {@link #with} gives a list that is longer by one and shares what is
 * there, at a cost that does not depend on the length. Any thread may read and carry on any of them.
 *
 * @param <T> what is in it
 */
public final class GrowingList<T> extends AbstractList<T> implements RandomAccess {

    private static final int LEAST = 8;

    private final Object[] items;
    /** How much of the items is taken by this list and by longer ones that share it. */
    private final AtomicInteger used;
    private final int size;

    private GrowingList(Object[] items, AtomicInteger used, int size) {
        this.items = items;
        this.used = used;
        this.size = size;
    }

    /** A list with nothing in it. */
    public static <T> GrowingList<T> empty() {
        return new GrowingList<>(new Object[0], new AtomicInteger(), 0);
    }

    /** A list of what another one holds now. */
    public static <T> GrowingList<T> of(List<? extends T> list) {
        Object[] items = list.toArray();
        return new GrowingList<>(items, new AtomicInteger(items.length), items.length);
    }

    /** This list and one more at its end; this one stays as it is. */
    public GrowingList<T> with(T item) {
        if (size < items.length && used.compareAndSet(size, size + 1)) {
            items[size] = item;
            return new GrowingList<>(items, used, size + 1);
        }
        Object[] longer = new Object[Math.max(LEAST, size + size / 2 + 1)];
        System.arraycopy(items, 0, longer, 0, size);
        longer[size] = item;
        return new GrowingList<>(longer, new AtomicInteger(size + 1), size + 1);
    }

    /**
     * Index of the first item whose number is greater; the list's size where there is none.
     *
     * @param ascending its numbers never fall
     */
    public static <T> int firstAfter(List<T> ascending, ToLongFunction<T> number, long than) {
        int low = 0;
        int high = ascending.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (number.applyAsLong(ascending.get(middle)) > than) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    /** The last in it; null where it is empty. */
    public T last() {
        return size == 0 ? null : get(size - 1);
    }

    @Override
    @SuppressWarnings("unchecked") // only T is ever put in
    public T get(int index) {
        if (index < 0 || index >= size) {
            throw new IndexOutOfBoundsException("there is no item " + index + " in a list of " + size);
        }
        return (T) items[index];
    }

    @Override
    public int size() {
        return size;
    }
}
