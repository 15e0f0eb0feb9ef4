package trestle.http;

import io.prometheus.metrics.core.metrics.CounterWithCallback;
import io.prometheus.metrics.core.metrics.GaugeWithCallback;
import io.prometheus.metrics.model.registry.PrometheusRegistry;
import java.lang.management.GarbageCollectorMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryUsage;
import java.time.Duration;

/**
 * Memory, collections, threads and processor time of the process, under the names that exporters for the JVM give them.
 */
final class Machine {
    private static final double MS_PER_S = 1e3;
    private static final double NS_PER_S = 1e9;

    private Machine() {}

    static void register(PrometheusRegistry registry) {
        GaugeWithCallback.builder()
                .name("jvm_memory_used_bytes")
                .help("Memory in use.")
                .labelNames("area")
                .callback(value -> {
                    value.call(heap().getUsed(), "heap");
                    value.call(
                            ManagementFactory.getMemoryMXBean()
                                    .getNonHeapMemoryUsage()
                                    .getUsed(),
                            "nonheap");
                })
                .register(registry);
        GaugeWithCallback.builder()
                .name("jvm_memory_max_bytes")
                .help("The most that the heap may take.")
                .labelNames("area")
                .callback(value -> value.call(heap().getMax(), "heap"))
                .register(registry);
        GaugeWithCallback.builder()
                .name("jvm_threads_current")
                .help("Threads.")
                .callback(
                        value -> value.call(ManagementFactory.getThreadMXBean().getThreadCount()))
                .register(registry);
        CounterWithCallback.builder()
                .name("jvm_gc_pauses_seconds_total")
                .help("Time spent in collections of garbage.")
                .callback(value -> value.call(collectedMs() / MS_PER_S))
                .register(registry);
        CounterWithCallback.builder()
                .name("process_cpu_seconds_total")
                .help("Processor time of the process.")
                .callback(value -> value.call(ProcessHandle.current()
                                .info()
                                .totalCpuDuration()
                                .orElse(Duration.ZERO)
                                .toNanos()
                        / NS_PER_S))
                .register(registry);
        GaugeWithCallback.builder()
                .name("process_start_time_seconds")
                .help("When the process began, in seconds since 1970.")
                .callback(
                        value -> value.call(ManagementFactory.getRuntimeMXBean().getStartTime() / MS_PER_S))
                .register(registry);
    }

    private static MemoryUsage heap() {
        return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage();
    }

    private static double collectedMs() {
        return ManagementFactory.getGarbageCollectorMXBeans().stream()
                .mapToLong(GarbageCollectorMXBean::getCollectionTime)
                .sum();
    }
}
