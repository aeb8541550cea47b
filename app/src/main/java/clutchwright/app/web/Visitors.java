package clutchwright.app.web;

import jakarta.servlet.http.HttpServletRequest;
import java.net.InetAddress;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/// Tells the keeper at the machine itself from everybody else.
///
/// At home is a request over loopback that also names this machine in its address line. A foreign
/// site whose name was pointed at this machine fails the second, a proxy's guest the third: that
/// nobody passed it on.
public record Visitors(Set<String> homeNames) {

    private static final Set<String> LOOPBACK_NAMES = Set.of("localhost", "127.0.0.1", "[::1]");

    public Visitors {
        var all = new HashSet<>(LOOPBACK_NAMES);
        homeNames.stream().map(name -> name.toLowerCase(Locale.ROOT)).forEach(all::add);
        homeNames = Set.copyOf(all);
    }

    boolean isAtHome(HttpServletRequest request) {
        return isLoopback(request.getRemoteAddr())
                && homeNames.contains(hostOf(request))
                && request.getHeader("Forwarded") == null
                && request.getHeader("X-Forwarded-For") == null;
    }

    private static String hostOf(HttpServletRequest request) {
        var host = request.getServerName().toLowerCase(Locale.ROOT);
        return host.contains(":") && !host.startsWith("[") ? "[" + host + "]" : host;
    }

    private static boolean isLoopback(String address) {
        try {
            return InetAddress.ofLiteral(address).isLoopbackAddress();
        } catch (IllegalArgumentException e) {
            return false;
        }
    }
}
