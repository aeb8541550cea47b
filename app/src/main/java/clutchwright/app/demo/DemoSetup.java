package clutchwright.app.demo;

import clutchwright.app.holding.Holding;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/// Fills an empty collection before the first page is served, if the demo was asked for.
@Configuration(proxyBeanMethods = false)
class DemoSetup {

    @Bean
    SmartInitializingSingleton demo(
            Holding holding, @Value("${clutchwright.demo:false}") boolean asked) {
        return () -> {
            if (asked) {
                DemoHouse.fill(holding.database());
            }
        };
    }
}
