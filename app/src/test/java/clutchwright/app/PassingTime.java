package clutchwright.app;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import org.springframework.beans.factory.support.BeanDefinitionRegistry;
import org.springframework.beans.factory.support.RootBeanDefinition;
import org.springframework.context.ConfigurableApplicationContext;

/// The program over months that pass in a test: it is started as people start it, but for its
// clock.
public final class PassingTime implements AutoCloseable {

    private static final LocalTime MORNING = LocalTime.of(8, 30);

    private final AtomicReference<Instant> now;
    private final ConfigurableApplicationContext context;

    private PassingTime(AtomicReference<Instant> now, ConfigurableApplicationContext context) {
        this.now = now;
        this.context = context;
    }

    public static PassingTime begins(LocalDate day, Path folder) {
        var now = new AtomicReference<>(morningOf(day));
        var application = Site.application();
        application.setDefaultProperties(
                Map.of(
                        "clutchwright.data", folder.toString(),
                        "clutchwright.demo", "false",
                        "clutchwright.home-names", "",
                        "clutchwright.patience", "PT60S",
                        "server.port", "0",
                        "server.address", "127.0.0.1"));
        application.addInitializers(
                started ->
                        started.addBeanFactoryPostProcessor(
                                beans -> {
                                    var clock =
                                            new RootBeanDefinition(
                                                    Clock.class, () -> new Passing(now));
                                    clock.setPrimary(true);
                                    ((BeanDefinitionRegistry) beans)
                                            .registerBeanDefinition("passingTime", clock);
                                }));
        return new PassingTime(now, application.run());
    }

    /// The next page is of the morning of that day.
    public void comes(LocalDate day) {
        now.set(morningOf(day));
    }

    public String address() {
        return "http://localhost:" + context.getEnvironment().getProperty("local.server.port");
    }

    @Override
    public void close() {
        context.close();
    }

    private static Instant morningOf(LocalDate day) {
        return day.atTime(MORNING).atZone(ZoneId.systemDefault()).toInstant();
    }

    private static final class Passing extends Clock {

        private final AtomicReference<Instant> now;

        private Passing(AtomicReference<Instant> now) {
            this.now = now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneId.systemDefault();
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return Clock.fixed(instant(), zone);
        }

        @Override
        public Instant instant() {
            return now.get();
        }
    }
}
