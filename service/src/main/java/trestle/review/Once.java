package trestle.review;

import java.util.function.Supplier;

/**
 * A value that is worked out when it is first asked for, and kept. Draws of the same
 * aircraft may ask for it side by side.
 *
 * @param <T> type of the value
 */
final class Once<T> implements Supplier<T> {
    private Supplier<? extends T> work;
    private T value;

    private Once(Supplier<? extends T> work) {
        this.work = work;
    }

    static <T> Once<T> of(Supplier<? extends T> work) {
        return new Once<>(work);
    }

    @Override
    public synchronized T get() {
        if (work != null) {
            value = work.get();
            work = null;
        }
        return value;
    }
}
