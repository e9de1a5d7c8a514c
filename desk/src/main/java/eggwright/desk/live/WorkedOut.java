package eggwright.desk.live;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Something worked out from the picture, kept until the book changes. Worked out at most once at a time. */
public final class WorkedOut<T> {
    private final LiveBook book;
    private final Function<LiveBook.Now, T> work;
    private volatile @Nullable Held<T> held;

    private record Held<T>(long version, T value) {}

    public WorkedOut(LiveBook book, Function<LiveBook.Now, T> work) {
        this.book = book;
        this.work = work;
    }

    public T get() {
        var last = held;
        return last != null && book.now().version() == last.version() ? last.value() : workOut();
    }

    private synchronized T workOut() {
        var now = book.now();
        var last = held;
        if (last == null || last.version() != now.version()) {
            last = new Held<>(now.version(), work.apply(now));
            held = last;
        }
        return last.value();
    }
}
