package clutchwright.app.collection;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Selecting;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/// Lets other screens work on what the list's filters let through.
@Configuration(proxyBeanMethods = false)
class SelectingSetup {

    @Bean
    Selecting selecting(Holding holding) {
        return filters -> Found.all(holding, new Asked(filters));
    }
}
