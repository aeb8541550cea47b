package clutchwright.app.browser;

import clutchwright.app.Serving;
import clutchwright.app.cli.DataFolder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.io.IOException;
import java.net.InetAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.extension.ExtensionContext;

/// The program, started as people start it, and the system's Chromium: one of each a test run.
record House(Serving.Running running, Playwright playwright, Browser browser)
        implements AutoCloseable {

    /// The one of this run; it is closed when the run ends.
    static House of(ExtensionContext context) {
        return context.getRoot()
                .getStore(ExtensionContext.Namespace.GLOBAL)
                .computeIfAbsent(House.class, key -> open(), House.class);
    }

    String address() {
        return running.address();
    }

    <T> T bean(Class<T> type) {
        return running.context().getBean(type);
    }

    private static House open() {
        var playwright =
                Playwright.create(
                        new Playwright.CreateOptions()
                                .setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        var browser =
                playwright
                        .chromium()
                        .launch(
                                new BrowserType.LaunchOptions()
                                        .setExecutablePath(chromium())
                                        .setArgs(flags()));
        // Tests read what follows from what they have just written.
        System.setProperty("clutchwright.patience", "PT60S");
        var started =
                Serving.start(
                        new Serving.Plan(
                                new DataFolder(freshFolder()),
                                false,
                                0,
                                InetAddress.ofLiteral("127.0.0.1"),
                                List.of()));
        System.clearProperty("clutchwright.patience");
        return switch (started) {
            case Serving.Running running -> new House(running, playwright, browser);
            case Serving.Refused(var why) -> throw new IllegalStateException(why);
        };
    }

    private static Path chromium() {
        return Optional.ofNullable(System.getenv("CHROMIUM"))
                .map(Path::of)
                .orElse(Path.of("/usr/bin/chromium"));
    }

    private static List<String> flags() {
        var flags =
                new ArrayList<>(
                        List.of(
                                "--disable-background-networking",
                                "--disable-component-update",
                                "--disable-sync",
                                "--disable-gpu"));
        // Chromium's own sandbox refuses to run for root, as in a container.
        if ("root".equals(System.getProperty("user.name"))) {
            flags.add("--no-sandbox");
        }
        return flags;
    }

    private static Path freshFolder() {
        try {
            return Files.createTempDirectory("clutchwright-browser-test");
        } catch (IOException e) {
            throw new IllegalStateException("no folder for the data of the browser tests", e);
        }
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
        running.close();
    }
}
