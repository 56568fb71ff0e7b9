package dev.fillplane.client.host;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.net.URLConnection;
import java.net.URLStreamHandler;
import java.time.Duration;
import java.util.Collections;
import java.util.Enumeration;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** Hosts as ServiceLoader finds them, from service files that a class loader makes up. */
class HostsTest {

  /** Built for this version. */
  public static final class Fitting extends Named {
    /** As ServiceLoader makes it. */
    public Fitting() {
      super("fitting", Host.VERSION);
    }
  }

  /** Built for the version before. */
  public static final class Old extends Named {
    /** As ServiceLoader makes it. */
    public Old() {
      super("old", Host.VERSION - 1);
    }
  }

  /** Built for the version after. */
  public static final class Late extends Named {
    /** As ServiceLoader makes it. */
    public Late() {
      super("late", Host.VERSION + 1);
    }
  }

  @Test
  void findsAHostByItsName() {
    Host host = with(() -> Hosts.find("fitting"), Fitting.class.getName());
    assertInstanceOf(Fitting.class, host);
  }

  /** Has the name of another. */
  public static final class Twin extends Named {
    /** As ServiceLoader makes it. */
    public Twin() {
      super("fitting", Host.VERSION);
    }
  }

  @Test
  void refusesToChoose() {
    String several =
        message(() -> Hosts.find("fitting"), Fitting.class.getName(), Twin.class.getName());
    assertTrue(several.contains("several hosts \"fitting\""), several);
  }

  @Test
  void tellsWhichHostsThereAre() {
    String none = message(() -> Hosts.find("other"), Fitting.class.getName());
    assertTrue(none.contains("no host \"other\" among [fitting]"), none);
    assertTrue(none.contains("META-INF/services/dev.fillplane.client.host.Host"), none);
    assertEquals(List.of(), with(Hosts::all));
  }

  @Test
  void refusesHostsBuiltForOtherVersions() {
    String old = message(() -> Hosts.find("old"), Old.class.getName());
    assertEquals(
        "The host \"old\" was built for version 0 of the host interfaces, this is version 1: build"
            + " it anew.",
        old);
    String late = message(() -> Hosts.find("late"), Late.class.getName());
    assertEquals(late, message(Hosts::all, Fitting.class.getName(), Late.class.getName()));
    assertTrue(late.contains("version 2") && late.contains("use a later"), late);
  }

  @Test
  void othersThatCannotRunAreNoHindrance() {
    String[] all = {
      "dev.example.NoSuchHost", Old.class.getName(), Fitting.class.getName(), Late.class.getName()
    };
    assertInstanceOf(Fitting.class, with(() -> Hosts.find("fitting"), all));
    String none = message(() -> Hosts.find("other"), all);
    assertTrue(none.contains("among [old, fitting, late]"), none);
    assertTrue(none.contains("dev.example.NoSuchHost"), "why one is not among them: " + none);
  }

  @Test
  void aRunRefusesThemToo() {
    HostRun run = new HostRun(null);
    assertThrows(HostException.class, () -> run.estimate(new Old()));
    assertThrows(HostException.class, () -> run.plan(new Old()));
    assertThrows(HostException.class, () -> run.job(new Old(), Duration.ZERO));
  }

  @Test
  void tellsWhichClassCannotBeMade() {
    String missing = message(Hosts::all, "dev.example.NoSuchHost");
    assertTrue(missing.contains("dev.example.NoSuchHost"), missing);
    String noHost = message(Hosts::all, HostsTest.class.getName());
    assertTrue(noHost.contains("not a subtype"), noHost);
  }

  private static String message(Supplier<?> find, String... classes) {
    return assertThrows(HostException.class, () -> with(find, classes)).getMessage();
  }

  /** Runs with a class loader that knows a service file of these classes. */
  private static <T> T with(Supplier<T> find, String... classes) {
    Thread thread = Thread.currentThread();
    ClassLoader usual = thread.getContextClassLoader();
    thread.setContextClassLoader(new Services(usual, String.join("\n", classes)));
    try {
      return find.get();
    } finally {
      thread.setContextClassLoader(usual);
    }
  }

  private static final class Services extends ClassLoader {
    private final String file;

    Services(ClassLoader parent, String file) {
      super(parent);
      this.file = file;
    }

    @Override
    public Enumeration<URL> getResources(String name) throws IOException {
      if (!name.equals("META-INF/services/" + Host.class.getName())) {
        return super.getResources(name);
      }
      return Collections.enumeration(List.of(new URL(null, "test:hosts", new InMemory(file))));
    }
  }

  private static final class InMemory extends URLStreamHandler {
    private final String text;

    InMemory(String text) {
      this.text = text;
    }

    @Override
    protected URLConnection openConnection(URL url) {
      return new URLConnection(url) {
        @Override
        public void connect() {}

        @Override
        public InputStream getInputStream() {
          return new ByteArrayInputStream(text.getBytes(UTF_8));
        }
      };
    }
  }

  private abstract static class Named implements Host {
    private final String name;
    private final int version;

    Named(String name, int version) {
      this.name = name;
      this.version = version;
    }

    @Override
    public int builtFor() {
      return version;
    }

    @Override
    public String name() {
      return name;
    }

    @Override
    public UnitSource source() {
      return List.<Unit>of()::iterator;
    }

    @Override
    public EstimateSink sink() {
      throw new UnsupportedOperationException();
    }
  }
}
