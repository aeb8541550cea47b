package clutchwright.app.steering;

import clutchwright.app.holding.Holding;
import java.time.Clock;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/// What is shared by the screens that look ahead.
@Configuration(proxyBeanMethods = false)
class SteeringSetup {

    @Bean
    WorkDesk workDesk(Clock clock) {
        return new WorkDesk(clock);
    }

    @Bean
    ProjectRoutes projectRoutes(Holding holding) {
        return new ProjectRoutes(holding);
    }
}
