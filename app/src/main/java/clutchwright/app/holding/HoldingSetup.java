package clutchwright.app.holding;

import clutchwright.app.web.Entering;
import clutchwright.app.web.Preferring;
import clutchwright.records.store.Database;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/// Opens the collection that the pages serve.
@Configuration(proxyBeanMethods = false)
class HoldingSetup {

    @Bean
    Holding holding(
            @Value("${clutchwright.data}") String folder,
            @Value("${clutchwright.patience}") Duration patience,
            Clock clock) {
        return new Holding(Database.open(Path.of(folder), clock), patience);
    }

    @Bean
    Preferring preferring(Holding holding) {
        return new PreferringInStore(holding);
    }

    @Bean
    Entering entering(Holding holding) {
        return new EnteringInStore(holding);
    }
}
