package clutchwright.app.labels;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.URI;
import java.util.Comparator;
import java.util.List;

/// By which addresses other devices of the network may reach this computer.
final class OwnAddresses {

    private OwnAddresses() {}

    /// Those of the home network, the likeliest first; empty where there is no network.
    ///
    /// @param port at which the pages are served
    static List<String> at(int port) {
        try {
            return NetworkInterface.networkInterfaces()
                    .filter(OwnAddresses::isOn)
                    .sorted(
                            Comparator.comparing(NetworkInterface::isVirtual)
                                    .thenComparing(OwnAddresses::isOfABridge))
                    .<InetAddress>flatMap(NetworkInterface::inetAddresses)
                    .filter(Inet4Address.class::isInstance)
                    .filter(address -> !address.isLinkLocalAddress())
                    // Stable: homes first, then what else there is, such as a private tunnel.
                    .sorted(Comparator.comparing(address -> !address.isSiteLocalAddress()))
                    .map(address -> "http://%s:%d".formatted(address.getHostAddress(), port))
                    .distinct()
                    .toList();
        } catch (SocketException e) {
            return List.of();
        }
    }

    /// Whether a phone that opens it would open itself.
    static boolean isOfThisComputerAlone(String address) {
        var host = URI.create(address).getHost();
        return host == null
                || host.equalsIgnoreCase("localhost")
                || host.endsWith(".localhost")
                || host.startsWith("127.")
                || host.equals("[::1]");
    }

    private static boolean isOn(NetworkInterface network) {
        try {
            return network.isUp() && !network.isLoopback();
        } catch (SocketException e) {
            return false;
        }
    }

    /// Networks of virtual machines, which no phone is in.
    private static boolean isOfABridge(NetworkInterface network) {
        return network.getName().matches("(docker|br-|veth|virbr|vmnet|vboxnet|tun|tap).*");
    }
}
