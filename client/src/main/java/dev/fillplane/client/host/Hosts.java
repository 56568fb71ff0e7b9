package dev.fillplane.client.host;

import java.util.ArrayList;
import java.util.List;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;

/** Finds hosts by {@link ServiceLoader}. */
public final class Hosts {
  private static final String WHERE = "META-INF/services/" + Host.class.getName();

  private Hosts() {}

  /**
   * The host of a name, among those that the class loader of this thread knows.
   *
   * @throws HostException if there is none or several, or it was built for another version
   */
  public static Host find(String name) {
    List<Host> found = all().stream().filter(host -> host.name().equals(name)).toList();
    if (found.size() != 1) {
      String count = found.isEmpty() ? "There is no host " : "There are several hosts ";
      throw new HostException(count + "\"" + name + "\" among " + names() + "; see " + WHERE + ".");
    }
    return found.get(0);
  }

  /**
   * All hosts, in the order in which they are found.
   *
   * @throws HostException if one was built for another version or cannot be made
   */
  public static List<Host> all() {
    List<Host> hosts = new ArrayList<>();
    try {
      ServiceLoader.load(Host.class).forEach(hosts::add);
    } catch (ServiceConfigurationError e) {
      throw new HostException("A host of " + WHERE + " cannot be made: " + e.getMessage(), e);
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

  private static List<String> names() {
    return all().stream().map(Host::name).toList();
  }
}
