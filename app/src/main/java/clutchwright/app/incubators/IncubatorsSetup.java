package clutchwright.app.incubators;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/// What the pages of incubators share.
@Configuration(proxyBeanMethods = false)
class IncubatorsSetup {

    @Bean
    LogDesk logDesk() {
        return new LogDesk();
    }
}
