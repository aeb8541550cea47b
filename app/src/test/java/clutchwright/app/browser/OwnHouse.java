package clutchwright.app.browser;

import clutchwright.app.Serving;
import clutchwright.app.cli.DataFolder;
import clutchwright.app.holding.Holding;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.net.InetAddress;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/// Tests whose figures depend on every animal on record: each begins in an empty house of its own.
abstract class OwnHouse extends Browsing {

    @TempDir Path folder;
    private Serving.Running running;

    @BeforeEach
    void a_house_opens() {
        var plan =
                new Serving.Plan(
                        new DataFolder(folder),
                        false,
                        0,
                        InetAddress.ofLiteral("127.0.0.1"),
                        List.of());
        running =
                switch (Serving.start(plan)) {
                    case Serving.Running begun -> begun;
                    case Serving.Refused(var why) -> throw new IllegalStateException(why);
                };
    }

    @AfterEach
    void it_closes() {
        running.close();
    }

    Holding holding() {
        return running.context().getBean(Holding.class);
    }

    void visit(String path) {
        page().navigate(running.address() + path.substring(1));
    }

    Locator button(String name) {
        return page().getByRole(
                        AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    static Locator.FilterOptions having(String text) {
        return new Locator.FilterOptions().setHasText(text);
    }
}
