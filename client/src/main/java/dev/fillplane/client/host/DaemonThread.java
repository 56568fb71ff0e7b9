package dev.fillplane.client.host;

/** A thread that does not keep the host alive. */
final class DaemonThread extends Thread {
  DaemonThread(Runnable work) {
    super(work, "fillplane-host");
    setDaemon(true);
  }
}
