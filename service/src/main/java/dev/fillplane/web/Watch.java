package dev.fillplane.web;

import java.util.concurrent.ScheduledThreadPoolExecutor;

/** Makes the threads that look at the time. */
final class Watch {

  private Watch() {}

  /** One thread that keeps nothing alive; what is cancelled is forgotten at once. */
  static ScheduledThreadPoolExecutor start() {
    ScheduledThreadPoolExecutor watch =
        new ScheduledThreadPoolExecutor(
            1,
            task -> {
              Thread thread = new Thread(task, "watch");
              thread.setDaemon(true);
              return thread;
            });
    watch.setRemoveOnCancelPolicy(true);
    return watch;
  }
}
