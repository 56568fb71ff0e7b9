package dev.fillplane.job;

import java.sql.Connection;

/** Hears of the end of jobs that have a webhook, in the transaction that ends them. */
@FunctionalInterface
interface JobEnd {

  /**
   * A job has ended; heard once.
   *
   * @param connection of the transaction: what is written through it happens with the end or not
   */
  void ended(Connection connection, String job);
}
