package dev.fillplane.web.watch;

import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.binder.MeterBinder;
import io.micrometer.core.instrument.binder.jvm.ClassLoaderMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmGcMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmMemoryMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmThreadMetrics;
import io.micrometer.core.instrument.binder.system.FileDescriptorMetrics;
import io.micrometer.core.instrument.binder.system.ProcessorMetrics;
import io.micrometer.core.instrument.binder.system.UptimeMetrics;
import java.util.List;

/** What the virtual machine and its process do: heap, collections, threads, files, processors. */
final class Machine {

  private Machine() {}

  /** The listener of collections lives as long as the process, as the numbers do. */
  @SuppressWarnings("resource")
  static void bind(MeterRegistry registry) {
    List<MeterBinder> binders =
        List.of(
            new ClassLoaderMetrics(),
            new JvmMemoryMetrics(),
            new JvmGcMetrics(),
            new JvmThreadMetrics(),
            new FileDescriptorMetrics(),
            new ProcessorMetrics(),
            new UptimeMetrics());
    binders.forEach(binder -> binder.bindTo(registry));
  }
}
