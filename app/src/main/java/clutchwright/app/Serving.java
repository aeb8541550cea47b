package clutchwright.app;

import clutchwright.app.cli.DataFolder;
import clutchwright.app.web.OwnerPassword;
import java.net.InetAddress;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import org.springframework.boot.web.server.PortInUseException;
import org.springframework.boot.web.server.WebServer;
import org.springframework.boot.web.server.servlet.context.ServletWebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;

/// The pages, being served or refused.
public sealed interface Serving {

    /// @param port 0 for any that is free
    record Plan(
            DataFolder data, boolean demo, int port, InetAddress address, List<String> homeNames) {

        public Plan {
            homeNames = List.copyOf(homeNames);
        }
    }

    /// @param address to open in the browser of this computer
    record Running(String address, ConfigurableApplicationContext context)
            implements Serving, AutoCloseable {

        /// Waits until the pages are closed from elsewhere.
        void untilStopped() {
            var closed = new CountDownLatch(1);
            context.addApplicationListener(
                    event -> {
                        if (event instanceof org.springframework.context.event.ContextClosedEvent) {
                            closed.countDown();
                        }
                    });
            try {
                closed.await();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }

        @Override
        public void close() {
            context.close();
        }
    }

    /// @param why one line for the terminal
    record Refused(String why) implements Serving {}

    /// Starts and returns once the first page can be fetched.
    static Serving start(Plan plan) {
        var application = Site.application();
        application.setDefaultProperties(
                Map.of(
                        "clutchwright.data", plan.data().path().toString(),
                        "clutchwright.demo", Boolean.toString(plan.demo()),
                        "clutchwright.home-names", String.join(",", plan.homeNames()),
                        "server.port", Integer.toString(plan.port()),
                        "server.address", plan.address().getHostAddress()));
        try {
            var context = application.run();
            if (!plan.address().isLoopbackAddress()
                    && !context.getBean(OwnerPassword.class).isSet()) {
                context.close();
                return new Refused(
                        "--listen lets other devices in, and no password is set: start without it,"
                                + " set one in Settings, then start again.");
            }
            return new Running("http://localhost:" + portOf(context) + "/", context);
        } catch (RuntimeException e) {
            if (hasCause(e, PortInUseException.class)) {
                return new Refused(
                        "Port %d is taken, perhaps by Clutchwright itself: choose another by --port."
                                .formatted(plan.port()));
            }
            throw e;
        }
    }

    private static int portOf(ConfigurableApplicationContext context) {
        return Optional.of(context)
                .filter(ServletWebServerApplicationContext.class::isInstance)
                .map(ServletWebServerApplicationContext.class::cast)
                .map(ServletWebServerApplicationContext::getWebServer)
                .map(WebServer::getPort)
                .orElseThrow(() -> new IllegalStateException("no pages are being served"));
    }

    private static boolean hasCause(Throwable failure, Class<? extends Throwable> type) {
        for (var cause = failure; cause != null; cause = cause.getCause()) {
            if (type.isInstance(cause)) {
                return true;
            }
        }
        return false;
    }
}
