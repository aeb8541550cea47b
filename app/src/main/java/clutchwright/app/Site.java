package clutchwright.app;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/// The pages, as Spring puts them together.
@SpringBootApplication(proxyBeanMethods = false)
public class Site {

    Site() {}

    static SpringApplication application() {
        var application = new SpringApplication(Site.class);
        application.setMainApplicationClass(Site.class);
        application.setRegisterShutdownHook(true);
        return application;
    }

    /// For the build alone, which works out the wiring ahead of time; people start
    /// [Clutchwright].
    public static void main(String[] arguments) {
        application().run(arguments);
    }
}
