package gaugeglass.cli.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class InOrderTest {
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5})
    void results_come_out_in_the_order_of_the_tasks(int threads) {
        List<Integer> taken = new ArrayList<>();

        InOrder.run(IntStream.range(0, 500).iterator(), i -> slow(i), taken::add, threads);

        assertThat(taken).isEqualTo(IntStream.range(0, 500).boxed().toList());
    }

    private static int slow(int i) {
        // The earlier of two neighbours takes longer.
        long end = System.nanoTime() + (i % 2 == 0 ? 200_000 : 0);
        while (System.nanoTime() < end) {
            Thread.onSpinWait();
        }
        return i;
    }

    @Test
    void only_a_few_tasks_are_held_at_once() {
        AtomicInteger begun = new AtomicInteger();
        AtomicInteger most = new AtomicInteger();
        List<Integer> taken = new ArrayList<>();
        Iterator<Integer> tasks =
                IntStream.range(0, 10_000).peek(i -> begun.incrementAndGet()).iterator();

        InOrder.run(
                tasks,
                i -> i,
                i -> {
                    most.accumulateAndGet(begun.get() - taken.size(), Math::max);
                    return taken.add(i);
                },
                2);

        assertThat(taken).hasSize(10_000);
        assertThat(most.get()).isLessThanOrEqualTo(17);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void work_ends_early_when_nobody_takes_more(int threads) {
        AtomicInteger begun = new AtomicInteger();

        InOrder.run(IntStream.range(0, 10_000).iterator(), i -> begun.incrementAndGet(), i -> i < 3, threads);

        assertThat(begun.get()).isLessThan(100);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void a_failure_of_the_work_is_not_swallowed(int threads) {
        assertThatThrownBy(() -> InOrder.run(
                        IntStream.range(0, 10).iterator(),
                        i -> {
                            throw new IllegalArgumentException("no " + i);
                        },
                        i -> true,
                        threads))
                .hasStackTraceContaining("no 0");
    }
}
