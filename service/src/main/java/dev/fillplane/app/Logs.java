package dev.fillplane.app;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.spi.Configurator;
import ch.qos.logback.classic.spi.ConfiguratorRank;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.OutputStreamAppender;
import ch.qos.logback.core.spi.ContextAwareBase;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.util.Map;
import org.slf4j.LoggerFactory;

/**
 * The log: everything goes to the standard error stream, as text until told otherwise. Set up here
 * and not by a file, which would be looked for and parsed at every start.
 */
@ConfiguratorRank(ConfiguratorRank.CUSTOM_TOP_PRIORITY)
public final class Logs extends ContextAwareBase implements Configurator {

  private static final String APPENDER = "stderr";

  /** Libraries that say more than anybody wants to know. */
  private static final Map<String, Level> QUIET =
      Map.of(
          "org.eclipse.jetty", Level.WARN,
          "io.javalin", Level.WARN,
          "com.networknt", Level.ERROR,
          "com.zaxxer.hikari", Level.WARN,
          "org.flywaydb", Level.WARN,
          "io.micrometer", Level.WARN,
          "com.github.kagkarlsson", Level.WARN,
          "com.github.kagkarlsson.scheduler.jdbc.AutodetectJdbcCustomization.utc_warning",
              Level.ERROR);

  @Override
  public ExecutionStatus configure(LoggerContext context) {
    context.getLogger(Logger.ROOT_LOGGER_NAME).setLevel(Level.INFO);
    QUIET.forEach((name, level) -> context.getLogger(name).setLevel(level));
    write(context, LogFormat.TEXT);
    return ExecutionStatus.DO_NOT_INVOKE_NEXT_IF_ANY;
  }

  /** Writes lines in another form from now on. */
  static void write(LogFormat format) {
    write((LoggerContext) LoggerFactory.getILoggerFactory(), format);
  }

  private static void write(LoggerContext context, LogFormat format) {
    OutputStreamAppender<ILoggingEvent> appender = new OutputStreamAppender<>();
    appender.setName(APPENDER);
    appender.setContext(context);
    appender.setEncoder(format.encoder(context));
    appender.setOutputStream(new FileOutputStream(FileDescriptor.err));
    Logger root = context.getLogger(Logger.ROOT_LOGGER_NAME);
    root.detachAppender(APPENDER);
    appender.start();
    root.addAppender(appender);
  }
}
