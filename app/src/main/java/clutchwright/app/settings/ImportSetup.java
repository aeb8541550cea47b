package clutchwright.app.settings;

import clutchwright.app.holding.Holding;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/// The desk on which files lie while they are brought in.
@Configuration(proxyBeanMethods = false)
class ImportSetup {

    @Bean
    ImportDesk importDesk(Holding holding) {
        return new ImportDesk(holding);
    }
}
