package dev.fillplane.client.host;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;

/** Finds hosts by {@link ServiceLoader}. */
public final class Hosts {
  private static final String WHERE = "META-INF/services/" + Host.class.getName();

  /** So many that cannot be made are a fault of their own. */
  private static final int MOST_FAULTS = 100;

  private Hosts() {}

  /**
   * The host of a name, among those that the class loader of this thread knows. Others that cannot
   * be made or were built for another version are no hindrance.
   *
   * @throws HostException if there is none or several, or it was built for another version
   */
  public static Host find(String name) {
    List<HostException> faults = new ArrayList<>();
    List<Host> made = made(faults);
    List<Host> found = made.stream().filter(host -> host.name().equals(name)).toList();
    if (found.size() != 1) {
      throw none(name, found.isEmpty(), made, faults);
    }
    check(found.get(0));
    return found.get(0);
  }

  /**
   * All hosts, in the order in which they are found.
   *
   * @throws HostException if one was built for another version or cannot be made
   */
  public static List<Host> all() {
    List<HostException> faults = new ArrayList<>();
    List<Host> hosts = made(faults);
    if (!faults.isEmpty()) {
      throw faults.get(0);
    }
    hosts.forEach(Hosts::check);
    return List.copyOf(hosts);
  }

  /** Makes sure that a host runs with this version of the interfaces. */
  static void check(Host host) {
    int built;
    try {
      built = host.builtFor();
    } catch (LinkageError e) {
      throw new HostException("A host does not fit this version of its interfaces: " + host, e);
    }
    if (built != Host.VERSION) {
      String mend = built < Host.VERSION ? "build it anew" : "use a later fillplane-client";
      throw new HostException(
          "The host \"%s\" was built for version %d of the host interfaces, this is version %d: %s."
              .formatted(host.name(), built, Host.VERSION, mend));
    }
  }

  private static HostException none(
      String name, boolean isMissing, List<Host> made, List<HostException> faults) {
    StringBuilder text =
        new StringBuilder(isMissing ? "There is no host " : "There are several hosts ");
    text.append('"').append(name).append("\" among ");
    text.append(made.stream().map(Host::name).toList()).append("; see ").append(WHERE).append('.');
    faults.forEach(fault -> text.append(' ').append(fault.getMessage()));
    HostException none = new HostException(text.toString());
    faults.forEach(none::addSuppressed);
    return none;
  }

  /** Makes every host that can be made; why others cannot goes to {@code faults}. */
  private static List<Host> made(List<HostException> faults) {
    List<Host> made = new ArrayList<>();
    Iterator<Host> hosts = ServiceLoader.load(Host.class).iterator();
    boolean more = true;
    while (more && faults.size() < MOST_FAULTS) {
      try {
        more = hosts.hasNext();
        if (more) {
          made.add(hosts.next());
        }
      } catch (ServiceConfigurationError e) {
        faults.add(
            new HostException("A host of " + WHERE + " cannot be made: " + e.getMessage(), e));
      }
    }
    return made;
  }
}
