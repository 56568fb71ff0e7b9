package dev.fillplane.surface;

import org.tinfour.common.IMonitorWithCancellation;

/** Is asked a hundred times while a triangulation grows whether it should be given up. */
final class Growth implements IMonitorWithCancellation {

  @Override
  public int getReportingIntervalInPercent() {
    return 1;
  }

  @Override
  public boolean isCanceled() {
    return Thread.currentThread().isInterrupted();
  }

  @Override
  public void reportProgress(int percent) {}

  @Override
  public void reportDone() {}

  @Override
  public void postMessage(String message) {}
}
